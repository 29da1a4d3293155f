using Fretloom.Neck;

namespace Fretloom.Claims.Discovery;

/// <summary>The strings that statements are made of: those of the target, or those of any tuning of as many strings.</summary>
/// <param name="set">The strings, the farthest first.</param>
/// <param name="pattern">The target's strings, which decide what is a run: both sets then have the same runs, one by one.</param>
internal sealed class ChosenStrings(StringSet set, StringSet pattern)
{
    public int Count => set.Count;

    /// <summary>String numbers, the farthest first.</summary>
    public ValueList<int> Numbers => set.Numbers;

    /// <summary>All of the strings, when there are as many as asked for, and every run of so many neighbours; null for all.</summary>
    public IEnumerable<OtherStrings?> OfSize(int size) => size == Count ? [null] : Runs(size);

    /// <summary>All strings as null, then every smaller run of at least so many neighbours.</summary>
    public IEnumerable<OtherStrings?> AllAndRuns(int least) =>
        Enumerable.Range(least, Math.Max(0, Count - least)).Reverse().SelectMany(Runs).Prepend(null);

    /// <summary>Two runs of one size, smaller than all.</summary>
    public IEnumerable<(OtherStrings? One, OtherStrings? Other)> PairsOfRuns(int least) =>
        Enumerable.Range(least, Math.Max(0, Count - least)).SelectMany(PairsOfSize);

    /// <summary>Two runs of a size, the farther first.</summary>
    public IEnumerable<(OtherStrings? One, OtherStrings? Other)> PairsOfSize(int size)
    {
        var runs = OfSize(size).ToList();
        return from one in runs.Index() from other in runs.Skip(one.Index + 1) select (one.Item, other);
    }

    private IEnumerable<OtherStrings?> Runs(int size) =>
        Enumerable
            .Range(0, Math.Max(0, Count - size + 1))
            .Where(start => pattern.Numbers[start] - pattern.Numbers[start + size - 1] == size - 1)
            .Select(start => new OtherStrings(new StringSet(set.Numbers.Skip(start).Take(size))));
}
