using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>How far string sets are tuned from each other, and the same strings tuned otherwise.</summary>
internal static class Retunings
{
    /// <summary>
    /// How far a string is tuned down and up at most, in semitones, and the lowest note that any is tuned down to, A0. Down a fourth is where a baritone
    /// guitar's strings lie, up a minor third where a terz guitar's do; A0 is the lowest note of a piano. Common practice, no source.
    /// </summary>
    private const int MostDown = 5;
    private const int MostUp = 3;
    private const int Lowest = 21;

    /// <summary>
    /// By how many semitones, all told, the strings of one set have to be tuned otherwise to lie as another's do. All of them moved alike count
    /// nothing: so a bass is as near to a guitar's strings 6-3 as can be.
    /// </summary>
    /// <param name="one">A string set.</param>
    /// <param name="other">Another of as many strings.</param>
    public static int Distance(ValueList<int> one, ValueList<int> other)
    {
        var moves = Moves(one, other);
        var least = MovedAlike(moves);
        return moves.Sum(move => Math.Abs(move - least));
    }

    /// <summary>The place with one of its strings tuned otherwise, as far as it can be strung; the nearest first, and down before up.</summary>
    public static IEnumerable<Place> OfOneString(Place here) =>
        from far in Enumerable.Range(1, MostDown)
        from semitones in new[] { -far, far }
        from at in Enumerable.Range(0, here.Strings.Count)
        let opens = here.Strings.Opens.Select((open, i) => i == at ? open + semitones : open).ToValueList()
        where CanBeStrung(here.Strings.Opens, opens)
        select Tuned(here, opens);

    /// <summary>The open notes of the place's strings tuned in other steps, as few of them as can be; null where it cannot be strung so.</summary>
    /// <param name="here">On an instrument.</param>
    /// <param name="steps">From far to near, in semitones.</param>
    public static ValueList<int>? InSteps(Place here, ReadOnlySpan<int> steps)
    {
        var opens = here.Strings.Opens;
        var tuned = new int[opens.Count];
        tuned[0] = opens[0];
        for (var at = 0; at < steps.Length; at++)
        {
            tuned[at + 1] = tuned[at] + steps[at];
        }

        var alike = MovedAlike(Moves(opens, tuned));
        var moved = tuned.Select(open => open - alike).ToValueList();
        return CanBeStrung(opens, moved) ? moved : null;
    }

    /// <summary>The place with its strings tuned to other notes; a tuning is that of the neck without its capo.</summary>
    /// <param name="here">On an instrument.</param>
    /// <param name="opens">MIDI notes, the farthest string first.</param>
    public static Place Tuned(Place here, ValueList<int> opens)
    {
        var (capo, bare) = (here.Instrument!.Capo, here.Instrument!.WithCapo(0));
        var pitches = bare.OpenPitches.ToArray();
        foreach (var (at, number) in here.Strings.Numbers.Numbers.Index())
        {
            var move = opens[at] - here.Strings.Opens[at];
            ref var pitch = ref pitches[number - 1];
            pitch = move == 0 ? pitch : Pitch.FromMidiNumber(pitch.MidiNumber + move);
        }

        return Place.On(bare.Tuned(pitches).WithCapo(capo), here.Strings.Numbers);
    }

    private static bool CanBeStrung(ValueList<int> opens, ValueList<int> tuned) =>
        opens
            .Zip(tuned)
            .All(one =>
                one.Second - one.First is >= -MostDown and <= MostUp
                && (one.First == one.Second || one.Second >= Lowest)
            );

    private static List<int> Moves(IEnumerable<int> from, IEnumerable<int> to) =>
        [.. from.Zip(to, (one, other) => other - one)];

    // A median of the moves makes the sum of what is left least. Of two, that which leaves more strings alone, then the smaller.
    private static int MovedAlike(List<int> moves)
    {
        var ordered = moves.Order().ToList();
        return new[] { ordered[(ordered.Count - 1) / 2], ordered[ordered.Count / 2] }
            .OrderByDescending(move => moves.Count(other => other == move))
            .ThenBy(Math.Abs)
            .First();
    }
}
