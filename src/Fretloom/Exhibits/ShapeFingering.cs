using Fretloom.Hand;
using Fretloom.Shapes;

namespace Fretloom.Exhibits;

/// <summary>Finds how a hand takes shapes.</summary>
internal static class ShapeFingering
{
    private const int Every = 2_000;

    /// <summary>A shape with its best fingering: a chord held together, a stretch of scale played up and down with the same fingers.</summary>
    /// <remarks>Where the best one of a chord is very wide, the best of those that are not is taken if there is one.</remarks>
    public static ShapeInHand Of(Player player, Shape shape)
    {
        var answer = shape.Source is ShapeSource.OfScale ? Played(player, shape) : Held(player, shape);
        return new ShapeInHand(shape, answer.Best, answer.Refusal?.Message, []);
    }

    /// <summary>Those in reach first, then wide, then very wide, at last those that no hand can take; else as they were.</summary>
    public static IEnumerable<ShapeInHand> Sorted(IEnumerable<ShapeInHand> shapes) =>
        shapes.OrderBy(shape => shape.WhyNot is null ? (int)shape.Width : int.MaxValue);

    /// <summary>Whether a chord is longer than the hand at its widest, so that every fingering of it is very wide.</summary>
    public static bool IsBeyondReach(Player player, Shape shape) =>
        !player.UsesThumb && shape.StretchMm > player.Hand.MostMm(Finger.Index, Finger.Little);

    private static FingeringAnswer Held(Player player, Shape shape)
    {
        var spots = shape.Spots.ToValueList();
        var answer = ChordFingering.Find(player, spots);
        if (answer.Best is not { Width: Width.VeryWide } || IsBeyondReach(player, shape))
        {
            return answer;
        }

        var reached = ChordFingering
            .Find(player, spots, Every)
            .Fingerings.FirstOrDefault(fingering => fingering.Width < Width.VeryWide);
        return reached is null ? answer : FingeringAnswer.Found([reached]);
    }

    private static FingeringAnswer Played(Player player, Shape shape) =>
        LineFingering.FindBothWays(
            player,
            shape.Notes.OrderBy(note => note.Pitch.MidiNumber).Select(note => note.Spot).ToValueList()
        );
}
