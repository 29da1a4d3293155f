using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes a claim as a program.</summary>
internal sealed class ClaimCompiler
{
    private readonly Code _code;
    private readonly Logic _logic;
    private readonly NeckCompiler _neck;
    private readonly FretCompiler _frets;
    private readonly ShapeCompiler _shapes;
    private readonly DistanceCompiler _distances;
    private readonly PatternCompiler _patterns;

    private ClaimCompiler(Code code, ValueList<Key> keys, StringLayout layout, FretRange? window)
    {
        var notes = keys.Select(key => new KeyNotes(key)).ToArray();
        _code = code;
        _logic = new Logic(code);
        _neck = new NeckCompiler(code, window);
        _shapes = new ShapeCompiler(code, notes, layout, _neck);
        _frets = new FretCompiler(code, notes, layout, _neck, _shapes);
        _distances = new DistanceCompiler(code, _neck, _frets);
        _patterns = new PatternCompiler(code, notes, layout);
    }

    /// <summary>Whether all that a claim says can be compiled: all but what asks for a hand or a ruler.</summary>
    public static bool Knows(Claim claim) =>
        !Parts
            .Of(claim)
            .Any(part => part is ShapePredicate.Stretches or ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs);

    /// <summary>A claim of the endless neck, or of a window.</summary>
    public static (Code Code, Answer Answer) Compile(
        Claim claim,
        ValueList<Key> keys,
        StringLayout layout,
        FretRange? window
    )
    {
        var code = new Code(keys.Count);
        return (code, new ClaimCompiler(code, keys, layout, window).Of(claim));
    }

    /// <summary>Many claims of the endless neck in one program; what they have in common is worked out once.</summary>
    public static (Code Code, ValueList<Answer> Answers) Compile(
        IEnumerable<Claim> claims,
        ValueList<Key> keys,
        StringLayout layout
    )
    {
        var code = new Code(keys.Count);
        var compiler = new ClaimCompiler(code, keys, layout, null);
        return (code, claims.Select(compiler.Of).ToValueList());
    }

    private Answer Of(Claim claim) =>
        claim switch
        {
            Claim.If condition => If(Of(condition.Condition), Of(condition.Then)),
            Claim.And and => _logic.And(and.Parts.Select(Of).ToList()),
            Claim.Or or => _logic.Or(or.Parts.Select(Of).ToList()),
            Claim.ThereAre there => True(_logic.Admits(there.Count, Count(there.Noun))),
            Claim.AsMany many => True(_code.Binary(Op.AreEqual, Count(many.One), Count(many.Other))),
            Claim.IsPalindromic => True(_patterns.IsPalindromic),
            Claim.HasEqualSteps => True(_patterns.HasEqualSteps),
            Claim.KeyIs key => True(_patterns.KeyIs(key)),
            Claim.PatternsHaveSameForm same => True(_patterns.HaveSameForm(same)),
            Claim.PatternIs pattern => True(_patterns.Is(pattern)),
            Claim.CarriesDegree carries => True(_frets.CarriesDegree(carries)),
            Claim.CarriesFrets carries => True(
                _frets.Carries(_frets.Of(carries.From), _frets.Of(carries.To ?? carries.From))
            ),
            Claim.CarriesShapes carries => _shapes.Carries(carries, _frets),
            Claim.DegreeStands stands => DegreeStands(stands),
            Claim.OfFrets of => OfFrets(of),
            Claim.NeighboursLieApart apart => _distances.NeighboursLieApart(apart),
            Claim.GapIs gap => _distances.GapIs(gap),
            Claim.OfShapes of => _shapes.Say(of, _frets),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };

    private Answer True(int isTrue) => new(_logic.Not(isTrue), null);

    private Answer If(Answer condition, Answer then)
    {
        var holds = _logic.Holds(condition);
        return new Answer(
            _code.Binary(Op.And, holds, then.Fails),
            then.Untested is { } untested ? _code.Binary(Op.Or, _logic.Not(holds), untested) : _logic.Not(holds)
        );
    }

    private int Count(FretNoun noun) => _neck.Count(_frets.Noun(noun));

    private Answer DegreeStands(Claim.DegreeStands stands)
    {
        var frets = _frets.Noun(stands.Noun);
        return Quantified(stands.Quantity, frets, _neck.Common(frets, _frets.OfDegree(stands.Degree, stands.String)));
    }

    private Answer OfFrets(Claim.OfFrets of)
    {
        var frets = _frets.Of(of.Frets);
        return of.Quantity is null && !FretSets.IsOfEach(of.Relation)
            ? True(_frets.Compare(frets, of.Relation))
            : Quantified(of.Quantity ?? new Quantity.Every(), frets, _frets.Lying(frets, of.Relation));
    }

    /// <summary>Of some frets, those of which something is true, and how many that should be.</summary>
    private Answer Quantified(Quantity quantity, FretBits all, FretBits right)
    {
        var isThere = _neck.IsAny(all);
        return quantity switch
        {
            Quantity.Every => new Answer(_neck.IsAny(_neck.Without(all, right)), _logic.Not(isThere)),
            Quantity.No => new Answer(_neck.IsAny(right), _logic.Not(isThere)),
            Quantity.Some => True(_neck.IsAny(right)),
            Quantity.Exactly exactly => True(_code.WithNumber(Op.AreEqual, _neck.Count(right), exactly.Number)),
            _ => throw new ArgumentOutOfRangeException(nameof(quantity)),
        };
    }
}
