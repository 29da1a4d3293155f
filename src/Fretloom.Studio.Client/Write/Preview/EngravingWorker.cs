using Fretloom.Scores.Engraving;
using Microsoft.JSInterop;

namespace Fretloom.Studio.Client.Write.Preview;

/// <summary>Why nothing is engraved.</summary>
public enum EngraverTrouble
{
    /// <summary>The engraver's file could not be fetched, or does not run in this browser.</summary>
    Missing,

    /// <summary>It stopped too often.</summary>
    Stopped,
}

/// <summary>Nothing is engraved until it is tried again.</summary>
public sealed class EngraverGoneException() : Exception("The engraver is gone.");

/// <summary>The engraver in the browser, beside the page. It is fetched when it is first needed. What was set before is not set again.</summary>
/// <param name="browser">The browser.</param>
public sealed class EngravingWorker(IJSRuntime browser) : IEngravingEngine
{
    // Of how many scores the pages are kept. Ours, without source.
    private const int MostKept = 500;

    private readonly Dictionary<(string Score, string Options), string[]> _kept = [];
    private IJSObjectReference? _script;

    /// <summary>Raised when there is trouble, or none any more.</summary>
    public event Action? Changed;

    /// <summary>Why nothing is engraved; null when it is.</summary>
    public EngraverTrouble? Trouble { get; private set; }

    /// <inheritdoc/>
    /// <exception cref="EngraverGoneException">There is <see cref="Trouble"/>.</exception>
    public async Task<string[]> EngraveAsync(string score, string options)
    {
        if (_kept.TryGetValue((score, options), out var kept))
        {
            return kept;
        }

        if (Trouble is not null)
        {
            throw new EngraverGoneException();
        }

        var answer = await AskAsync(score, options);
        if (answer.Trouble is not null)
        {
            Trouble = answer.Trouble == "stopped" ? EngraverTrouble.Stopped : EngraverTrouble.Missing;
            Changed?.Invoke();
            throw new EngraverGoneException();
        }

        var pages = answer.Pages ?? throw new EngravingException(answer.Error ?? "it gave no pages");
        if (_kept.Count >= MostKept)
        {
            _kept.Clear();
        }

        _kept[(score, options)] = pages;
        return pages;
    }

    /// <summary>Forgets the trouble: it may be asked again.</summary>
    public async Task TryAgainAsync()
    {
        if (_script is not null)
        {
            await _script.InvokeVoidAsync("again");
        }

        Trouble = null;
        Changed?.Invoke();
    }

    private async Task<EngraverAnswer> AskAsync(string score, string options)
    {
        try
        {
            _script ??= await browser.InvokeAsync<IJSObjectReference>("import", "./js/engraver.js");
            return WriteJson.Engraved(await _script.InvokeAsync<string>("engrave", score, options));
        }
        catch (JSException)
        {
            // The script could not be fetched.
            return new EngraverAnswer(null, null, "missing");
        }
    }
}

/// <summary>What the engraver answers.</summary>
/// <param name="Pages">A picture for each page; null when it could not be engraved.</param>
/// <param name="Error">What is wrong with the score.</param>
/// <param name="Trouble">Why it engraves nothing any more, <c>missing</c> or <c>stopped</c>; null while it does.</param>
internal sealed record EngraverAnswer(string[]? Pages, string? Error, string? Trouble);
