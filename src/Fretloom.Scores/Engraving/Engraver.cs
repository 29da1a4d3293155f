using System.Security.Cryptography;
using System.Text;
using Fretloom.Exercises;
using Fretloom.Scores.Scripting;
using Fretloom.Scores.Tab;
using Fretloom.Theory;

namespace Fretloom.Scores.Engraving;

/// <summary>
/// Engraves exercises: a notation staff with fingers, under it the tablature. The engraver (Verovio as WebAssembly) is started when it is first
/// needed and kept warm: make one of these for as many exercises as there are, and dispose it. All of a process share one engine.
/// </summary>
/// <remarks>
/// Safe to use from several threads; exercises are engraved one after another. The same input gives the same pictures. Without the engraver's file
/// the answer is plain-text tablature with a warning.
/// </remarks>
public sealed class Engraver : IDisposable
{
    // A single system that is nearly full is spread over the whole width. Ours, without source.
    private const double FilledFrom = 0.75;

    private static EngraverEngine? engine;
    private static int users;

    private readonly EngravingCache? cache;
    private readonly string library;
    private readonly Lazy<string> versions;
    private bool isUser;
    private bool isDisposed;

    /// <summary>Promises that <see cref="Dispose"/> will be called; nothing is started yet.</summary>
    /// <param name="cache">Where pictures are kept from one run to the next; null for nowhere.</param>
    public Engraver(EngravingCache? cache = null)
        : this(cache, EngraverEngine.Library) { }

    internal Engraver(EngravingCache? cache, string library)
    {
        (this.cache, this.library) = (cache, library);
        versions = new(() => $"{typeof(Engraver).Module.ModuleVersionId}\n{Hash(File.ReadAllBytes(library))}");
    }

    private bool IsThere => File.Exists(library);

    /// <summary>Engraves one pass of an exercise.</summary>
    /// <param name="exercise">What is engraved.</param>
    /// <param name="widthMm">The width of a system; at least <see cref="EngravedPage.LeastWidthMm"/>.</param>
    /// <exception cref="ObjectDisposedException">After <see cref="Dispose"/>.</exception>
    public EngravedExercise Engrave(Exercise exercise, double widthMm)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentOutOfRangeException.ThrowIfLessThan(widthMm, EngravedPage.LeastWidthMm);
        if (!IsThere)
        {
            return EngravedExercise.InWords(TabText.Write(exercise, hasFingers: true));
        }

        var score = MeiWriter.Write(exercise);
        var options = EngravedPage.Options(widthMm, hasBreaks: false);
        var heads = new SystemHeads(exercise);
        if (cache is null)
        {
            return EngravedExercise.OfSystems(Systems(exercise, widthMm, score, options, heads));
        }

        // All that the pictures come from: this code, the engraver, what it is told and what it is given.
        var key = Hash($"{versions.Value}\n{options}\n{heads}\n{score}");
        var systems = cache.Read(key);
        if (systems is null)
        {
            systems = Systems(exercise, widthMm, score, options, heads);
            cache.Write(key, systems);
        }

        return EngravedExercise.OfSystems(systems);
    }

    /// <summary>Starts the engraver ahead of the first exercise. Meant for another thread; does nothing without its file.</summary>
    public void WarmUp()
    {
        if (IsThere)
        {
            lock (ScriptRuntime.Gate)
            {
                if (!isDisposed)
                {
                    Running();
                }
            }
        }
    }

    /// <summary>Gives the engine up; the last one to do so ends it. An engine that still runs when the process exits brings it down.</summary>
    public void Dispose()
    {
        lock (ScriptRuntime.Gate)
        {
            isDisposed = true;
            if (isUser)
            {
                isUser = false;
                users--;
                if (users == 0)
                {
                    End();
                }
            }
        }
    }

    private EngravedSystem[] Systems(Exercise exercise, double widthMm, string score, string options, SystemHeads heads)
    {
        // The engraver sets bars as narrow as they can be, and system after system full; their widths tell where to break evenly.
        var pages = Pages(score, options);
        var systems = pages.Select(page => SystemPicture.Bars(page).ToList()).ToList();
        var room = EngravedPage.Room(widthMm);
        if (systems.Count > 1 || systems[0][^1].Right > FilledFrom * room)
        {
            var firsts = Breaks(exercise, systems, room);
            pages = Pages(MeiWriter.Write(exercise, firsts), EngravedPage.Options(widthMm, hasBreaks: true));
        }

        var name = "f" + Hash($"{options}\n{score}")[..10];
        return [.. pages.Select((page, at) => SystemPicture.Of(page, $"{name}-{at}", heads))];
    }

    private static IReadOnlyList<int> Breaks(Exercise exercise, List<List<MeasuredBar>> systems, double room)
    {
        var firsts = exercise.Sections.Select(section => section.At / exercise.Metre.Bar + 1).ToHashSet();
        var bars = new List<SystemBreaks.Bar>();
        foreach (var (system, at) in systems.SelectMany(system => system.Select((_, at) => (system, at))))
        {
            var (bar, number) = (system[at], bars.Count + 1);
            var signature = Math.Abs(KeySignature.Of(exercise.SectionAt(exercise.Metre.Bar * (number - 1)).Key));
            var lead = bar.Start - bar.Left;
            bars.Add(
                new(
                    at == 0 ? lead : EngravedPage.ClefLead + signature * EngravedPage.AccidentalWidth,
                    at > 0 ? lead
                        : firsts.Contains(number) ? EngravedPage.KeyLead + signature * EngravedPage.AccidentalWidth
                        : EngravedPage.Lead,
                    bar.Right - bar.Start
                )
            );
        }

        // The engraver itself overfills a system by a little, and then sets it closer.
        return SystemBreaks.Choose(bars, Math.Max(room, systems.Max(system => system[^1].Right)), firsts);
    }

    private string[] Pages(string score, string options)
    {
        lock (ScriptRuntime.Gate)
        {
            ObjectDisposedException.ThrowIf(isDisposed, this);
            return Running().Engrave(score, options);
        }
    }

    private EngraverEngine Running()
    {
        if (!isUser)
        {
            isUser = true;
            users++;
        }

        if (engine is { IsSpent: true })
        {
            End();
        }

        return engine ??= new(library);
    }

    private static string Hash(string text) => Hash(Encoding.UTF8.GetBytes(text));

    private static string Hash(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private static void End()
    {
        engine?.Dispose();
        engine = null;
    }
}
