using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes claims about key patterns.</summary>
/// <remarks>
/// No transposition but the octave carries the notes of a key onto themselves: seven does not divide by two or three. So two strings have
/// equal patterns only where they sound alike, and a pattern that is read backwards is one of the key's only about its one sum.
/// What remains are conditions on the open strings.
/// </remarks>
internal sealed class PatternCompiler(Code code, KeyNotes[] keys, StringLayout layout)
{
    private readonly Logic _logic = new(code);

    /// <summary>Whether the steps between the chosen strings read the same both ways; in semitones, not modulo 12.</summary>
    public int IsPalindromic
    {
        get
        {
            var numbers = layout.Chosen.Numbers;
            return _logic.All(
                Enumerable
                    .Range(1, numbers.Count - 1)
                    .Select(at =>
                        code.Binary(
                            Op.AreEqual,
                            code.Binary(Op.Add, code.Open(numbers[at - 1]), code.Open(numbers[^at])),
                            code.Binary(Op.Add, code.Open(numbers[at]), code.Open(numbers[^(at + 1)]))
                        )
                    )
            );
        }
    }

    /// <summary>Whether the steps between the chosen strings are all the same; in semitones, not modulo 12.</summary>
    public int HasEqualSteps
    {
        get
        {
            var numbers = layout.Chosen.Numbers;
            var steps = numbers
                .Zip(numbers.Skip(1), (far, near) => code.Binary(Op.Subtract, code.Open(near), code.Open(far)))
                .ToList();
            return AreAllAlike(steps);
        }
    }

    public int KeyIs(Claim.KeyIs claim) =>
        code.Number(key => keys[key].Key.Kind == claim.Kind != claim.IsNot ? ushort.MaxValue : 0);

    public int HaveSameForm(Claim.PatternsHaveSameForm claim) =>
        AreAllAlike(Differences(Opens(claim.One), Opens(claim.Other)));

    public int Is(Claim.PatternIs claim)
    {
        var opens = Opens(claim.One);
        var others = claim.IsOwn ? opens : Opens(claim.Other);
        return claim.Motion switch
        {
            PatternMotion.None => AreAll(Differences(opens, others), claim.MovedFrets),
            PatternMotion.Flip => AreAll(Differences(opens, others.Reverse().ToValueList()), claim.MovedFrets),
            PatternMotion.HalfTurn => Inverted(Sums(opens, others.Reverse().ToValueList())),
            PatternMotion.Mirror => Inverted(Sums(opens, others)),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };
    }

    private ValueList<int> Opens(OtherStrings? other) => layout.Resolve(other, code).Opens;

    /// <summary>How many semitones each string sounds above its partner, modulo 12.</summary>
    private List<int> Differences(ValueList<int> opens, ValueList<int> others) =>
        opens
            .Zip(
                others,
                (open, other) =>
                    code.Unary(
                        Op.ModuloTwelve,
                        code.Binary(Op.Subtract, code.WithNumber(Op.Add, open, 120), Rest(other))
                    )
            )
            .ToList();

    private List<int> Sums(ValueList<int> opens, ValueList<int> others) =>
        opens
            .Zip(others, (open, other) => code.Unary(Op.ModuloTwelve, code.Binary(Op.Add, Rest(open), Rest(other))))
            .ToList();

    private int Rest(int open) => code.Unary(Op.ModuloTwelve, open);

    private int AreAllAlike(List<int> registers) =>
        _logic.All(registers.Skip(1).Select(register => code.Binary(Op.AreEqual, registers[0], register)));

    private int AreAll(List<int> registers, int number) =>
        _logic.All(registers.Select(register => code.WithNumber(Op.AreEqual, register, Modulo.Of(number, 12))));

    /// <summary>Whether reading the frets backwards about some place carries every string into its partner.</summary>
    private int Inverted(List<int> sums) =>
        code.Binary(Op.And, AreAllAlike(sums), code.Number(key => keys[key].Inversion is null ? 0 : ushort.MaxValue));
}
