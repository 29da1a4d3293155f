namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes what truth values come to; all bits stand for true.</summary>
internal sealed class Logic(Code code)
{
    public int Not(int isTrue) => code.WithNumber(Op.AreEqual, isTrue, 0);

    public int All(IEnumerable<int> parts) => Joined(Op.And, parts) ?? code.Number(ushort.MaxValue);

    public int Any(IEnumerable<int> parts) => Joined(Op.Or, parts) ?? code.Number(0);

    public int Holds(Answer answer) =>
        Not(answer.Untested is { } untested ? code.Binary(Op.Or, answer.Fails, untested) : answer.Fails);

    /// <summary>See <see cref="Outcomes.And"/>.</summary>
    public Answer And(IReadOnlyList<Answer> parts) => new(Any(parts.Select(part => part.Fails)), AllUntested(parts));

    /// <summary>See <see cref="Outcomes.Or"/>.</summary>
    public Answer Or(IReadOnlyList<Answer> parts) =>
        new(
            code.Binary(Op.Without, Any(parts.Select(part => part.Fails)), Any(parts.Select(Holds))),
            AllUntested(parts)
        );

    public int Admits(Count count, int number) =>
        count.Comparison switch
        {
            Comparison.AtLeast => Not(IsBelow(number, count.Number)),
            Comparison.AtMost => Not(code.WithNumber(Op.IsAbove, number, count.Number)),
            Comparison.MoreThan => code.WithNumber(Op.IsAbove, number, count.Number),
            Comparison.FewerThan => IsBelow(number, count.Number),
            _ => code.WithNumber(Op.AreEqual, number, count.Number),
        };

    /// <summary>Whether a quantity of some things is true.</summary>
    public int IsTrueOf(Quantity quantity, IEnumerable<int> things) =>
        quantity switch
        {
            Quantity.Every => All(things),
            Quantity.Some => Any(things),
            Quantity.No => Not(Any(things)),
            // All bits are minus one, so the sum is minus the number of true ones.
            Quantity.Exactly exactly => code.WithNumber(
                Op.AreEqual,
                Joined(Op.Add, things) ?? code.Number(0),
                -exactly.Number
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(quantity)),
        };

    private int IsBelow(int register, int number) =>
        number == 0 ? code.Number(0) : Not(code.WithNumber(Op.IsAbove, register, number - 1));

    private int? AllUntested(IReadOnlyList<Answer> parts) =>
        parts.All(part => part.Untested is not null) ? All(parts.Select(part => part.Untested!.Value)) : null;

    /// <summary>All parts put together one after the other; null when there is none.</summary>
    public int? Joined(Op op, IEnumerable<int> parts) =>
        parts.Aggregate((int?)null, (all, part) => all is { } before ? code.Binary(op, before, part) : part);
}
