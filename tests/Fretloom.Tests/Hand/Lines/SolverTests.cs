using Fretloom.Hand;
using Fretloom.Tests.Neck;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Lines of 30 notes cost what an independent solver proves to be the least (Google OR-Tools, CP-SAT).</summary>
[Trait("Group", "slow")]
public class SolverTests
{
    [Theory]
    [InlineData("guitar", 189, 1)]
    [InlineData("guitar", 165, 2)]
    [InlineData("bass", 181, 3)]
    [InlineData("mandolin", 189, 4)]
    [InlineData("banjo", 210, 5)]
    [InlineData("ukulele", 150, 6)]
    public void Thirty_notes_with_given_spots_cost_what_a_solver_proves_to_be_least(
        string instrument,
        double handMm,
        int seed
    ) =>
        Compare(
            new Player(Necks.Find(instrument), new HandSize(handMm)),
            Walk.On(Necks.Find(instrument), 30, seed, isFree: false)
        );

    [Theory]
    [InlineData("ukulele", 189, 7)]
    public void Thirty_free_notes_cost_what_a_solver_proves_to_be_least(string instrument, double handMm, int seed) =>
        Compare(
            new Player(Necks.Find(instrument), new HandSize(handMm)),
            Walk.On(Necks.Find(instrument), 30, seed, isFree: true)
        );

    private static void Compare(Player player, ValueList<LineNote> notes) =>
        Assert.Equal(
            SolverLines.Cheapest(player, notes),
            (long)Math.Round(LineFingering.Find(player, notes, []).Best!.Cost * 1000)
        );
}
