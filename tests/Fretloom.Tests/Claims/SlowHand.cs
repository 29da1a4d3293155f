using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Testing;

namespace Fretloom.Tests.Claims;

/// <summary>Shapes under a hand by the definitions of docs/hand.md: where fingertips land, and every way to lay a finger on each note.</summary>
/// <remarks>What a way costs is the program's model of the hand, which has tests of its own; which ways there are, and which costs least, is found anew.</remarks>
internal static class SlowHand
{
    /// <summary>A shape farther apart than this share of the hand is no grip but a line.</summary>
    private const double MostOfHand = 1.5;

    public static double StretchMm(Instrument instrument, ValueList<Spot> spots)
    {
        var tips = spots
            .Where(spot => spot.Fret > instrument.String(spot.String).StartsAtFret)
            .Select(spot => TipMm(instrument, spot.Fret + instrument.Capo))
            .ToList();
        return tips.Count == 0 ? 0 : tips.Max() - tips.Min();
    }

    /// <summary>The cheapest fingers, and how wide they are, held with one for each note or, where no hand holds the shape, played as a line; null off the neck.</summary>
    public static (ValueList<Finger> Fingers, Width Width)? Best(Player player, ValueList<Spot> spots) =>
        !spots.All(player.Instrument.Has) ? null
        : BestHold(player, spots) is { } held ? held
        : LineFingering.FindBothWays(player, spots).Best is { } line
            ? (spots.Select(spot => line.FingerAt(spot)!.Value).ToValueList(), line.Width)
        : null;

    /// <summary>The cheapest fingers with one for each note, and how wide they are; null off the neck, farther apart than a hand, and for more stopped notes than fingers.</summary>
    public static (ValueList<Finger> Fingers, Width Width)? BestHold(Player player, ValueList<Spot> spots)
    {
        if (
            !spots.All(player.Instrument.Has)
            || StretchMm(player.Instrument, spots) > MostOfHand * player.Hand.LengthMm
        )
        {
            return null;
        }

        var ways = SlowHolds.All(player, spots, isOneFingerANote: true).ToList();
        if (ways.Count == 0)
        {
            return null;
        }

        var priced = ArpeggioFingering
            .Find(player, spots, 1000)
            .Fingerings.ToDictionary(one => one.Notes.Select(note => note.Finger).ToValueList());
        var best = ways.OrderBy(fingers => priced[fingers].Cost)
            .ThenBy(fingers => string.Concat(fingers.Select(finger => (int)finger)), StringComparer.Ordinal)
            .First();
        return (best, priced[best].Width);
    }

    // A finger lands a quarter of the fret behind its wire.
    private static double TipMm(Instrument instrument, int fret) =>
        0.75 * WireMm(instrument, fret) + 0.25 * WireMm(instrument, fret - 1);

    private static double WireMm(Instrument instrument, int fret) =>
        instrument.ScaleLengthMm * (1 - Math.Pow(2, -fret / 12.0));
}
