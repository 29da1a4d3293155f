using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes claims about shapes of the endless neck.</summary>
internal sealed class ShapeCompiler(Code code, KeyNotes[] keys, StringLayout layout)
{
    /// <summary>A multiple of twelve that keeps frets from being negative; the highest open string sounds below it.</summary>
    private const int Octaves = 144;

    private readonly Logic _logic = new(code);

    /// <summary>What is said of a quantity of shapes.</summary>
    public int Say(Claim.OfShapes claim, FretCompiler frets) =>
        _logic.IsTrueOf(
            PlacedShapes.QuantityOf(claim.Shapes),
            Shapes(claim.Shapes).Select(shape => Say(claim, shape, frets))
        );

    /// <summary>Whether the half-turn carries shapes as said, where there is a centre.</summary>
    public int Carries(Claim.CarriesShapes claim) =>
        _logic.IsTrueOf(
            PlacedShapes.QuantityOf(claim.From),
            Shapes(claim.From)
                .Select(shape =>
                    claim.To is { } to
                        ? _logic.IsTrueOf(
                            PlacedShapes.QuantityOf(to),
                            Shapes(to).Select(other => IsCarried(shape, other))
                        )
                        : IsCarried(shape, shape)
                )
        );

    /// <summary>The frets on which shapes begin, end or have their root.</summary>
    public int Ends(ShapeEnd end, ShapeSet set) => _logic.Any(Shapes(set).Select(shape => End(shape, end)));

    private List<CompiledShape> Shapes(ShapeSet set)
    {
        var numbers = layout.Resolve(set.Of);
        var byKey = keys.Select(key => ShapeMembers.Of(key.Key, set)).ToArray();
        return Enumerable
            .Range(0, byKey[0].Count)
            .Select(index => Shape(byKey.Select(chords => chords[index]).ToArray(), set.Voicing, numbers))
            .ToList();
    }

    private CompiledShape Shape(ShapeMembers[] byKey, ShapeVoicing voicing, ValueList<int> numbers)
    {
        var voices = byKey.Select(chord => chord.Voiced(voicing)).ToArray();
        var sorted = layout.Sorted(numbers).ToValueList();
        return new CompiledShape(
            numbers,
            numbers
                .Select(number =>
                    voices
                        .Select(
                            (voice, key) =>
                                (byKey[key].Root ?? 0)
                                + byKey[key].Semitones[voice[0].Member]
                                + voice[sorted.IndexOf(number)].Height
                        )
                        .ToArray()
                )
                .ToArray(),
            sorted[voices[0].Index().First(voice => voice.Item.Member == 0).Index],
            byKey[0].Root is not null
        );
    }

    private int Say(Claim.OfShapes claim, CompiledShape shape, FretCompiler frets) =>
        claim.Says switch
        {
            ShapePredicate.Spans spans => _logic.Admits(spans.Frets, Span(shape)),
            ShapePredicate.IsOwnHalfTurn => IsHalfTurn(shape, shape),
            ShapePredicate.IsOwnMirror => IsMirror(shape, shape),
            ShapePredicate.IsHalfTurnOf of => IsTrueOf(of.Shapes, other => IsHalfTurn(shape, other)),
            ShapePredicate.IsMirrorOf of => IsTrueOf(of.Shapes, other => IsMirror(shape, other)),
            ShapePredicate.HasSameFormAs same => IsTrueOf(same.Shapes, other => HasForm(shape, other)),
            ShapePredicate.IsThatOfDegree that => IsThat(claim.Shapes, shape, that),
            ShapePredicate.BeginsOn on => IsOn(shape, ShapeEnd.First, frets.Of(on.Frets)),
            ShapePredicate.EndsOn on => IsOn(shape, ShapeEnd.Last, frets.Of(on.Frets)),
            ShapePredicate.HasRootOn on => IsOn(shape, ShapeEnd.Root, frets.Of(on.Frets)),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };

    private int IsTrueOf(ShapeSet others, Func<CompiledShape, int> isSo) =>
        _logic.IsTrueOf(PlacedShapes.QuantityOf(others), Shapes(others).Select(isSo));

    private int Span(CompiledShape shape) =>
        code.WithNumber(Op.Add, code.Binary(Op.Subtract, Extreme(shape, Op.Most), Extreme(shape, Op.Least)), 1);

    private int Extreme(CompiledShape shape, Op op) =>
        Enumerable
            .Range(0, shape.Numbers.Count)
            .Select(at => Fret(shape, at))
            .Aggregate((all, fret) => code.Binary(op, all, fret));

    private int Fret(CompiledShape shape, int at) =>
        code.WithNumber(Op.SubtractFrom, code.Open(shape.Numbers[at]), key => shape.Notes[at][key] + Octaves);

