using Fretloom.Claims.Checking;
using Fretloom.Claims.Checking.Blocks;
using Fretloom.Theory;

namespace Fretloom.Claims.Discovery;

/// <summary>Where a claim is true, and where it is false; elsewhere it is untested.</summary>
internal readonly record struct Truth(Row Holds, Row Fails);

/// <summary>Works out many claims on many string sets in many kinds of key.</summary>
internal static class TruthTable
{
    private const int ClaimsInProgram = 64;

    /// <summary>The truth of each claim, in their order.</summary>
    /// <param name="claims">Claims that the compiler knows and that can be asked of the string sets.</param>
    /// <param name="keys">One key of each kind.</param>
    /// <param name="layout">The strings that there are.</param>
    /// <param name="opens">For each string set what the strings sound when open, in the order of the layout's own.</param>
    /// <param name="progress">Told the share done.</param>
    /// <param name="cancellation">Looked at all along.</param>
    public static Truth[] Of(
        IReadOnlyList<Claim> claims,
        ValueList<Key> keys,
        StringLayout layout,
        IReadOnlyList<ValueList<int>> opens,
        Action<double>? progress,
        CancellationToken cancellation
    )
    {
        var truths = new Truth[claims.Count];
        for (var first = 0; first < claims.Count; first += ClaimsInProgram)
        {
            var some = claims.Skip(first).Take(ClaimsInProgram).ToList();
            Run(some, keys, layout, opens, truths.AsSpan(first, some.Count), cancellation);
            progress?.Invoke((first + some.Count) / (double)claims.Count);
        }

        return truths;
    }

    private static void Run(
        List<Claim> claims,
        ValueList<Key> keys,
        StringLayout layout,
        IReadOnlyList<ValueList<int>> opens,
        Span<Truth> truths,
        CancellationToken cancellation
    )
    {
        var (code, answers) = ClaimCompiler.Compile(claims, keys, layout);
        var machine = new Machine(code, inVectors: true);
        foreach (ref var truth in truths)
        {
            truth = new Truth(new Row(keys.Count, opens.Count), new Row(keys.Count, opens.Count));
        }

        for (var first = 0; first < opens.Count; first += Lanes.Count)
        {
            var count = Math.Min(Lanes.Count, opens.Count - first);
            Fill(machine, code, layout, opens, first, count);
            machine.Begin();
            for (var kind = 0; kind < keys.Count; kind++)
            {
                cancellation.ThrowIfCancellationRequested();
                machine.RunKey(kind);
                for (var at = 0; at < claims.Count; at++)
                {
                    Note(truths[at], machine, answers[at], kind, first, count);
                }
            }
        }
    }

    private static void Fill(
        Machine machine,
        Code code,
        StringLayout layout,
        IReadOnlyList<ValueList<int>> opens,
        int first,
        int count
    )
    {
        foreach (var (number, register) in code.Opens)
        {
            var index = layout.All.Numbers.IndexOf(number);
            var lanes = machine.Register(register);
            for (var lane = 0; lane < count; lane++)
            {
                lanes[lane] = (ushort)opens[first + lane][index];
            }
        }
    }

    private static void Note(Truth truth, Machine machine, Answer answer, int kind, int first, int count)
    {
        var fails = machine.Register(answer.Fails);
        var untested = answer.Untested is { } register ? machine.Register(register) : [];
        for (var lane = 0; lane < count; lane++)
        {
            if (fails[lane] != 0)
            {
                truth.Fails[kind, first + lane] = true;
            }
            else if (untested.IsEmpty || untested[lane] == 0)
            {
                truth.Holds[kind, first + lane] = true;
            }
        }
    }
}
