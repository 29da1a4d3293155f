using Fretloom.Lessons;
using Fretloom.Pages.Html;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Write.Preview;

/// <summary>The handout of the lesson as it is written. What takes long is worked out in slices, between which the page has time for everything else.</summary>
public sealed class Handout
{
    private readonly LessonPreview _preview;
    private readonly BrowserEngraver _engraver;
    private readonly Errands _errands;
    private readonly TimeProvider _clock;
    private string? _text;
    private string? _whole;

    // Counts what was to be shown: the last one counts.
    private int _turn;

    /// <summary>An empty handout.</summary>
    /// <param name="engraver">Engraves the exercises.</param>
    /// <param name="errands">Does what nobody waits for.</param>
    /// <param name="clock">Says how long a slice took.</param>
    public Handout(BrowserEngraver engraver, Errands errands, TimeProvider clock)
    {
        (_engraver, _errands, _clock) = (engraver, errands, clock);
        _preview = new LessonPreview { Engraver = engraver };
        engraver.Engraved += Again;
    }

    /// <summary>The page; null before anything was written.</summary>
    public PreviewPage? Page { get; private set; }

    /// <summary>What was found in the lesson, in its order.</summary>
    public IReadOnlyList<Diagnostic> Problems => Page is null ? [] : [.. Page.Lesson.Diagnostics];

    /// <summary>Raised when there is another page.</summary>
    public event Action? Changed;

    /// <summary>Shows another lesson, its beginning first.</summary>
    public void Open(string text) => Follow(text, isAnother: true);

    /// <summary>Shows what is written. Until it is worked out, what was shown stays.</summary>
    public void Follow(string text) => Follow(text, isAnother: _whole is null);

    private void Follow(string text, bool isAnother)
    {
        if (text == _text)
        {
            return;
        }

        _text = text;
        var turn = ++_turn;
        var slices = LessonSlices.Between(isAnother ? null : _whole, text);
        if (slices.Count <= 1)
        {
            Show(text);
        }
        else
        {
            _errands.Run(() => ShowInSlicesAsync(turn, text, slices, isAnother));
        }
    }

    private async Task ShowInSlicesAsync(int turn, string text, IReadOnlyList<int> slices, bool isAnother)
    {
        var pace = new Pace(_clock);
        for (var at = 0; at < slices.Count; at += pace.Step)
        {
            var beginning = text[..slices[at]];
            pace.Begin();
            foreach (var step in _preview.Steps(beginning).Append(() => Begin(beginning, isAnother)))
            {
                await Task.Delay(Pace.Rest, _clock);
                if (turn != _turn)
                {
                    return;
                }

                pace.Measure(step);
            }
        }

        await Task.Delay(Pace.Rest, _clock);
        if (turn == _turn)
        {
            Show(text);
        }
    }

    private void Begin(string beginning, bool isAnother)
    {
        if (isAnother)
        {
            Page = _preview.Update(beginning);
            Changed?.Invoke();
        }
    }

    /// <summary>Shows the same lesson again: something was engraved, or can be asked for again. A lesson that is still worked out takes it up by itself.</summary>
    public void Again()
    {
        if (_whole is { } whole && whole == _text)
        {
            Show(whole);
        }
    }

    private void Show(string text)
    {
        _whole = text;
        Page = _preview.Update(text);
        _engraver.Want([.. Page.Lesson.Exercises.Select(exercise => exercise.Played)]);
        Changed?.Invoke();
    }
}
