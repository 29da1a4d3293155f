using Fretloom.Neck;
using Fretloom.Sentences.Claims;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Tells why a claim about frets is false.</summary>
internal static class FretExplainer
{
    public static Explanation Of(Case one, Claim.OfFrets claim)
    {
        var frets = FretSets.Of(one, claim.Frets);
        return claim.Quantity switch
        {
            null when claim.Relation is FretRelation.AreCarriedToThemselves => TurnExplainer.OfFrets(
                one,
                claim.Frets,
                null
            ),
            null when !FretSets.IsOfEach(claim.Relation) => Whole(one, claim),
            Quantity.No => One(one, claim, frets, frets.First(Lies), isSo: true),
            Quantity.Some when frets.Count == 0 => Explanation.OfFrets($"there is no {NounOf(claim)}"),
            Quantity.Some when frets.Count > 1 => Explanation.OfFrets(
                claim.Relation is FretRelation.Avoid
                    ? $"each of {ClaimWords.Of(one, claim.Frets)} {Relation(one, claim.Relation, isSo: false)}"
                    : $"of {ClaimWords.Of(one, claim.Frets)}, none {Relation(one, claim.Relation, isSo: true, "any")}",
                frets
            ),
            _ => One(one, claim, frets, frets.First(fret => !Lies(fret)), isSo: false),
        };

        bool Lies(int fret) => FretSets.Lie(one, [fret], claim.Relation);
    }

    public static Explanation OfDegree(Case one, Claim.DegreeStands claim)
    {
        var there = one.FretsOfDegree(claim.Degree, claim.String);
        var frets = one.FretsOf(claim.Noun);
        return claim.Quantity switch
        {
            Quantity.Every => OfAnother(one, claim, frets.Except(there).First()),
            Quantity.No => OfMeeting(one, claim, there.Intersect(frets).First()),
            _ => new Explanation(
                $"{Degree(one, claim.Degree)} stands on string {claim.String} at {ClaimWords.AtFrets(there)}, and {ClaimWords.Are(claim.Noun, frets)}",
                one.Neck.Set(there.Concat(frets)),
                there.Take(1).Select(fret => one.Place.SpotAt(claim.String, fret / 2)).ToValueList()
            ),
        };
    }

    private static Explanation OfMeeting(Case one, Claim.DegreeStands claim, int fret) =>
        new(
            $"{Degree(one, claim.Degree)} stands on string {claim.String} at fret {ClaimWords.Fret(fret)}, which is {FretWords.A(new FretSet.Named(claim.Noun))}",
            [fret],
            [one.Place.SpotAt(claim.String, fret / 2)]
        );

    /// <summary>A fret at which the string sounds something else; halfway between two frets it sounds nothing.</summary>
    private static Explanation OfAnother(Case one, Claim.DegreeStands claim, int fret)
    {
        var at = $"{FretWords.Noun(claim.Noun, isPlural: false)} {ClaimWords.Fret(fret)}";
        if (fret % 2 != 0)
        {
            return Explanation.OfFrets(
                $"the {at} lies between two frets, where string {claim.String} sounds nothing",
                fret
            );
        }

        var note = Modulo.Of(one.Place.OpenOf(claim.String) + fret / 2, 12);
        var degree = Enumerable.Range(1, 7).FirstOrDefault(each => one.DegreeNote(each) == note);
        var sounds =
            degree == 0 ? $"{one.Key.Spell(new PitchClass(note))}, which is not in the key" : Degree(one, degree);
        return new Explanation(
            $"at {at} string {claim.String} sounds {sounds}, not degree {claim.Degree}",
            [fret],
            [one.Place.SpotAt(claim.String, fret / 2)]
        );
    }

    /// <summary><c>degree 5 (G)</c>.</summary>
    private static string Degree(Case one, int degree) => $"degree {degree} ({one.Key.Notes[degree - 1]})";

    private static string NounOf(Claim.OfFrets claim) =>
        FretWords.Noun(((FretSet.Named)claim.Frets).Noun, isPlural: false);

