using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>A half-turn: where its centre is one, and how it carries frets.</summary>
/// <param name="IsThere">The register of where it carries the key pattern onto itself.</param>
/// <param name="Turn">Carries a set of frets.</param>
internal readonly record struct CompiledTurn(int IsThere, Func<FretBits, FretBits> Turn);

/// <summary>Writes sets of frets and how they lie to each other.</summary>
internal sealed class FretCompiler(
    Code code,
    KeyNotes[] keys,
    StringLayout layout,
    NeckCompiler neck,
    ShapeCompiler shapes
)
{
    public const int HalfFretsInOctave = 24;

    private readonly Logic _logic = new(code);

    /// <summary>Whether the whole string set has a half-turn centre.</summary>
    public int HasCentre => neck.IsAny(Centres);

    /// <summary>The half-turns of the whole string set: in a window about each place; on the endless neck all come to the same.</summary>
    public IEnumerable<CompiledTurn> Turns
    {
        get
        {
            var chosen = layout.Resolve(null, code);
            if (neck.Window is not { } window)
            {
                var twice = code.LookUp(
                    SumOfPair(chosen, 0),
                    (key, sum) => Modulo.Of((keys[key].Inversion ?? 0) - sum, 12)
                );
                return [new CompiledTurn(HasCentre, set => neck.TurnedAbout(set, twice))];
            }

            return Enumerable
                .Range(2 * window.First, 2 * (window.Count - 1) + 1)
                .Select(centre => new CompiledTurn(
                    _logic.Not(
                        code.WithNumber(
                            Op.AreEqual,
                            code.WithNumber(Op.And, CentresOf(chosen, centre % 2), 1 << centre / 2 % 12),
                            0
                        )
                    ),
                    set => neck.Turned(set, centre)
                ));
        }
    }

    private FretBits Centres => Noun(new FretNoun(FretKind.HalfTurnCentre));

    public FretBits Of(FretSet set) =>
        set switch
        {
            FretSet.Named named => Noun(named.Noun),
            FretSet.OfDegree of => OfDegree(of.Degree, of.String),
            FretSet.OfShapes of => shapes.Ends(of.End, of.Shapes),
            FretSet.Numbers numbers => neck.Numbers(numbers.Frets),
            FretSet.Moved moved => neck.Moved(Of(moved.Set), 2 * moved.Frets),
            _ => throw new ArgumentOutOfRangeException(nameof(set)),
        };

    public FretBits Noun(FretNoun noun)
    {
        var strings = layout.Resolve(noun.Of, code);
        if (noun.Kind == FretKind.HalfTurnCentre)
        {
            return neck.Seen(CentresOf(strings, 0), CentresOf(strings, 1));
        }

        var inKey = strings.Opens.Select(open => Frets(open, key => key.Notes));
        return neck.Seen(
            noun.Kind == FretKind.Full
                ? _logic.All(inKey)
                : code.WithNumber(Op.SubtractFrom, _logic.Any(inKey), Twelve.All)
        );
    }

    /// <summary>The frets at which a string sounds a degree.</summary>
    public FretBits OfDegree(int degree, int number) =>
        neck.Seen(Frets(code.Open(number), key => 1 << key.Degree(degree)));

    /// <summary>Those of some frets that lie, each by itself, to others as said.</summary>
    public FretBits Lying(FretBits frets, FretRelation relation) =>
        relation switch
        {
            FretRelation.LieOn on => neck.Common(frets, Of(on.Frets)),
            FretRelation.Avoid avoid => neck.Without(frets, Of(avoid.Frets)),
            FretRelation.LieApart apart => neck.Common(frets, neck.Moved(Of(apart.Frets), 2 * apart.Distance)),
            FretRelation.LieNextTo next => neck.Common(
                frets,
                neck.Together(neck.Moved(Of(next.Frets), 2), neck.Moved(Of(next.Frets), -2))
            ),
            FretRelation.LieHalfway halfway => Halfway(frets, Of(halfway.One), Of(halfway.Other)),
            FretRelation.Include include => neck.Together(
                neck.Where(frets, _logic.Not(neck.IsAny(Of(include.Frets)))),
                neck.Common(frets, IfOne(Of(include.Frets)))
            ),
            FretRelation.Are are => neck.Common(frets, IfOne(Of(are.Frets))),
            // A fret that the half-turn leaves where it is is a centre.
            FretRelation.AreCarriedToThemselves => neck.Common(frets, Centres),
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

    /// <summary>Those of some frets that lie as far above one as below another, at every distance, upward and downward.</summary>
    private FretBits Halfway(FretBits frets, FretBits one, FretBits other)
    {
        var halfway = new FretBits();
        var hasHalves = frets.HasHalves || one.HasHalves || other.HasHalves;
        for (var distance = hasHalves ? 1 : 2; distance <= Farthest(frets, one); distance += hasHalves ? 1 : 2)
        {
            foreach (var up in new[] { distance, -distance })
            {
                var between = neck.Common(neck.Moved(one, up), neck.Moved(other, -up));
                halfway = neck.Together(halfway, neck.Common(frets, between));
            }
        }

        return halfway;
    }

    /// <summary>The farthest, in half frets, that two frets can lie apart.</summary>
    public int Farthest(FretBits one, FretBits other)
    {
        var octaves = one.Registers.Keys.Concat(other.Registers.Keys).Select(octave => octave.Number).ToList();
        return neck.Window is null ? HalfFretsInOctave / 2
            : octaves.Count == 0 ? 0
            : HalfFretsInOctave * (octaves.Max() - octaves.Min() + 1) - 1;
    }

    /// <summary>Whether frets, taken together, are or include others, or are carried to themselves.</summary>
    public int Compare(FretBits frets, FretRelation relation) =>
        relation switch
        {
            FretRelation.Are are => neck.AreEqual(frets, Of(are.Frets)),
            FretRelation.Include include => _logic.Not(neck.IsAny(neck.Without(Of(include.Frets), frets))),
            FretRelation.AreCarriedToThemselves => Carries(frets, frets),
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

    /// <summary>Whether some half-turn carries frets to others.</summary>
    public int Carries(FretBits from, FretBits to) =>
        _logic.Any(
            Turns.Select(about => code.Binary(Op.And, about.IsThere, neck.AreEqual(about.Turn(from), to))).ToList()
        );

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

    private int Frets(int open, Func<KeyNotes, int> notes) =>
        code.LookUp(code.Unary(Op.ModuloTwelve, open), (key, sounds) => Twelve.Turned(notes(keys[key]), -sounds));

    /// <summary>Centres on whole frets, or half a fret above them: those about which every string is inverted into its image.</summary>
    private int CentresOf(CompiledStrings strings, int half) =>
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

    private int SumOfPair(CompiledStrings strings, int at) =>
        code.Unary(Op.ModuloTwelve, code.Binary(Op.Add, strings.Opens[at], strings.Opens[^(at + 1)]));

    /// <summary>The set where it is a single fret, and else nothing.</summary>
    private FretBits IfOne(FretBits set) => neck.Where(set, code.WithNumber(Op.AreEqual, neck.Count(set), 1));
}
