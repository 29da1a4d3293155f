using Fretloom.Claims.Checking;
using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>The tunings and kinds of key on which statements are tried: all tunings, or a sample where there are too many.</summary>
/// <remarks>
/// A sample holds every palindromic tuning, which are few and matter most, the target with its neighbours, the listed ones, and others drawn by
/// the seed. Each palindromic tuning stands for itself, each other one for as many as were not drawn.
/// </remarks>
internal sealed class Ground
{
    private const int MostWhole = 1_400;
    private const int Drawn = 4_096;
    private const int LargestStep = 11;

    private Ground(ValueList<Key> kinds, List<int[]> steps, int all)
    {
        (Kinds, Steps) = (kinds, steps);
        Palindromic = PlacesWhere(IsPalindromic);
        var palindromic = Enumerable.Range(0, steps.Count).Count(at => Palindromic[0, at]);
        var others = steps.Count - palindromic;
        WeightOfOthers = others == 0 ? 0 : (all - AllPalindromic(steps[0].Length)) / (double)others;
    }

    /// <summary>One key of each kind.</summary>
    public ValueList<Key> Kinds { get; }

    /// <summary>Each tuning's steps from far to near.</summary>
    public IReadOnlyList<int[]> Steps { get; }

    /// <summary>The palindromic ones, as a row of one kind.</summary>
    public Row Palindromic { get; }

    /// <summary>How many tunings each that is not palindromic stands for.</summary>
    public double WeightOfOthers { get; }

    public static Ground Of(ValueList<Key> kinds, Place here, int seed)
    {
        var strings = here.Strings.Count;
        var all = new PlaceList(new PlaceScope.Tunings(strings));
        if (all.Count <= MostWhole)
        {
            return new Ground(kinds, [.. Enumerable.Range(0, all.Count).Select(all.Steps)], all.Count);
        }

        var palindromic = new PlaceList(new PlaceScope.Tunings(strings, isPalindromic: true));
        var listed = ListedStringSets.All.Where(place => place.Strings.Count == strings).Select(StepsOf);
        var random = new SeededRandom(seed);
        var drawn = Enumerable.Range(0, Drawn).Select(_ => all.Steps(random.Below(all.Count)));
        var steps = Enumerable
            .Range(0, palindromic.Count)
            .Select(palindromic.Steps)
            .Concat(listed)
            .Concat(NeighboursOf(StepsOf(here)))
            .Concat(drawn)
            .Where(IsInRange)
            .DistinctBy(each => string.Join(' ', each));
        return new Ground(kinds, [.. steps], all.Count);
    }

    public static int[] StepsOf(Place place) => [.. place.Strings.Steps];

    /// <summary>The string sets that something is true of, as a row of one kind.</summary>
    public Row PlacesWhere(Func<int[], bool> isTrue)
    {
        var row = new Row(1, Steps.Count);
        for (var at = 0; at < Steps.Count; at++)
        {
            row[0, at] = isTrue(Steps[at]);
        }

        return row;
    }

    /// <summary>How many cases a row says yes to, the tunings that were not drawn among them.</summary>
    public double Weigh(Row row)
    {
        var (all, palindromic) = row.Count(Palindromic);
        return palindromic + (all - palindromic) * WeightOfOthers;
    }

    public static bool IsPalindromic(int[] steps) => steps.SequenceEqual(steps.Reverse());

    private static bool IsInRange(int[] steps) => steps.All(step => step is >= 1 and <= LargestStep);

    private static int AllPalindromic(int steps) =>
        new PlaceList(new PlaceScope.Tunings(steps + 1, isPalindromic: true)).Count;

    /// <summary>The tuning itself, and those with one step changed.</summary>
    private static IEnumerable<int[]> NeighboursOf(int[] steps) =>
        Enumerable
            .Range(0, steps.Length)
            .SelectMany(at =>
                Enumerable
                    .Range(1, LargestStep)
                    .Select(step => steps.Select((old, i) => i == at ? step : old).ToArray())
            )
            .Prepend(steps);
}
