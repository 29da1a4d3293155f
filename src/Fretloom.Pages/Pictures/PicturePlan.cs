using Fretloom.Exhibits;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>Decides which pictures an exhibit is shown with, and draws them.</summary>
public static class PicturePlan
{
    /// <summary>The width of text on an A4 page with margins of 20 mm: 170 mm, in points.</summary>
    public const double PageWidth = 170 / 25.4 * 72;

    /// <summary>The least width there must be, in points: that of a column of three.</summary>
    public const double SmallestWidth = 146;

    /// <summary>
    /// The pictures of an exhibit, in the order they are shown. First the neck, when notes, landmarks or symmetries were asked
    /// for, or there is but one shape of a scale; for landmarks alone a strip of frets. Then the shapes as rows of cards, or of
    /// chord boxes where they are strummed. None when only shapes were asked for and there are none.
    /// </summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="width">The width there is, in points; a picture that needs less is narrower.</param>
    /// <param name="focus">The shape to bring out, one of the exhibit's; null leaves it to the exhibit.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is less than <see cref="SmallestWidth"/>.</exception>
    public static ValueList<Picture> For(Exhibit exhibit, double width = PageWidth, Shape? focus = null) =>
        For(exhibit, width, focus, new ExplainedSigns());

    /// <summary>The same among other pictures, where a sign is explained once.</summary>
    /// <param name="exhibit">What to show.</param>
    /// <param name="width">The width there is, in points.</param>
    /// <param name="focus">The shape to bring out, or null.</param>
    /// <param name="explained">The words of the signs explained before; those explained here are added.</param>
    internal static ValueList<Picture> For(Exhibit exhibit, double width, Shape? focus, ExplainedSigns explained)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(width, SmallestWidth);
        var pictures = new List<Picture>();
        if (HasNeck(exhibit))
        {
            pictures.Add(Neck(exhibit, width, focus, explained));
        }

        if (HasShapes(exhibit))
        {
            var (kind, rows) = ChordBoxRow.IsFor(exhibit.Shapes ?? [])
                ? ("boxes", ChordBoxRow.DrawAll(exhibit, width, explained))
                : ("cards", CardRow.DrawAll(exhibit, width, focus, explained));
            pictures.AddRange(rows.Select(row => row with { Kind = kind }));
        }

        return pictures.ToValueList();
    }

    /// <summary>Whether a neck, or the strip of its landmarks, is shown.</summary>
    internal static bool HasNeck(Exhibit exhibit) =>
        exhibit.Notes is not null
        || exhibit.Landmarks is not null
        || exhibit.Symmetries is not null
        || IsOneScale(exhibit);

    /// <summary>Whether the strip of landmarks takes the place of the neck.</summary>
    internal static bool HasLandmarksOnly(Exhibit exhibit) =>
        exhibit is { Notes: null, Shapes: null, Symmetries: null, Landmarks: not null, ShowsThirds: false };

    /// <summary>Whether shapes are shown beside the neck, one by one.</summary>
    internal static bool HasShapes(Exhibit exhibit) => exhibit.Shapes is { Count: > 0 } && !IsOneScale(exhibit);

    private static bool IsOneScale(Exhibit exhibit) => exhibit.Shapes is [{ Source: ShapeSource.OfScale }];

    private static Picture Neck(Exhibit exhibit, double width, Shape? focus, ExplainedSigns explained)
    {
        var content = NeckContent.Of(exhibit, focus);
        var words = NeckWords.Of(content);
        return HasLandmarksOnly(exhibit)
            ? new Picture(
                NeckPicture.DrawLandmarks(content, width, words, explained),
                NeckWords.LandmarkTable(exhibit.Landmarks!)
            )
            {
                Kind = "landmarks",
            }
            : new Picture(NeckPicture.Draw(content, width, words, explained), NeckWords.Table(content));
    }
}