    private static Explanation One(Case one, Claim.OfFrets claim, ValueList<int> frets, int fret, bool isSo)
    {
        var number = ClaimWords.Fret(fret);
        var subject = claim.Frets switch
        {
            FretSet.Numbers => $"fret {number}",
            _ when frets.Count == 1 => ClaimWords.Of(one, claim.Frets),
            FretSet.Named named =>
                $"the {ClaimWords.Of(named.Noun.Kind)} {number}{ClaimWords.OfStrings(named.Noun.Of)}",
            var several => $"fret {number}, one of {FretWords.The(several)},",
        };
        return Explanation.OfFrets($"{subject} {Relation(one, claim.Relation, isSo)}", fret);
    }

    private static Explanation Whole(Case one, Claim.OfFrets claim)
    {
        var other = Other(claim.Relation)!;
        var (frets, others) = (FretSets.Of(one, claim.Frets), FretSets.Of(one, other));
        var (set, otherSet) = (ClaimWords.Of(one, claim.Frets), ClaimWords.Of(one, other));
        var isPlural = ClaimWords.ArePlural(one, claim.Frets);
        var missing = others.Except(frets).ToValueList();
        if (claim.Relation is FretRelation.Are)
        {
            return Explanation.OfFrets(
                $"{set} {(isPlural ? "are" : "is")} not {otherSet}",
                one.Neck.Set(frets.Except(others).Concat(missing))
            );
        }

        var isAll = missing.Count == others.Count && others.Count > 1;
        return Explanation.OfFrets(
            isAll
                ? $"{set} {(isPlural ? "include" : "includes")} none of {otherSet}"
                : $"{set} {(isPlural ? "do" : "does")} not include {otherSet}{Missing(others, missing)}",
            missing
        );
    }

    private static string Missing(ValueList<int> others, ValueList<int> missing) =>
        others.Count == 1 ? "" : $": {ClaimWords.Frets(missing)} {(missing.Count == 1 ? "is" : "are")} missing";

    private static string Relation(Case one, FretRelation relation, bool isSo, string oneOf = "one")
    {
        var set = Other(relation);
        var others = set is null ? "" : ClaimWords.Of(one, set);
        var count = set is null ? 0 : FretSets.Of(one, set).Count;
        return relation switch
        {
            FretRelation.LieOn => On(isSo),
            FretRelation.Avoid => On(!isSo),
            FretRelation.LieNextTo => Lies("next to"),
            FretRelation.LieApart apart => Lies(
                $"{ClaimWords.Counted(Math.Abs(apart.Distance), "fret")} {(apart.Distance < 0 ? "below" : "above")}"
            ),
            FretRelation.LieHalfway halfway =>
                $"{(isSo ? "lies" : "does not lie")} halfway between {Any(halfway.One)} and {Any(halfway.Other)}",
            FretRelation.Include => $"{(isSo ? "includes" : "does not include")} {others}",
            FretRelation.Are => $"{(isSo ? "is" : "is not")} {others}",
            FretRelation.AreCarriedToThemselves => $"{(isSo ? "is" : "is not")} carried to itself by the half-turn",
            _ => throw new ArgumentOutOfRangeException(nameof(relation)),
        };

        string Any(FretSet frets) =>
            (FretSets.Of(one, frets).Count > 1 ? $"{(isSo ? "one" : "any")} of " : "") + ClaimWords.Of(one, frets);

        string On(bool lies) =>
            count == 0 ? (lies ? $"lies on {others}" : $"lies on {None(set!)}")
            : count == 1 ? $"{(lies ? "lies" : "does not lie")} on {others}"
            : $"{(lies ? "is one" : "is none")} of {others}";

        string Lies(string where) =>
            count == 0 ? $"lies {where} {None(set!)}"
            : count == 1 ? $"{(isSo ? "lies" : "does not lie")} {where} {others}"
            : $"{(isSo ? "lies" : "does not lie")} {where} {(isSo ? oneOf : "any")} of {others}";
    }

    /// <summary>What frets lie on that are not there: <c>no empty fret: there is none</c>.</summary>
    private static string None(FretSet set) =>
        set is FretSet.Named named
            ? $"no {FretWords.Noun(named.Noun, isPlural: false)}: there is none"
            : $"none of {FretWords.The(set)}: there are none";

    private static FretSet? Other(FretRelation relation) =>
        relation switch
        {
            FretRelation.LieOn on => on.Frets,
            FretRelation.Include include => include.Frets,
            FretRelation.Avoid avoid => avoid.Frets,
            FretRelation.LieNextTo next => next.Frets,
            FretRelation.LieApart apart => apart.Frets,
            FretRelation.Are are => are.Frets,
            _ => null,
        };
}
