using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes a claim about the endless neck as a program.</summary>
internal sealed class ClaimCompiler
{
    private readonly Code _code;
    private readonly StringLayout _layout;
    private readonly Logic _logic;
    private readonly FretCompiler _frets;
    private readonly ShapeCompiler _shapes;
    private readonly PatternCompiler _patterns;

    private ClaimCompiler(Code code, ValueList<Key> keys, StringLayout layout)
    {
        var notes = keys.Select(key => new KeyNotes(key)).ToArray();
        (_code, _layout) = (code, layout);
        _logic = new Logic(code);
        _shapes = new ShapeCompiler(code, notes, layout);
        _frets = new FretCompiler(code, notes, layout, _shapes);
        _patterns = new PatternCompiler(code, notes, layout);
    }

    /// <summary>Whether all that a sentence says can be compiled.</summary>
    public static bool Knows(ClaimSentence sentence) =>
        sentence.Window is null && Parts.Of(sentence.Claim).All(IsKnown);

    public static (Code Code, Answer Answer) Compile(Claim claim, ValueList<Key> keys, StringLayout layout)
    {
        var code = new Code(keys.Count);
        return (code, new ClaimCompiler(code, keys, layout).Of(claim));
    }

    /// <summary>Many claims in one program; what they have in common is worked out once.</summary>
    public static (Code Code, ValueList<Answer> Answers) Compile(
        IEnumerable<Claim> claims,
        ValueList<Key> keys,
        StringLayout layout
    )
    {
        var code = new Code(keys.Count);
        var compiler = new ClaimCompiler(code, keys, layout);
        return (code, claims.Select(compiler.Of).ToValueList());
    }

    private static bool IsKnown(object part) =>
        part switch
        {
            OtherStrings { Instrument: not null } => false,
            ShapePredicate.Stretches or ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs => false,
            Claim.NeighboursLieApart or Claim.GapIs => false,
            Claim.OfFrets { Quantity: not null } of => FretSets.IsOfEach(of.Relation),
            _ => true,
        };

    private Answer Of(Claim claim) =>
        claim switch
        {
            Claim.If condition => If(Of(condition.Condition), Of(condition.Then)),
            Claim.And and => _logic.And(and.Parts.Select(Of).ToList()),
            Claim.Or or => _logic.Or(or.Parts.Select(Of).ToList()),
            Claim.ThereAre there => True(_logic.Admits(there.Count, _frets.Count(_frets.Noun(there.Noun)))),
            Claim.AsMany many => True(
                _code.Binary(Op.AreEqual, _frets.Count(_frets.Noun(many.One)), _frets.Count(_frets.Noun(many.Other)))
            ),
            Claim.IsPalindromic => True(_patterns.IsPalindromic),
            Claim.HasEqualSteps => True(_patterns.HasEqualSteps),
            Claim.KeyIs key => True(_patterns.KeyIs(key)),
            Claim.PatternsHaveSameForm same => True(_patterns.HaveSameForm(same)),
            Claim.PatternIs pattern => True(_patterns.Is(pattern)),
            Claim.CarriesDegree carries => True(_frets.CarriesDegree(carries)),
            Claim.CarriesFrets carries => True(_frets.Carries(carries.From, carries.To)),
            Claim.CarriesShapes carries => True(_code.Binary(Op.And, _frets.HasCentre, _shapes.Carries(carries))),
            Claim.DegreeStands stands => DegreeStands(stands),
            Claim.OfFrets of => OfFrets(of),
            Claim.OfShapes of => True(_shapes.Say(of, _frets)),
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

    private Answer DegreeStands(Claim.DegreeStands stands)
    {
        var frets = _frets.Noun(stands.Noun);
        var there = _frets.OfDegree(stands.Degree, stands.String);
        return Quantified(stands.Quantity, frets, new FretBits(_code.Binary(Op.And, frets.Whole, there), null));
    }

    private Answer OfFrets(Claim.OfFrets of)
    {
        var frets = _frets.Of(of.Frets);
        return FretSets.IsOfEach(of.Relation)
                ? Quantified(of.Quantity ?? new Quantity.Every(), frets, _frets.Lying(frets, of.Relation))
            : of.Relation is FretRelation.AreCarriedToThemselves ? True(_frets.Carries(of.Frets, null))
            : True(_frets.Compare(frets, of.Relation));
    }

    /// <summary>Of some frets, those of which something is true, and how many that should be.</summary>
    private Answer Quantified(Quantity quantity, FretBits all, FretBits right)
    {
        var isThere = _frets.IsAny(all);
        return quantity switch
        {
            Quantity.Every => new Answer(_frets.IsAny(_frets.Without(all, right)), _logic.Not(isThere)),
            Quantity.No => new Answer(_frets.IsAny(right), _logic.Not(isThere)),
            Quantity.Some => True(_frets.IsAny(right)),
            Quantity.Exactly exactly => True(_code.WithNumber(Op.AreEqual, _frets.Count(right), exactly.Number)),
            _ => throw new ArgumentOutOfRangeException(nameof(quantity)),
        };
    }
}
