namespace Fretloom.Theory;

/// <summary>In which order the twelve keys of a lesson follow each other.</summary>
public enum KeyOrder
{
    /// <summary>Each key a fourth above the one before.</summary>
    Fourths,

    /// <summary>Each key a half-step above the one before.</summary>
    HalfSteps,

    /// <summary>
    /// The order in which the fewest frets are moved in all, from key to key: a mark that goes one fret counts one. Major
    /// keys come by fourths, melodic minor keys by whole steps for as long as there are new ones.
    /// </summary>
    FewestMoves,
}

/// <summary>The twelve keys of one kind.</summary>
public static class TwelveKeys
{
    private const int Count = 12;
    private const int UpFourth = 5;

    /// <summary>The twelve keys of the kind of the first, each once, beginning with it; each spelled as players meet it.</summary>
    public static ValueList<Key> From(Key first, KeyOrder order)
    {
        var steps = order switch
        {
            KeyOrder.Fourths => Enumerable.Range(0, Count).Select(at => at * UpFourth % Count),
            KeyOrder.HalfSteps => Enumerable.Range(0, Count),
            KeyOrder.FewestMoves => ShortestWay(Moves(first.PitchClasses)),
            _ => throw new ArgumentOutOfRangeException(nameof(order)),
        };
        return steps.Select(semitones => semitones == 0 ? first : Above(first, semitones)).ToValueList();
    }

    private static Key Above(Key first, int semitones)
    {
        // Seven half-steps are one fifth, so a number of half-steps is seven times as many fifths.
        var fifths = first.Tonic.FifthsFromC + (semitones * 7 % Count);
        return first.On(NoteName.FromFifths(fifths > 13 ? fifths - Count : fifths)).Simplest();
    }

    /// <summary>
    /// How many frets are moved in all when the marks of a key become those of the key some half-steps higher, each mark
    /// going to one mark; item 0 is 0. Marks that do not cross are enough, so the notes are matched in order, from every start.
    /// </summary>
    internal static int[] Moves(PitchClassSet notes)
    {
        var here = Enumerable
            .Range(0, Count)
            .Where(semitones => notes.Contains(PitchClass.FromSemitones(semitones)))
            .ToArray();
        return
        [
            .. Enumerable.Range(0, Count).Select(up => Enumerable.Range(0, here.Length).Min(start => Total(up, start))),
        ];

        int Total(int up, int start) =>
            here.Select((note, at) => Around(note, here[(at + start) % here.Length] + up)).Sum();

        static int Around(int one, int other)
        {
            var distance = Math.Abs(one - other) % Count;
            return Math.Min(distance, Count - distance);
        }
    }

    /// <summary>
    /// The cheapest way through all twelve keys from the first, by dynamic programming over the keys visited (Held and Karp
    /// 1962). Of equally cheap ways the one that goes by fourths for longest.
    /// </summary>
    private static List<int> ShortestWay(int[] moves)
    {
        const int All = (1 << Count) - 1;
        var cost = new int[1 << Count, Count];
        for (var visited = All - 1; visited > 0; visited--)
        {
            for (var at = 0; at < Count; at++)
            {
                cost[visited, at] = Next(visited).Min(next => Price(visited, at, next));
            }
        }

        var way = new List<int> { 0 };
        for (var visited = 1; visited != All; visited |= 1 << way[^1])
        {
            var at = way[^1];
            var best = cost[visited, at];
            way.Add(
                Next(visited)
                    .Where(next => Price(visited, at, next) == best)
                    .MinBy(next => (next - at + Count) % Count * UpFourth % Count)
            );
        }

        return way;

        IEnumerable<int> Next(int visited) => Enumerable.Range(0, Count).Where(next => (visited & (1 << next)) == 0);

        int Price(int visited, int at, int next) =>
            moves[(next - at + Count) % Count] + cost[visited | (1 << next), next];
    }
}
