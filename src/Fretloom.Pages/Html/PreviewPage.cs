using Fretloom.Lessons;

namespace Fretloom.Pages.Html;

/// <summary>The body of a handout in parts.</summary>
/// <param name="Lesson">The lesson, with what was found in it.</param>
/// <param name="Parts">
/// The parts in order: what stands above the page, the title, and the blocks of the lesson, each alone but figures that stand side by side together.
/// </param>
public sealed record PreviewPage(Lesson Lesson, ValueList<PreviewPart> Parts)
{
    /// <summary>The language of the text (BCP 47).</summary>
    public string Language => Lesson.Front.Language;

    /// <summary>The title, as plain text.</summary>
    public string Title => Lesson.Front.Title;
}

/// <summary>A part of a page, one or more whole elements.</summary>
/// <param name="Key">Names the part. A part that is as it was keeps its key from one page to the next, wherever it now stands; no two parts of a page have the same.</param>
/// <param name="Line">The line of the lesson file where it begins, counted from 1.</param>
/// <param name="Html">Its HTML, which is also well-formed XML; it has no script.</param>
public sealed record PreviewPart(int Key, int Line, string Html);
