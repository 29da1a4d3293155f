using System.Collections.Concurrent;
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
/// Safe to use from several threads; exercises are engraved one after another. The same input gives the same pictures. Without the engraver's file,
/// or where it fails, the answer is plain-text tablature with a warning.
/// </remarks>
public sealed class Engraver : IDisposable
{
    // A single system that is nearly full is spread over the whole width. Ours, without source.
    private const double FilledFrom = 0.75;

    private static EngraverEngine? engine;
    private static int users;

    // Of how many exercises the widths of the bars are remembered.
    private const int MostMeasured = 1000;

    private readonly ConcurrentDictionary<string, ValueList<MeasuredBar>> measured = [];
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
            return EngravedExercise.WithoutEngraver(TabText.Write(exercise, hasFingers: true));
        }

        try
        {
            return EngravedExercise.OfSystems(KeptOrEngraved(exercise, widthMm));
        }
        catch (EngravingException failure)
        {
            return EngravedExercise.Failed(TabText.Write(exercise, hasFingers: true), exercise.Name, failure.Message);
        }
    }

    /// <summary>Starts the engraver ahead of the first exercise. Meant for another thread; does nothing without its file or when it fails.</summary>
    public void WarmUp()
    {
        if (IsThere)
        {
            lock (ScriptRuntime.Gate)
            {
                if (!isDisposed)
                {
                    try
                    {
                        Running();
                    }
                    catch (EngravingException)
                    {
                        // Told to whoever engraves.
                    }
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

    private EngravedSystem[] KeptOrEngraved(Exercise exercise, double widthMm)
    {
        var score = MeiWriter.Write(exercise);
        var heads = new SystemHeads(exercise);
        if (cache is null)
        {
            return Systems(exercise, widthMm, score, heads);
        }

        // All that the pictures come from: this code, the engraver, what it is told and what it is given.
        var options = EngravedPage.Options(widthMm, isFilled: true);
        var key = Hash($"{versions.Value}\n{options}\n{heads}\n{score}");
        var systems = cache.Read(key);
        if (systems is null)
        {
            systems = Systems(exercise, widthMm, score, heads);
            cache.Write(key, systems);
        }

        return systems;
    }

    private EngravedSystem[] Systems(Exercise exercise, double widthMm, string score, SystemHeads heads)
    {
        var bars = Measured(score);
        var room = EngravedPage.Room(widthMm);
        var firsts = Breaks(exercise, bars, room);
        var isFilled = firsts.Count > 1 || bars[^1].Right > FilledFrom * room;
        var options = EngravedPage.Options(widthMm, isFilled);
        var name = "f" + Hash($"{options}\n{score}")[..10];
        var pages = Pages(MeiWriter.Write(exercise, firsts), options);
        return [.. pages.Select((page, at) => SystemPicture.Of(page, $"{name}-{at}", heads))];
    }

    // How wide bars are by nature is the same for every width of a system, and a document may ask for several.
    private ValueList<MeasuredBar> Measured(string score)
    {
        if (!measured.TryGetValue(score, out var bars))
        {
            if (measured.Count >= MostMeasured)
            {
                measured.Clear();
            }

            bars = Pages(score, EngravedPage.UnbrokenOptions).SelectMany(SystemPicture.Bars).ToValueList();
            measured[score] = bars;
        }

        return bars;
    }

    private static IReadOnlyList<int> Breaks(Exercise exercise, ValueList<MeasuredBar> measured, double room)
    {
        var firsts = exercise.Sections.Select(section => section.At / exercise.Metre.Bar + 1).ToHashSet();
        var bars = measured
            .Select(
                (bar, at) =>
                {
                    var key = exercise.SectionAt(exercise.Metre.Bar * at).Key;
                    var signature = Math.Abs(KeySignature.Of(key)) * EngravedPage.AccidentalWidth;
                    var lead = bar.Start - bar.Left;
                    return at == 0
                        ? new SystemBreaks.Bar(lead, EngravedPage.Lead, bar.Right - bar.Start)
                        : new SystemBreaks.Bar(EngravedPage.ClefLead + signature, lead, bar.Right - bar.Start);
                }
            )
            .ToList();
        return SystemBreaks.Choose(bars, room, firsts);
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

        if (engine is { IsSpent: true } || engine?.From != library)
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
