using Fretloom.Hand;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Comparing;

/// <summary>
/// Looks for other ways to a chord that a hand reaches. Each way changes one thing and keeps the others: the same members sound,
/// and but for another inversion the same one lies lowest. Of each way the nearest is taken: the one to which the middle of the
/// notes moves least, then the one that costs the hand least.
/// </summary>
/// <param name="player">The hand, on the instrument of the exhibit.</param>
/// <param name="key">The key that spells the notes.</param>
/// <param name="chord">The chord.</param>
/// <param name="voicing">How it is voiced.</param>
internal sealed class InsteadFinder(Player player, Key key, ShapeSource.OfChord chord, Voicing voicing)
{
    private const int FewestStrings = 3;

    private readonly ChordPool _pool = new(player, key, chord, voicing);

    /// <summary>At most one of each way, the nearest first.</summary>
    public ValueList<Instead> For(Shape shape)
    {
        var from = new Candidate(player.Instrument, shape);
        return new[]
        {
            Nearest(from, InsteadWay.HigherUp, _pool.Everywhere, IsHigherUp),
            Nearest(from, InsteadWay.OtherStrings, _pool.Everywhere, IsOnOtherStrings),
            Nearest(from, InsteadWay.Inversion, _pool.Everywhere, IsInverted),
            Nearest(from, InsteadWay.FewerStrings, OnFewerStrings(from), HasTheSameLowest),
            Nearest(from, InsteadWay.Capo, _pool.WithCapo, IsInPlace),
        }
            .OfType<(double Movement, Instead Instead)>()
            .OrderBy(found => found.Movement)
            .Select(found => found.Instead)
            .ToValueList();
    }

    private IEnumerable<Reached> OnFewerStrings(Candidate from) =>
        Enumerable.Range(FewestStrings, Math.Max(0, from.StringCount - FewestStrings)).SelectMany(_pool.OnRuns);

    private static (double Movement, Instead Instead)? Nearest(
        Candidate from,
        InsteadWay way,
        IEnumerable<Reached> reached,
        Func<Candidate, Candidate, bool> isAWay
    )
    {
        var found = reached
            .Where(one => isAWay(from, one.Candidate))
            .Select(one => (Movement: from.MovementMm(one.Candidate), Reached: one))
            .OrderBy(one => one.Movement)
            .ThenBy(one => one.Reached.Fingering.Cost)
            .Select(one => ((double, Reached)?)one)
            .FirstOrDefault();
        return found is var (movement, nearest) ? (movement, InsteadPhrases.Of(way, from, nearest)) : null;
    }

    private static bool IsInPlace(Candidate from, Candidate to) =>
        to.Strings == from.Strings && to.LowestMember == from.LowestMember && to.Members == from.Members;

    private static bool IsHigherUp(Candidate from, Candidate to) =>
        IsInPlace(from, to) && to.LowestFret > from.LowestFret;

    private static bool IsOnOtherStrings(Candidate from, Candidate to) =>
        to.Strings != from.Strings
        && to.StringCount == from.StringCount
        && to.LowestMember == from.LowestMember
        && to.Members == from.Members;

    private static bool IsInverted(Candidate from, Candidate to) =>
        to.Strings == from.Strings && to.LowestMember != from.LowestMember && to.Members == from.Members;

    private static bool HasTheSameLowest(Candidate from, Candidate to) => to.LowestMember == from.LowestMember;
}
