namespace Fretloom.Scores.Engraving;

/// <summary>Where systems begin: as few of them as will do, with as many bars in each as in the others, and each key at a beginning where that fits.</summary>
internal static class SystemBreaks
{
    // Half as many systems again may be spent on letting keys begin where systems do. Ours, without source.
    private const double MostForKeys = 1.5;

    /// <summary>Chooses the breaks.</summary>
    /// <param name="bars">The bars.</param>
    /// <param name="room">The width of a system; a bar that is wider has one to itself.</param>
    /// <param name="keys">The bars with which a part in another key begins, counted from 1.</param>
    /// <returns>The first bar of each system, counted from 1, ascending.</returns>
    public static IReadOnlyList<int> Choose(IReadOnlyList<Bar> bars, double room, IReadOnlySet<int> keys)
    {
        var fewest = Best((_, _) => true)!;
        // A system that begins in one key and goes on in another is not wanted.
        var byKey = Best(
            (first, last) =>
                keys.Contains(first) || !Enumerable.Range(first + 1, last - first).Any(bar => keys.Contains(bar))
        );
        return byKey is not null && byKey.Count <= fewest.Count * MostForKeys ? byKey : fewest;

        // From the last bar back: the cheapest way to set all bars from one on.
        List<int>? Best(Func<int, int, bool> isWanted)
        {
            var ways = new (int Systems, int Squares, int Next)?[bars.Count + 2];
            ways[bars.Count + 1] = (0, 0, 0);
            for (var first = bars.Count; first >= 1; first--)
            {
                var width = bars[first - 1].Signs - bars[first - 1].Lead;
                for (var last = first; last <= bars.Count; last++)
                {
                    width += bars[last - 1].Lead + bars[last - 1].Body;
                    if (width > room && last > first)
                    {
                        break;
                    }

                    var count = last - first + 1;
                    if (
                        isWanted(first, last)
                        && ways[last + 1] is { } rest
                        && (
                            ways[first] is not { } best
                            || (rest.Systems + 1, rest.Squares + count * count).CompareTo((best.Systems, best.Squares))
                                <= 0
                        )
                    )
                    {
                        ways[first] = (rest.Systems + 1, rest.Squares + count * count, last + 1);
                    }
                }
            }

            if (ways[1] is null)
            {
                return null;
            }

            var firsts = new List<int>();
            for (var first = 1; first <= bars.Count; first = ways[first]!.Value.Next)
            {
                firsts.Add(first);
            }

            return firsts;
        }
    }

    /// <summary>What a bar takes.</summary>
    /// <param name="Signs">The clef and the signature before it, where it begins a system.</param>
    /// <param name="Lead">What lies between the bar line and the first note, where it does not.</param>
    /// <param name="Body">From the first note on.</param>
    public readonly record struct Bar(double Signs, double Lead, double Body);
}
