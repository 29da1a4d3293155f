using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>Tells why a claim is false in a case where it is.</summary>
internal static class Explainer
{
    public static Explanation Of(Case one, Claim claim) =>
        claim switch
        {
            Claim.If condition => Of(one, condition.Then),
            Claim.And and => Of(one, and.Parts.First(part => Evaluator.Of(one, part) == Outcome.Fails)),
            Claim.Or or => OfEach(one, or.Parts.Where(part => Evaluator.Of(one, part) == Outcome.Fails)),
            Claim.ThereAre there => OfCount(one, there),
            Claim.AsMany many => OfFretsAndNot(one, many),
            Claim.IsPalindromic => Palindrome(one.Place.Strings.Steps),
            Claim.HasEqualSteps => Explanation.OfFrets(
                $"the strings are tuned {string.Join(' ', one.Place.Strings.Steps)} semitones apart"
            ),
            Claim.KeyIs => Explanation.OfFrets($"the key is {ClaimWords.Of(one.Key.Kind)}"),
            Claim.PatternsHaveSameForm same => Explanation.OfFrets(
                $"no motion along the neck carries {Pattern(one, same.One)} onto {Pattern(one, same.Other)}"
            ),
            Claim.PatternIs pattern => OfPattern(one, pattern),
            Claim.CarriesDegree carries => TurnExplainer.OfDegree(one, carries),
            Claim.CarriesFrets carries => TurnExplainer.OfFrets(one, carries.From, carries.To),
            Claim.CarriesShapes carries => TurnExplainer.OfShapes(one, carries),
            Claim.DegreeStands stands => FretExplainer.OfDegree(one, stands),
            Claim.OfFrets of => FretExplainer.Of(one, of),
            Claim.NeighboursLieApart apart => OfNeighbours(one, apart),
            Claim.GapIs gap => OfGap(one, gap),
            Claim.OfShapes of => ShapeExplainer.Of(one, of),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };

    public static Explanation Palindrome(ValueList<int> steps) =>
        Explanation.OfFrets(
            $"the strings are tuned {string.Join(' ', steps)} semitones apart, which does not read the same both ways"
        );

    private static Explanation OfEach(Case one, IEnumerable<Claim> parts)
    {
        var all = parts.Select(part => Of(one, part)).ToList();
        return new Explanation(
            string.Join("; and ", all.Select(each => each.Text)),
            all.SelectMany(each => each.Frets).Distinct().Order().ToValueList(),
            all.SelectMany(each => each.Spots).Distinct().ToValueList()
        );
    }

    private static Explanation OfCount(Case one, Claim.ThereAre claim)
    {
        var frets = one.FretsOf(claim.Noun);
        var noun = ClaimWords.Of(claim.Noun.Kind);
        var strings = ClaimWords.Of(one.Place, claim.Noun.Of);
        var wanted = ClaimWords.Not(claim.Count);
        var has = ClaimWords.IsOne(one.Place, claim.Noun.Of) ? "has" : "have";
        return Explanation.OfFrets(
            frets.Count switch
            {
                0 => $"{strings} {has} no {noun}; there are 0, {wanted}",
                1 => $"the only {noun} of {strings} is {ClaimWords.Frets(frets)}; there is 1, {wanted}",
                var count => $"the {noun}s of {strings} are {ClaimWords.Frets(frets)}; there are {count}, {wanted}",
            },
            frets
        );
    }

    private static Explanation OfFretsAndNot(Case one, Claim.AsMany claim)
    {
        var (frets, others) = (one.FretsOf(claim.One), one.FretsOf(claim.Other));
        return Explanation.OfFrets(
            $"{ClaimWords.Are(claim.One, frets)}, and {ClaimWords.Are(claim.Other, others)}: {frets.Count} and {others.Count}",
            one.Neck.Set(frets.Concat(others))
        );
    }

    private static Explanation OfPattern(Case one, Claim.PatternIs claim)
    {
        var name = Pattern(one, claim.One);
        var moved = claim.MovedFrets == 0 ? "" : $" moved {ClaimWords.Moved(claim.MovedFrets)}";
        var strings = one.StringsOf(claim.One);
        return claim.Motion switch
        {
            PatternMotion.HalfTurn when claim.IsOwn && !strings.IsPalindromic => Palindrome(strings.Steps),
            PatternMotion.HalfTurn when claim.IsOwn => Explanation.OfFrets(
                $"the notes of {one.Key} do not read the same both ways about any note, so no half-turn carries {name} onto itself"
            ),
            PatternMotion.None => OfPlaces(one, claim, $"{name}{moved}"),
            var motion => Explanation.OfFrets(
                $"{name}{moved} is not {(claim.IsOwn ? "its own " : "the ")}{Word(motion)}"
                    + (
                        claim.IsOwn ? ""
                        : claim.Other == claim.One ? " of itself"
                        : $" of {Pattern(one, claim.Other)}"
                    )
                    + (motion == PatternMotion.Flip ? "" : ", about any place of the neck")
            ),
        };
    }

    /// <summary>Two patterns that should lie on the same places: the first place that is in one only.</summary>
    private static Explanation OfPlaces(Case one, Claim.PatternIs claim, string name)
    {
        var (strings, others) = (one.StringsOf(claim.One), one.StringsOf(claim.Other));
        var at = Enumerable.Range(0, strings.Count).First(at_ => Differs(at_) != 0);
        var fret = System.Numerics.BitOperations.TrailingZeroCount(Differs(at));
        return new Explanation(
            $"{name} and {Pattern(one, claim.Other)} differ at fret {fret} of string {others.Numbers.Numbers[at]}",
            [2 * fret],
            one.Place.HasString(others.Numbers.Numbers[at]) ? [new Spot(others.Numbers.Numbers[at], fret)] : []
        );

        int Differs(int at_) =>
            Twelve.Turned(strings.FretsOf(at_, one.Notes), claim.MovedFrets) ^ others.FretsOf(at_, one.Notes);
    }

    private static Explanation OfNeighbours(Case one, Claim.NeighboursLieApart claim)
    {
        var frets = one.FretsOf(claim.Noun);
        var distances = DistanceClaims.Distances(one, frets);
        var at = distances.Index().First(each => !DistanceClaims.Admits(claim.Frets, each.Item)).Index;
        var next = frets[(at + 1) % frets.Count];
        return Explanation.OfFrets(
            $"from the {ClaimWords.Of(claim.Noun.Kind)} {ClaimWords.Fret(frets[at])} up to the next, {ClaimWords.Fret(next)}, there are {ClaimWords.Fret(distances[at])} frets, {ClaimWords.Not(claim.Frets)}",
            one.Neck.Set([frets[at], next])
        );
    }

    private static Explanation OfGap(Case one, Claim.GapIs claim)
    {
        var (frets, others) = (FretSets.Of(one, claim.One), FretSets.Of(one, claim.Other));
        var gap = DistanceClaims.Gap(one.Neck, frets, others) ?? 0;
        return Explanation.OfFrets(
            $"the gap between {ClaimWords.Of(one, claim.One)} and {ClaimWords.Of(one, claim.Other)} is {ClaimWords.Fret(gap)}, {ClaimWords.Not(claim.Frets)}",
            one.Neck.Set(frets.Concat(others))
        );
    }

    private static string Pattern(Case one, OtherStrings? other) =>
        $"the key pattern of {ClaimWords.Of(one.Place, other)}";

    private static string Word(PatternMotion motion) =>
        motion switch
        {
            PatternMotion.HalfTurn => "half-turn",
            PatternMotion.Mirror => "mirror",
            _ => "flip",
        };
}
