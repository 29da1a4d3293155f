using System.Globalization;
using Fretloom.Neck;

namespace Fretloom.Hand.Chords;

/// <summary>Why notes cannot be held together, and what would go instead.</summary>
internal static class ChordRefusals
{
    /// <summary>
    /// How far two fingers of a hand may ever lie apart along the neck, as a share of the hand's length: an assumption without
    /// source, well beyond every greatest distance of <see cref="HandReach"/>.
    /// </summary>
    private const double MostOfHand = 1.5;

    /// <summary>What is wrong with the spots themselves; null when nothing is.</summary>
    public static FingeringRefusal? OfSpots(Player player, ValueList<Spot> spots)
    {
        if (spots.Count == 0)
        {
            return new("There is no note to hold; name at least one.");
        }

        for (var at = 0; at < spots.Count; at++)
        {
            if (OfSpot(player.Instrument, spots[at]) is { } message)
            {
                return new(message, at);
            }

            for (var before = 0; before < at; before++)
            {
                if (spots[before].String == spots[at].String)
                {
                    return new(
                        $"{Named(spots[at], true)} and fret {spots[before].Fret} are on one string, which sounds one note at a time; leave one out.",
                        at
                    );
                }
            }
        }

        return OfDistance(player, spots);
    }

    /// <summary>Why there is no hold, though every spot is on the neck.</summary>
    public static FingeringRefusal OfHold(Player player, ValueList<Spot> spots, bool isOneFingerANote)
    {
        var pressed = spots.Where(spot => !player.Instrument.IsOpen(spot)).ToList();
        var reason = isOneFingerANote
            ? $"{pressed.Count} fretted notes with a finger each take more fingers than a hand has"
            : "No hand holds these notes together: they take more fingers than there are, even with fingers laid across strings";
        bool Goes(IEnumerable<Spot> some) =>
            HoldEnumeration.All(new HeldChord(player, some.ToValueList()), isOneFingerANote).Count > 0;
        // An open string may part what one finger could stop; it is the last to be given up.
        foreach (var spot in pressed.Concat(spots.Where(player.Instrument.IsOpen)))
        {
            if (Goes(spots.Where(other => other != spot)))
            {
                return new($"{reason}. Leave out {Named(spot)}, and the rest can be held.", spots.IndexOf(spot));
            }
        }

        var held = Enumerable.Range(1, spots.Count - 1).TakeWhile(count => Goes(spots.Take(count))).Count();
        return new(
            $"{reason}. {Named(spots[held], true)} is the first that cannot be added; leave out more than one note.",
            held
        );
    }

    /// <summary>Whether the notes lie farther apart along the neck than a hand can be.</summary>
    public static bool IsTooFar(Player player, ValueList<Spot> spots) =>
        player.Instrument.StretchMm(spots) > MostOfHand * player.Hand.LengthMm;

    private static string? OfSpot(Instrument instrument, Spot spot) =>
        spot.String > instrument.Strings.Count
            ? $"{Named(spot, true)} is not on the neck: the {instrument} has strings 1 to {instrument.Strings.Count}."
        : spot.Fret > instrument.LastFret
            ? $"{Named(spot, true)} is not on the neck: the last fret of the {instrument} is {instrument.LastFret}{(instrument.Capo > 0 ? ", counted from the capo" : "")}."
        : !instrument.Has(spot)
            ? $"{Named(spot, true)} is not on the neck: string {spot.String} begins at fret {instrument.String(spot.String).StartsAtFret}, its open note."
        : null;

    private static FingeringRefusal? OfDistance(Player player, ValueList<Spot> spots)
    {
        if (!IsTooFar(player, spots))
        {
            return null;
        }

        var stretch = player.Instrument.StretchMm(spots);
        var pressed = spots.Where(spot => !player.Instrument.IsOpen(spot)).ToList();
        var low = pressed.MinBy(spot => spot.Fret);
        var high = pressed.MaxBy(spot => spot.Fret);
        return new(
            string.Create(
                CultureInfo.InvariantCulture,
                $"No hand of {player.Hand} reaches from {Named(low)} to {Named(high)}, {stretch:0} mm apart along the neck; leave one of them out, or take it on another string."
            ),
            spots.IndexOf(high)
        );
    }

    private static string Named(Spot spot, bool atStart = false) =>
        $"{(atStart ? "String" : "string")} {spot.String}, fret {spot.Fret}";
}
