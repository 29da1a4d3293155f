using Fretloom.Hand;
using Fretloom.Shapes;

namespace Fretloom.Exhibits;

/// <summary>Finds how a hand takes shapes.</summary>
internal static class ShapeFingering
{
    private const int Every = 2_000;

    /// <summary>
    /// A shape with its best fingering. A strummed chord is held together. One note per string takes a finger a string, so that it
    /// can be played note by note with the same fingers; held together where three notes lie on one fret, as a finger laid across
    /// does what three would (an assumption), and where that is less wide. A stretch of scale is played up and down with the same
    /// fingers.
    /// </summary>
    /// <remarks>Where the best one of a chord is very wide, the best of those that are not is taken if there is one.</remarks>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="isOneNotePerString">Whether it was asked for with one note per string.</param>
    public static ShapeInHand Of(Player player, Shape shape, bool isOneNotePerString)
    {
        var answer =
            shape.Source is ShapeSource.OfScale ? Played(player, shape)
            : isOneNotePerString ? EachOrHeld(player, shape)
            : Held(player, shape);
        return new ShapeInHand(shape, answer.Best, answer.Refusal?.Message, []);
    }

    /// <summary>Those in reach first, then wide, then very wide, at last those that no hand can take; else as they were.</summary>
    public static IEnumerable<ShapeInHand> Sorted(IEnumerable<ShapeInHand> shapes) =>
        shapes.OrderBy(shape => shape.WhyNot is null ? (int)shape.Width : int.MaxValue);

    /// <summary>Whether a chord is longer than the hand at its widest, so that every fingering of it is very wide.</summary>
    public static bool IsBeyondReach(Player player, Shape shape) =>
        !player.UsesThumb && shape.StretchMm > player.Hand.MostMm(Finger.Index, Finger.Little);

    private static FingeringAnswer EachOrHeld(Player player, Shape shape)
    {
        if (Each(player, shape) is not { Best: { } each } answer)
        {
            return Held(player, shape);
        }

        return each.Width > Width.InReach && Held(player, shape) is { Best: { } held } other && held.Width < each.Width
            ? other
            : answer;
    }

    private static FingeringAnswer? Each(Player player, Shape shape) =>
        shape
            .Spots.Where(spot => !player.Instrument.IsOpen(spot))
            .GroupBy(spot => spot.Fret)
            .Any(fret => fret.Count() > 2)
            ? null
            : ArpeggioFingering.Find(player, shape.Spots.ToValueList());

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
