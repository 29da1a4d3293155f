namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes claims about shapes.</summary>
internal sealed class ShapeCompiler(Code code, KeyNotes[] keys, StringLayout layout, NeckCompiler neck)
{
    private readonly Logic _logic = new(code);
    private readonly ShapePlacer _placer = new(code, neck);

    /// <summary>What is said of a quantity of shapes.</summary>
    public Answer Say(Claim.OfShapes claim, FretCompiler frets)
    {
        var shapes = Shapes(claim.Shapes);
        return new Answer(
            _logic.Not(IsTrueOf(claim.Shapes, shapes, shape => Say(claim, shape, frets))),
            Untested(claim.Shapes, shapes)
        );
    }

    /// <summary>Whether some half-turn carries shapes as said.</summary>
    public Answer Carries(Claim.CarriesShapes claim, FretCompiler frets)
    {
        var shapes = Shapes(claim.From);
        var carries = frets.Turns.Select(about =>
            code.Binary(Op.And, about.IsThere, IsTrueOf(claim.From, shapes, shape => Carries(claim, shape, about)))
        );
        return new Answer(
            _logic.Not(_logic.Any(carries.ToList())),
            Untested(claim.From, shapes) is { } untested ? code.Binary(Op.And, frets.HasCentre, untested) : null
        );
    }

    /// <summary>The frets on which shapes begin, end or have their root.</summary>
    public FretBits Ends(ShapeEnd end, ShapeSet set) =>
        Shapes(set).Select(shape => _placer.Ends(shape, end)).Aggregate(neck.Together);

    private List<CompiledShape> Shapes(ShapeSet set)
    {
        var strings = layout.Resolve(set.Of, code);
        var byKey = keys.Select(key => ShapeMembers.Of(key.Key, set)).ToArray();
        return Enumerable
            .Range(0, byKey[0].Count)
            .Select(index => Shape(byKey.Select(chords => chords[index]).ToArray(), set.Voicing, strings))
            .ToList();
    }

    private static CompiledShape Shape(ShapeMembers[] byKey, ShapeVoicing voicing, CompiledStrings strings)
    {
        var voices = byKey.Select(chord => chord.Voiced(voicing)).ToArray();
        var rootRank = voices[0].Index().First(voice => voice.Item.Member == 0).Index;
        return new CompiledShape(
            strings,
            Enumerable
                .Range(0, strings.Count)
                .Select(at =>
                    voices
                        .Select(
                            (voice, key) =>
                                (byKey[key].Root ?? 0)
                                + byKey[key].Semitones[voice[0].Member]
                                + voice[strings.FromLowest.IndexOf(at)].Height
                        )
                        .ToArray()
                )
                .ToArray(),
            strings.FromLowest[rootRank],
            byKey[0].Root is not null
        );
    }

