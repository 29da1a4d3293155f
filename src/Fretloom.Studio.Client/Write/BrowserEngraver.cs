using Fretloom.Scores.Engraving;
using Microsoft.JSInterop;

namespace Fretloom.Studio.Client.Write;

/// <summary>Engraves the exercises of the handout in the browser. What was set before is not set again.</summary>
/// <remarks>Without the engraver's file, or where it does not start, exercises stay tablature until the page is loaded again.</remarks>
/// <param name="browser">The browser.</param>
/// <param name="handout">The handout.</param>
public sealed class BrowserEngraver(IJSRuntime browser, Handout handout) : IEngravingEngine
{
    // Of how many scores the pages are kept. Ours, without source.
    private const int MostKept = 500;

    private readonly Dictionary<(string Score, string Options), string[]> _kept = [];
    private IJSInProcessObjectReference? _script;
    private bool _wasStarted;

    /// <summary>Starts the engraver when the handout has an exercise for it and it does not run yet.</summary>
    public async Task StartWhenNeededAsync()
    {
        if (_wasStarted || !HasExercises)
        {
            return;
        }

        _wasStarted = true;
        var isRunning = false;
        try
        {
            _script ??= await browser.InvokeAsync<IJSInProcessObjectReference>("import", "./js/engraver.js");
            isRunning = await _script.InvokeAsync<bool>("start");
        }
        catch (JSException)
        {
            // The script could not be fetched: the exercises stay tablature.
        }

        if (isRunning)
        {
            handout.Engrave(new ScoreEngraver(this));
        }
    }

    /// <inheritdoc/>
    public string[] Engrave(string score, string options)
    {
        if (_kept.TryGetValue((score, options), out var kept))
        {
            return kept;
        }

        var script = _script ?? throw new EngravingException("it does not run");
        var answer = WriteJson.Engraved(script.Invoke<string>("engrave", score, options));
        var pages = answer.Pages ?? throw new EngravingException(answer.Error ?? "it gave no pages");
        if (_kept.Count >= MostKept)
        {
            _kept.Clear();
        }

        _kept[(score, options)] = pages;
        return pages;
    }

    private bool HasExercises => handout.Page?.Lesson.Exercises.Count > 0;
}

/// <summary>What the engraver answers.</summary>
/// <param name="Pages">A picture for each page; null when it could not be engraved.</param>
/// <param name="Error">What is wrong.</param>
internal sealed record EngraverAnswer(string[]? Pages, string? Error);
