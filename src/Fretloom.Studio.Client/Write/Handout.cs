using Fretloom.Lessons;
using Fretloom.Pages.Html;

namespace Fretloom.Studio.Client.Write;

/// <summary>The handout of the lesson as it is written.</summary>
public sealed class Handout
{
    private readonly LessonPreview _preview = new();
    private string? _text;

    /// <summary>The page; null before anything was written.</summary>
    public PreviewPage? Page { get; private set; }

    /// <summary>What was found in the lesson, in its order.</summary>
    public IReadOnlyList<Diagnostic> Problems => Page is null ? [] : [.. Page.Lesson.Diagnostics];

    /// <summary>Raised when there is another page.</summary>
    public event Action? Changed;

    /// <summary>Engraves the exercises from now on; null writes them as tablature.</summary>
    public void Engrave(Scores.Engraving.IEngraver? engraver)
    {
        _preview.Engraver = engraver;
        if (_text is { } text)
        {
            _text = null;
            Follow(text);
        }
    }

    /// <summary>Shows what is written.</summary>
    public void Follow(string text)
    {
        if (text == _text)
        {
            return;
        }

        _text = text;
        Page = _preview.Update(text);
        Changed?.Invoke();
    }
}
