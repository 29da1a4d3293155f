namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes claims about how far frets lie apart; see <see cref="DistanceClaims"/>.</summary>
internal sealed class DistanceCompiler(Code code, NeckCompiler neck, FretCompiler frets)
{
    private readonly Logic _logic = new(code);

    /// <summary>A fret and the next one up lie apart as said, unless one lies so far above the other as is not wanted and none between.</summary>
    public Answer NeighboursLieApart(Claim.NeighboursLieApart claim)
    {
        var set = frets.Noun(claim.Noun);
        var (between, wrong) = (new FretBits(), new List<int>());
        foreach (
            var distance in Distances(
                1,
                neck.Window is { } range ? 2 * (range.Count - 1) : FretCompiler.HalfFretsInOctave,
                set
            )
        )
        {
            var below = neck.Moved(set, -distance);
            if (!DistanceClaims.Admits(claim.Frets, distance))
            {
                wrong.Add(neck.IsAny(neck.Without(neck.Common(set, below), between)));
            }

            between = neck.Together(between, below);
        }

        var isThere = neck.Window is null ? neck.IsAny(set) : code.WithNumber(Op.IsAbove, neck.Count(set), 1);
        return new Answer(_logic.Any(wrong), _logic.Not(isThere));
    }

    /// <summary>The gap is as said, unless frets meet at a distance that is not wanted and at no smaller one.</summary>
    public Answer GapIs(Claim.GapIs claim)
    {
        var (one, other) = (frets.Of(claim.One), frets.Of(claim.Other));
        var (met, wrong) = (code.Number(0), new List<int>());
        foreach (var distance in Distances(0, frets.Farthest(one, other), one, other))
        {
            var near = neck.Together(neck.Moved(other, distance), neck.Moved(other, -distance));
            var meets = neck.IsAny(neck.Common(one, near));
            if (!DistanceClaims.Admits(claim.Frets, distance))
            {
                wrong.Add(code.Binary(Op.Without, meets, met));
            }

            met = code.Binary(Op.Or, met, meets);
        }

        var areThere = code.Binary(Op.And, neck.IsAny(one), neck.IsAny(other));
        return new Answer(_logic.Any(wrong), _logic.Not(areThere));
    }

    /// <summary>Ascending, in half frets; whole frets only where there are no others.</summary>
    private static IEnumerable<int> Distances(int least, int most, params ReadOnlySpan<FretBits> sets)
    {
        var hasHalves = false;
        foreach (var set in sets)
        {
            hasHalves |= set.HasHalves;
        }

        return Enumerable.Range(least, Math.Max(0, most - least + 1)).Where(distance => hasHalves || distance % 2 == 0);
    }
}
