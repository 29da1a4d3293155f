using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes sets of frets of the endless neck.</summary>
internal sealed class FretCompiler(Code code, KeyNotes[] keys, StringLayout layout, ShapeCompiler shapes)
{
    private readonly Logic _logic = new(code);

    /// <summary>Whether the whole string set has a half-turn centre.</summary>
    public int HasCentre => IsAny(Noun(new FretNoun(FretKind.HalfTurnCentre)));

    public FretBits Of(FretSet set) =>
        set switch
        {
            FretSet.Named named => Noun(named.Noun),
            FretSet.OfDegree of => new FretBits(OfDegree(of.Degree, of.String), null),
            FretSet.OfShapes of => new FretBits(shapes.Ends(of.End, of.Shapes), null),
            FretSet.Numbers numbers => new FretBits(
                code.Number(numbers.Frets.Aggregate(0, (all, fret) => all | 1 << fret % 12)),
                null
            ),
            FretSet.Moved moved => Moved(Of(moved.Set), moved.Frets),
            _ => throw new ArgumentOutOfRangeException(nameof(set)),
        };

    public FretBits Noun(FretNoun noun)
    {
        var strings = layout.Resolve(noun.Of);
        if (noun.Kind == FretKind.HalfTurnCentre)
        {
            return new FretBits(Centres(strings, 0), Centres(strings, 1));
        }

        var inKey = strings.Select(number => Frets(number, key => key.Notes));
        return new FretBits(
            noun.Kind == FretKind.Full
                ? _logic.All(inKey)
                : code.WithNumber(Op.SubtractFrom, _logic.Any(inKey), Twelve.All),
            null
        );
    }

    /// <summary>The frets at which a string sounds a degree.</summary>
    public int OfDegree(int degree, int number) => Frets(number, key => 1 << key.Degree(degree));

    public int Count(FretBits set)
    {
        var whole = code.Unary(Op.Members, set.Whole);
        return set.Half is { } half ? code.Binary(Op.Add, whole, code.Unary(Op.Members, half)) : whole;
    }

    public int IsAny(FretBits set) =>
        _logic.Not(
            code.WithNumber(Op.AreEqual, set.Half is { } half ? code.Binary(Op.Or, set.Whole, half) : set.Whole, 0)
        );

    public FretBits Without(FretBits set, FretBits other) =>
        new(
            code.Binary(Op.Without, set.Whole, other.Whole),
            set.Half is { } half && other.Half is { } otherHalf ? code.Binary(Op.Without, half, otherHalf) : set.Half
        );

    /// <summary>Those of some frets that lie to others as said.</summary>
    public FretBits Lying(FretBits frets, FretRelation relation) =>
        relation switch
        {
            FretRelation.LieOn on => Common(frets, Of(on.Frets)),
            FretRelation.Avoid avoid => Without(frets, Of(avoid.Frets)),
            FretRelation.LieApart apart => Common(frets, Moved(Of(apart.Frets), apart.Distance)),
            FretRelation.LieNextTo next => Common(frets, Together(Moved(Of(next.Frets), 1), Moved(Of(next.Frets), -1))),
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

    /// <summary>Whether frets, taken together, are or include others.</summary>
    public int Compare(FretBits frets, FretRelation relation) =>
        relation switch
        {
            FretRelation.Are are => AreEqual(frets, Of(are.Frets)),
            FretRelation.Include include => _logic.Not(IsAny(Without(Of(include.Frets), frets))),
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

    public int Carries(FretSet from, FretSet? to)
    {
        var frets = Of(from);
        return code.Binary(Op.And, HasCentre, AreEqual(Turned(frets), to is null ? frets : Of(to)));
    }

    /// <summary>The half-turn inverts what every string sounds about one sum, so that only the key decides.</summary>
    public int CarriesDegree(Claim.CarriesDegree claim) =>
        code.Binary(
            Op.And,
            HasCentre,
            code.Number(key =>
                keys[key].Inversion is { } sum
                && Modulo.Of(keys[key].Degree(claim.From) + keys[key].Degree(claim.To) - sum, 12) == 0
                    ? ushort.MaxValue
                    : 0
            )
        );

    private int Frets(int number, Func<KeyNotes, int> notes) =>
        code.LookUp(
            code.Unary(Op.ModuloTwelve, code.Open(number)),
            (key, open) => Twelve.Turned(notes(keys[key]), -open)
        );

    /// <summary>Centres on whole frets, or half a fret above them: those about which every string is inverted into its image.</summary>
    private int Centres(ValueList<int> strings, int half) =>
        _logic.All(
            Enumerable
                .Range(0, (strings.Count + 1) / 2)
                .Select(at =>
                    code.LookUp(
                        SumOfPair(strings, at),
                        (key, sum) =>
                            Enumerable
                                .Range(0, 12)
                                .Where(fret => (keys[key].Inversions >> (sum + 2 * fret + half) % 12 & 1) != 0)
                                .Sum(fret => 1 << fret)
                    )
                )
        );

    private int SumOfPair(ValueList<int> strings, int at) =>
        code.Unary(Op.ModuloTwelve, code.Binary(Op.Add, code.Open(strings[at]), code.Open(strings[^(at + 1)])));

    /// <summary>Every fret taken from twice the centre, where there is one.</summary>
    private FretBits Turned(FretBits set)
    {
        var twice = code.LookUp(
            SumOfPair(layout.Chosen.Numbers, 0),
            (key, sum) => Modulo.Of((keys[key].Inversion ?? 0) - sum, 12)
        );
        var whole = code.Binary(Op.Turn, code.Unary(Op.Reverse, set.Whole), twice);
        return new FretBits(
            whole,
            set.Half is { } half
                ? code.WithNumber(Op.Turn, code.Binary(Op.Turn, code.Unary(Op.Reverse, half), twice), 11)
                : null
        );
    }

    private FretBits Moved(FretBits set, int frets)
    {
        var by = Modulo.Of(frets, 12);
        return new FretBits(
            code.WithNumber(Op.Turn, set.Whole, by),
            set.Half is { } half ? code.WithNumber(Op.Turn, half, by) : null
        );
    }

    private FretBits Common(FretBits set, FretBits other) =>
        new(
            code.Binary(Op.And, set.Whole, other.Whole),
            set.Half is { } half && other.Half is { } otherHalf ? code.Binary(Op.And, half, otherHalf) : null
        );

    private FretBits Together(FretBits set, FretBits other) =>
        new(
            code.Binary(Op.Or, set.Whole, other.Whole),
            set.Half is { } half && other.Half is { } otherHalf ? code.Binary(Op.Or, half, otherHalf) : null
        );

    private int AreEqual(FretBits set, FretBits other)
    {
        var whole = code.Binary(Op.AreEqual, set.Whole, other.Whole);
        return (set.Half, other.Half) switch
        {
            ({ } half, { } otherHalf) => code.Binary(Op.And, whole, code.Binary(Op.AreEqual, half, otherHalf)),
            (null, null) => whole,
            var (one, two) => code.Binary(Op.And, whole, code.WithNumber(Op.AreEqual, one ?? two ?? 0, 0)),
        };
    }
}
