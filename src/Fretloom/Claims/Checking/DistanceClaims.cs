namespace Fretloom.Claims.Checking;

/// <summary>Claims about how far frets lie apart.</summary>
internal static class DistanceClaims
{
    private const int Octave = 24;

    public static Outcome NeighboursLieApart(Case one, Claim.NeighboursLieApart claim)
    {
        var distances = Distances(one, one.FretsOf(claim.Noun));
        return distances.Count == 0
            ? Outcome.Untested
            : Outcomes.Of(distances.All(distance => Admits(claim.Frets, distance)));
    }

    public static Outcome GapIs(Case one, Claim.GapIs claim)
    {
        var gap = Gap(one.Neck, FretSets.Of(one, claim.One), FretSets.Of(one, claim.Other));
        return gap is { } halfFrets ? Outcomes.Of(Admits(claim.Frets, halfFrets)) : Outcome.Untested;
    }

    /// <summary>From each place to the next one up, in half frets.</summary>
    public static ValueList<int> Distances(Case one, ValueList<int> set)
    {
        var next = set.Skip(1);
        if (one.Neck.Window is null && set.Count > 0)
        {
            next = next.Append(set[0] + Octave);
        }

        return set.Zip(next, (low, high) => high - low).ToValueList();
    }

    /// <summary>The fewest half frets from a place of one set to one of another; null when either is empty.</summary>
    public static int? Gap(NeckLine neck, ValueList<int> set, ValueList<int> other) =>
        set.SelectMany(_ => other, (a, b) => Math.Abs(a - b))
            .Select(distance => neck.Window is null ? Math.Min(distance, Octave - distance) : distance)
            .Select(distance => (int?)distance)
            .Min();

    /// <summary>Whether a distance in half frets meets a condition in whole ones.</summary>
    public static bool Admits(Count frets, int halfFrets) =>
        halfFrets % 2 == 0
            ? frets.Admits(halfFrets / 2)
            : frets.Comparison switch
            {
                Comparison.AtLeast or Comparison.MoreThan => halfFrets > 2 * frets.Number,
                Comparison.AtMost or Comparison.FewerThan => halfFrets < 2 * frets.Number,
                _ => false,
            };
}
