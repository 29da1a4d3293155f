using Fretloom.Theory;

namespace Fretloom.Bench;

/// <summary>Three claims about tunings written by hand, with sets as one would write them first and in plain loops; each counts the failing cases.</summary>
/// <remarks>A tuning is given by its steps in semitones; its farthest string is an E.</remarks>
public static class ClaimLaws
{
    /// <summary>What the laws say, and who counts where they fail: with sets, and in loops.</summary>
    public static (string Text, Func<int[], Key, bool> WithSets, Func<int[], int, bool> InLoops)[] All { get; } =
    [
        ("there is at least 1 full fret", HasFullFretWithSets, HasFullFretInLoops),
        ("every empty fret lies next to a full fret", EmptyIsNextToFullWithSets, EmptyIsNextToFullInLoops),
        ("the key pattern is its own half-turn", TurnsWithSets, TurnsInLoops),
    ];

    /// <summary>Every tuning of six strings with steps in a range.</summary>
    public static IEnumerable<int[]> Tunings(int least, int most) =>
        Enumerable
            .Range(0, 5)
            .Aggregate(
                new[] { Array.Empty<int>() }.AsEnumerable(),
                (all, _) =>
                    all.SelectMany(
                        steps => Enumerable.Range(least, most - least + 1),
                        (steps, step) => (int[])[.. steps, step]
                    )
            );

    private static int[] Opens(int[] steps) =>
        [.. Enumerable.Range(0, steps.Length + 1).Select(at => (4 + steps.Take(at).Sum()) % 12)];

    private static HashSet<int> Frets(Key key, int open) =>
        key.Notes.Select(note => (note.PitchClass.Number - open + 12) % 12).ToHashSet();

    private static HashSet<int> Full(int[] steps, Key key) =>
        Opens(steps).Select(open => Frets(key, open)).Aggregate((all, frets) => all.Intersect(frets).ToHashSet());

    private static HashSet<int> Empty(int[] steps, Key key) =>
        Enumerable.Range(0, 12).Except(Opens(steps).SelectMany(open => Frets(key, open))).ToHashSet();

    private static bool HasFullFretWithSets(int[] steps, Key key) => Full(steps, key).Count >= 1;

    private static bool EmptyIsNextToFullWithSets(int[] steps, Key key)
    {
        var full = Full(steps, key);
        return Empty(steps, key).All(fret => full.Contains((fret + 1) % 12) || full.Contains((fret + 11) % 12));
    }

    private static bool TurnsWithSets(int[] steps, Key key)
    {
        var strings = Opens(steps).Select(open => Frets(key, open)).ToList();
        return Enumerable
            .Range(0, 12)
            .Any(sum =>
                strings
                    .Zip(
                        strings.AsEnumerable().Reverse(),
                        (one, image) => one.Select(fret => (sum - fret + 12) % 12).ToHashSet().SetEquals(image)
                    )
                    .All(isSame => isSame)
            );
    }

    private static bool Sounds(int notes, int open, int fret) => (notes >> (open + fret) % 12 & 1) != 0;

    private static int FullAt(int[] steps, int notes, int fret)
    {
        var (open, sounding) = (4, 0);
        for (var at = 0; at <= steps.Length; at++)
        {
            sounding += Sounds(notes, open, fret) ? 1 : 0;
            open += at < steps.Length ? steps[at] : 0;
        }

        return sounding;
    }

    private static bool HasFullFretInLoops(int[] steps, int notes)
    {
        for (var fret = 0; fret < 12; fret++)
        {
            if (FullAt(steps, notes, fret) == steps.Length + 1)
            {
                return true;
            }
        }

        return false;
    }

    private static bool EmptyIsNextToFullInLoops(int[] steps, int notes)
    {
        for (var fret = 0; fret < 12; fret++)
        {
            if (
                FullAt(steps, notes, fret) == 0
                && FullAt(steps, notes, (fret + 1) % 12) <= steps.Length
                && FullAt(steps, notes, (fret + 11) % 12) <= steps.Length
            )
            {
                return false;
            }
        }

        return true;
    }

    private static bool TurnsInLoops(int[] steps, int notes)
    {
        var opens = new int[steps.Length + 1];
        opens[0] = 4;
        for (var at = 0; at < steps.Length; at++)
        {
            opens[at + 1] = opens[at] + steps[at];
        }

        for (var sum = 0; sum < 12; sum++)
        {
            if (TurnsAbout(opens, notes, sum))
            {
                return true;
            }
        }

        return false;
    }

    private static bool TurnsAbout(int[] opens, int notes, int sum)
    {
        for (var at = 0; at < opens.Length; at++)
        {
            for (var fret = 0; fret < 12; fret++)
            {
                if (Sounds(notes, opens[at], fret) != Sounds(notes, opens[^(at + 1)], 12 + sum - fret))
                {
                    return false;
                }
            }
        }

        return true;
    }
}
