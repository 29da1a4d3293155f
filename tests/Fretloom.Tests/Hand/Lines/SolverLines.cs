using Fretloom.Hand;
using Fretloom.Hand.Lines;
using Google.OrTools.Sat;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Lines as a question to the solver CP-SAT of Google OR-Tools: which way to play each note, and which moves between them.</summary>
internal static class SolverLines
{
    /// <summary>The cost of the cheapest fingering, proved optimal by the solver.</summary>
    public static long Cheapest(Player player, IEnumerable<LineNote> notes)
    {
        var slow = new SlowLines(player);
        var model = new CpModel();
        var cost = LinearExpr.NewBuilder();
        var before = new List<(Touch Touch, BoolVar Taken)>();
        foreach (var note in notes)
        {
            var here = slow.Ways(note).Select(way => (way.Touch, Taken: model.NewBoolVar(""))).ToList();
            model.AddExactlyOne(here.Select(way => way.Taken));
            here.ForEach(way => cost.AddTerm(way.Taken, slow.Of(way.Touch)));
            if (before.Count > 0)
            {
                AddMoves(model, cost, slow, before, here);
            }

            before = here;
        }

        model.Minimize(cost);
        // One worker that leans on the linear relaxation: faster here than many that search.
        var solver = new CpSolver { StringParameters = "num_workers:1,linearization_level:2" };
        var status = solver.Solve(model);
        return status == CpSolverStatus.Optimal
            ? (long)Math.Round(solver.ObjectiveValue)
            : throw new InvalidOperationException($"The solver says {status}.");
    }

    // Exactly the moves that leave a way taken and reach the next way taken.
    private static void AddMoves(
        CpModel model,
        LinearExprBuilder cost,
        SlowLines slow,
        List<(Touch Touch, BoolVar Taken)> before,
        List<(Touch Touch, BoolVar Taken)> here
    )
    {
        var moves = (
            from one in before
            from other in here
            let price = slow.Of(one.Touch, other.Touch)
            where SlowLines.IsPossible(price)
            select (one.Touch, other: other.Touch, price, Taken: model.NewBoolVar(""))
        ).ToList();
        moves.ForEach(move => cost.AddTerm(move.Taken, move.price));
        var leaving = moves.ToLookup(move => move.Touch, move => move.Taken);
        var reaching = moves.ToLookup(move => move.other, move => move.Taken);
        before.ForEach(way => model.Add(LinearExpr.Sum(leaving[way.Touch]) == way.Taken));
        here.ForEach(way => model.Add(LinearExpr.Sum(reaching[way.Touch]) == way.Taken));
    }
}
