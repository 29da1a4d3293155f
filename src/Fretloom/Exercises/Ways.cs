namespace Fretloom.Exercises;

/// <summary>The ways through a row of notes, as places in it counted from 0, the lowest note.</summary>
internal static class Ways
{
    /// <summary>The places in the order in which they are played.</summary>
    /// <param name="count">Notes in the row, at least as many as <see cref="Least"/>.</param>
    /// <param name="direction">Up, down, or there and back.</param>
    /// <param name="grouping">Note by note, or in overlapping groups, each complete.</param>
    public static IEnumerable<int> Through(int count, Direction direction, Grouping grouping)
    {
        var up = Up(count, grouping).ToList();
        var down = up.ConvertAll(place => count - 1 - place);
        return direction switch
        {
            Direction.Up => up,
            Direction.Down => down,
            Direction.UpAndDown => There(up, down, grouping),
            _ => There(down, up, grouping),
        };
    }

    /// <summary>How many notes a row needs to be gone through so.</summary>
    public static int Least(Grouping grouping) => Group(grouping)[^1] + 1;

    /// <summary>The degrees of some chords of a key in another order, beginning with the same one.</summary>
    /// <param name="degrees">The degrees in steps.</param>
    /// <param name="way">The order.</param>
    public static IEnumerable<int> Order(ValueList<int> degrees, ChordWay way)
    {
        var step = way switch
        {
            ChordWay.ByStep => 1,
            ChordWay.ByThirds => 2,
            _ => 3,
        };
        return Enumerable
            .Range(0, 7)
            .Select(at => (degrees[0] - 1 + at * step) % 7 + 1)
            .Where(degree => degrees.Contains(degree));
    }

    private static IEnumerable<int> There(List<int> there, List<int> back, Grouping grouping) =>
        there.Concat(grouping == Grouping.Plain ? back.Skip(1) : back);

    private static IEnumerable<int> Up(int count, Grouping grouping)
    {
        var group = Group(grouping);
        return Enumerable.Range(0, count - group[^1]).SelectMany(first => group.Select(place => first + place));
    }

    private static int[] Group(Grouping grouping) =>
        grouping switch
        {
            Grouping.BrokenThirds => [0, 2],
            Grouping.Threes => [0, 1, 2],
            Grouping.Fours => [0, 1, 2, 3],
            _ => [0],
        };
}