    private int Say(Claim.OfShapes claim, CompiledShape shape, FretCompiler frets) =>
        claim.Says switch
        {
            ShapePredicate.Spans spans => _logic.Admits(spans.Frets, _placer.Span(shape)),
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

    private int IsTrueOf(ShapeSet others, Func<CompiledShape, int> isSo) => IsTrueOf(others, Shapes(others), isSo);

    /// <summary>What is true of a quantity of those shapes that lie where the neck is looked at.</summary>
    private int IsTrueOf(ShapeSet set, List<CompiledShape> shapes, Func<CompiledShape, int> isSo)
    {
        var quantity = PlacedShapes.QuantityOf(set);
        return _logic.IsTrueOf(
            quantity,
            shapes.Select(shape =>
                _placer.IsSeen(shape) is not { } isSeen ? isSo(shape)
                : quantity is Quantity.Every ? code.Binary(Op.Or, isSo(shape), _logic.Not(isSeen))
                : code.Binary(Op.And, isSo(shape), isSeen)
            )
        );
    }

    /// <summary>Where none of the shapes lies where the neck is looked at; null where all do, or that leaves nothing untested.</summary>
    private int? Untested(ShapeSet set, List<CompiledShape> shapes) =>
        PlacedShapes.QuantityOf(set) is Quantity.Every or Quantity.No && neck.Window is not null
            ? _logic.Not(_logic.Any(shapes.Select(shape => _placer.IsSeen(shape)).OfType<int>()))
            : null;

    private int IsOn(CompiledShape shape, ShapeEnd end, FretBits frets) =>
        neck.IsAny(neck.Common(_placer.Ends(shape, end), frets));

    private int HasForm(CompiledShape one, CompiledShape other) => AreAlike(one, other, isReversed: false, sign: 1);

    private int IsHalfTurn(CompiledShape one, CompiledShape other) => AreAlike(one, other, isReversed: true, sign: -1);

    private int IsMirror(CompiledShape one, CompiledShape other) => AreAlike(one, other, isReversed: false, sign: -1);

    /// <summary>
    /// Whether fret(i) - fret(0) of one is that of the other, read backwards or not and with its sign changed or not, for every i. A fret is
    /// a note less the open string, so each is an equation between open strings and a number that only the chords decide.
    /// </summary>
    private int AreAlike(CompiledShape one, CompiledShape other, bool isReversed, int sign)
    {
        var count = one.Strings.Count;
        if (count != other.Strings.Count)
        {
            return code.Number(0);
        }

        return _logic.All(Enumerable.Range(1, count - 1).Select(Equation));

        int Equation(int at)
        {
            var (there, start) = isReversed ? (count - 1 - at, count - 1) : (at, 0);
            var opens = new Dictionary<int, int>();
            Add(opens, one.Strings.Opens[at], 1);
            Add(opens, one.Strings.Opens[0], -1);
            Add(opens, other.Strings.Opens[there], -sign);
            Add(opens, other.Strings.Opens[start], sign);
            return code.WithNumber(
                Op.AreEqual,
                Sum(opens),
                key =>
                    one.Notes[at][key] - one.Notes[0][key] - sign * (other.Notes[there][key] - other.Notes[start][key])
            );
        }
    }

    private static void Add(Dictionary<int, int> opens, int open, int times) =>
        opens[open] = opens.GetValueOrDefault(open) + times;

    /// <summary>A sum of open strings, each so many times, modulo 65,536.</summary>
    private int Sum(Dictionary<int, int> opens)
    {
        var sum = code.Number(0);
        foreach (var (open, times) in opens.OrderBy(each => each.Key))
        {
            for (var time = 0; time < Math.Abs(times); time++)
            {
                sum = code.Binary(times > 0 ? Op.Add : Op.Subtract, sum, open);
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
        var meets = neck.Common(_placer.Of(shape, 0), neck.Moved(_placer.Of(other, 0), 2 * that.Frets));
        return code.Binary(Op.And, HasForm(shape, other), neck.IsAny(meets));
    }

    private int Carries(Claim.CarriesShapes claim, CompiledShape shape, CompiledTurn about) =>
        claim.To is { } to ? IsTrueOf(to, other => IsCarried(shape, about, other)) : IsCarried(shape, about, shape);

    /// <summary>A shape is carried to another where its strings are, it looks like the other turned, and one of its spots comes to lie right.</summary>
    private int IsCarried(CompiledShape shape, CompiledTurn about, CompiledShape other)
    {
        var chosen = layout.Chosen.Numbers;
        var turned = shape.Strings.Numbers.Reverse().Select(number => chosen[^(chosen.IndexOf(number) + 1)]);
        if (!turned.SequenceEqual(other.Strings.Numbers))
        {
            return code.Number(0);
        }

        var isHalfTurn = IsHalfTurn(shape, other);
        if (!shape.HasPlace || !other.HasPlace)
        {
            return isHalfTurn;
        }

        var meets = neck.Common(about.Turn(_placer.Of(shape, shape.Strings.Count - 1)), _placer.Of(other, 0));
        return code.Binary(Op.And, isHalfTurn, neck.IsAny(meets));
    }
}

/// <summary>A shape in every key.</summary>
/// <param name="Strings">Its strings.</param>
/// <param name="Notes">What each string sounds, by key, in semitones above some C; its fret is that less the open string.</param>
/// <param name="RootAt">The index of the string that sounds the root.</param>
/// <param name="HasPlace">Whether its root is a note of the key.</param>
internal sealed record CompiledShape(CompiledStrings Strings, int[][] Notes, int RootAt, bool HasPlace);
