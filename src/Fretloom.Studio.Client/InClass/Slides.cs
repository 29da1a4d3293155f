using Fretloom.Exhibits;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Html;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.InClass;

/// <summary>Something for the whole class.</summary>
/// <param name="Title">What it belongs to: a sentence, or a lesson.</param>
/// <param name="Name">What it is.</param>
/// <param name="Drawing">The picture; null for a part of a lesson that stands in the handout as it is.</param>
/// <param name="Part">The key of that part; null for a picture.</param>
public sealed record Slide(string Title, string Name, Drawing? Drawing, int? Part = null)
{
    /// <summary>The neck of an exhibit, then each of its shapes brought out on it.</summary>
    /// <param name="exhibit">What is shown.</param>
    /// <param name="sentence">The sentence it comes from, as it was said.</param>
    /// <param name="inHand">The shape put together by hand, shown after the neck; null for none.</param>
    /// <param name="isFacing">Whether it is mirrored, as a student sees it who sits opposite the teacher.</param>
    /// <param name="aspect">How wide the room for it is to how high.</param>
    public static IEnumerable<Slide> Of(Exhibit exhibit, string sentence, Shape? inHand, bool isFacing, double aspect)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        var seen = exhibit with { IsLeftHanded = exhibit.IsLeftHanded != isFacing };
        var title = char.ToUpperInvariant(sentence[0]) + Accidentals.Pretty(sentence[1..]);
        IEnumerable<Shape?> focuses = [null, .. inHand is null ? [] : (Shape[])[inHand], .. seen.Shapes ?? []];
        return focuses.Select(focus => new Slide(
            title,
            Accidentals.Pretty(focus is null ? exhibit.Map.Key.ToString() : focus.Source.Name),
            Filling(seen, focus, aspect)
        ));
    }

    /// <summary>The pictures, claims and exercises of a lesson, in its order; prose is for the teacher to say.</summary>
    /// <param name="page">The lesson; null for none.</param>
    /// <param name="isFacing">Whether pictures are mirrored. Staves, tablature and claims never are: they are read from left to right.</param>
    public static IEnumerable<Slide> Of(PreviewPage? page, bool isFacing)
    {
        if (page is null)
        {
            yield break;
        }

        var parts = page.Parts.ToLookup(part => part.Line);
        foreach (var block in page.Lesson.Blocks)
        {
            if (block is Block.Figure figure)
            {
                var seen = figure.Exhibit with { IsLeftHanded = figure.Exhibit.IsLeftHanded != isFacing };
                foreach (var picture in PicturePlan.For(seen))
                {
                    var name = figure.Options.Title ?? figure.Options.Caption ?? picture.Drawing.Title;
                    yield return new Slide(page.Title, name, picture.Drawing);
                }
            }
            else if (block is Block.Statement or Block.Exercise)
            {
                foreach (var part in parts[block.Line])
                {
                    yield return new Slide(page.Title, (block as Block.Exercise)?.Title ?? "", null, part.Key);
                }
            }
        }
    }

    // A neck as wide as it is long would be a strip on a wall: its frets are drawn closer, as far as the marks allow, until it fills the room.
    private static Drawing Filling(Exhibit exhibit, Shape? focus, double aspect)
    {
        var drawing = LiveNeck.Of(exhibit, focus, 0, hasLegend: true).Drawing;
        return drawing.Width >= drawing.Height * aspect
            ? drawing
            : LiveNeck.Of(exhibit, focus, drawing.Height * aspect, hasLegend: true).Drawing;
    }
}