    private int End(CompiledShape shape, ShapeEnd end)
    {
        var fret = end switch
        {
            ShapeEnd.Root => Fret(shape, shape.Numbers.IndexOf(shape.RootOn)),
            ShapeEnd.First => Extreme(shape, Op.Least),
            _ => Extreme(shape, Op.Most),
        };
        return code.LookUp(code.Unary(Op.ModuloTwelve, fret), (_, number) => 1 << number);
    }

    private int IsOn(CompiledShape shape, ShapeEnd end, FretBits frets) =>
        _logic.Not(code.WithNumber(Op.AreEqual, code.Binary(Op.And, End(shape, end), frets.Whole), 0));

    private int HasForm(CompiledShape one, CompiledShape other) => AreAlike(one, other, isReversed: false, sign: 1);

    private int IsHalfTurn(CompiledShape one, CompiledShape other) => AreAlike(one, other, isReversed: true, sign: -1);

    private int IsMirror(CompiledShape one, CompiledShape other) => AreAlike(one, other, isReversed: false, sign: -1);

    /// <summary>
    /// Whether fret(i) - fret(0) of one is that of the other, read backwards or not and with its sign changed or not, for every i. A fret is
    /// a note less the open string, so each is an equation between open strings and a number that only the chords decide.
    /// </summary>
    private int AreAlike(CompiledShape one, CompiledShape other, bool isReversed, int sign)
    {
        var count = one.Numbers.Count;
        if (count != other.Numbers.Count)
        {
            return code.Number(0);
        }

        return _logic.All(Enumerable.Range(1, count - 1).Select(Equation));

        int Equation(int at)
        {
            var (there, start) = isReversed ? (count - 1 - at, count - 1) : (at, 0);
            var opens = new Dictionary<int, int>();
            Add(opens, one.Numbers[at], 1);
            Add(opens, one.Numbers[0], -1);
            Add(opens, other.Numbers[there], -sign);
            Add(opens, other.Numbers[start], sign);
            return code.WithNumber(
                Op.AreEqual,
                Sum(opens),
                key =>
                    one.Notes[at][key] - one.Notes[0][key] - sign * (other.Notes[there][key] - other.Notes[start][key])
            );
        }
    }

    private static void Add(Dictionary<int, int> opens, int number, int times) =>
        opens[number] = opens.GetValueOrDefault(number) + times;

    /// <summary>A sum of open strings, each so many times, modulo 65,536.</summary>
    private int Sum(Dictionary<int, int> opens)
    {
        var sum = code.Number(0);
        foreach (var (number, times) in opens.OrderBy(open => open.Key))
        {
            for (var time = 0; time < Math.Abs(times); time++)
            {
                sum = code.Binary(times > 0 ? Op.Add : Op.Subtract, sum, code.Open(number));
            }
        }

        return sum;
    }

    private int IsThat(ShapeSet set, CompiledShape shape, ShapePredicate.IsThatOfDegree that)
    {
        var family = set switch
        {
            ShapeSet.Several several => several.Family,
            ShapeSet.OnDegree on => on.Family,
            _ => PlacedShapes.FamilyOf(set.Notes),
        };
        var other = Shapes(new ShapeSet.OnDegree(family, that.Degree, set.Voicing, set.Of))[0];
        var meets = code.Number(key =>
            Modulo.Of(shape.Notes[0][key] - other.Notes[0][key] - that.Frets, 12) == 0 ? ushort.MaxValue : 0
        );
        return code.Binary(Op.And, HasForm(shape, other), meets);
    }

    /// <summary>The half-turn takes what string s sounds from one sum for the key: so the strings, the form and one note decide.</summary>
    private int IsCarried(CompiledShape one, CompiledShape other)
    {
        var chosen = layout.Chosen.Numbers;
        var turned = one.Numbers.Reverse().Select(number => chosen[^(chosen.IndexOf(number) + 1)]);
        if (!turned.SequenceEqual(other.Numbers))
        {
            return code.Number(0);
        }

        var meets = code.Number(key =>
            !one.HasPlace
            || !other.HasPlace
            || Modulo.Of(one.Notes[^1][key] + other.Notes[0][key] - (keys[key].Inversion ?? 0), 12) == 0
                ? ushort.MaxValue
                : 0
        );
        return code.Binary(Op.And, IsHalfTurn(one, other), meets);
    }
}

/// <summary>A shape in every key.</summary>
/// <param name="Numbers">Its strings, the farthest first.</param>
/// <param name="Notes">What each string sounds, by key, in semitones above some C; its fret is that less the open string.</param>
/// <param name="RootOn">The string that sounds the root.</param>
/// <param name="HasPlace">Whether its root is a note of the key.</param>
internal sealed record CompiledShape(ValueList<int> Numbers, int[][] Notes, int RootOn, bool HasPlace);
