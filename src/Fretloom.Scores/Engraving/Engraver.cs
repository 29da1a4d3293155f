using System.Security.Cryptography;
using System.Text;
using Fretloom.Exercises;
using Fretloom.Scores.Scripting;
using Fretloom.Scores.Tab;

namespace Fretloom.Scores.Engraving;

/// <summary>
/// Engraves exercises: a notation staff with fingers, under it the tablature. The engraver (Verovio as WebAssembly) is started when it is first
/// needed and kept warm: make one of these for as many exercises as there are, and dispose it. All of a process share one engine.
/// </summary>
/// <remarks>
/// Safe to use from several threads; exercises are engraved one after another. The same input gives the same pictures. Without the engraver's file,
/// or where it fails, the answer is plain-text tablature with a warning.
/// </remarks>
public sealed class Engraver : IEngraver, IDisposable
{
    private static EngraverEngine? engine;
    private static int users;

    private readonly ScoreEngraver scores;
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
        scores = new(new SharedEngine(this));
        versions = new(() => $"{typeof(Engraver).Module.ModuleVersionId}\n{Hash(File.ReadAllBytes(library))}");
    }

    private bool IsThere => File.Exists(library);

    /// <inheritdoc/>
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
            return Engraved();
        }

        // All that the pictures come from: this code, the engraver, what it is told and what it is given.
        var options = EngravedPage.Options(widthMm, isFilled: true);
        var key = Hash($"{versions.Value}\n{options}\n{heads}\n{score}");
        var systems = cache.Read(key);
        if (systems is null)
        {
            systems = Engraved();
            cache.Write(key, systems);
        }

        return systems;

        // The engine of the process answers at once.
        EngravedSystem[] Engraved() => scores.SystemsAsync(exercise, widthMm, score, heads).GetAwaiter().GetResult();
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

    /// <summary>The engine of the process, as long as it is there.</summary>
    private sealed class SharedEngine(Engraver engraver) : IEngravingEngine
    {
        public Task<string[]> EngraveAsync(string score, string options) =>
            Task.FromResult(engraver.Pages(score, options));
    }
}
