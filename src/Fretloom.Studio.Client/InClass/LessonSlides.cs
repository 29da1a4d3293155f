using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Html;

namespace Fretloom.Studio.Client.InClass;

/// <summary>What of a lesson is shown to a class.</summary>
public static class LessonSlides
{
    /// <summary>The parts with pictures, claims and exercises, in the order of the lesson; prose is for the teacher to say.</summary>
    /// <param name="page">The lesson; null for none.</param>
    public static ValueList<PreviewPart> Of(PreviewPage? page)
    {
        if (page is null)
        {
            return [];
        }

        var lines = page
            .Lesson.Blocks.Where(block => block is Block.Figure or Block.Statement or Block.Exercise)
            .Select(block => block.Line)
            .ToHashSet();
        return page.Parts.Where(part => lines.Contains(part.Line)).ToValueList();
    }
}
