using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Studio.Client.InClass;

/// <summary>A picture for the whole class.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Drawing">The picture.</param>
public sealed record Slide(string Title, Drawing Drawing)
{
    // Points: a neck this wide has large marks on a wall.
    private const double Width = 720;

    /// <summary>The neck of an exhibit, then each of its shapes brought out on it.</summary>
    /// <param name="exhibit">What is shown.</param>
    /// <param name="inHand">The shape put together by hand, shown after the neck; null for none.</param>
    /// <param name="isFacing">Whether it is mirrored, as a student sees it who sits opposite the teacher.</param>
    public static ValueList<Slide> Of(Exhibit exhibit, Shape? inHand, bool isFacing)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        var seen = exhibit with { IsLeftHanded = exhibit.IsLeftHanded != isFacing };
        var shapes = (seen.Shapes ?? []).AsEnumerable();
        if (inHand is not null)
        {
            shapes = shapes.Prepend(inHand);
        }

        return
        [
            new Slide(Accidentals.Pretty(exhibit.Map.Key.ToString()), LiveNeck.Of(seen, null, Width).Drawing),
            .. shapes.Select(shape => new Slide(
                Accidentals.Pretty(shape.Source.Name),
                LiveNeck.Of(seen, shape, Width).Drawing
            )),
        ];
    }
}
