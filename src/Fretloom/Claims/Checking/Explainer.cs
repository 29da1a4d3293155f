using Fretloom.Sentences.Claims;

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
            Claim.IsPalindromic => Explanation.OfFrets(Palindrome(one, null)),
            Claim.HasEqualSteps => Explanation.OfFrets(Steps(one, null, "are not all the same")),
            Claim.KeyIs key => Explanation.OfFrets(
                $"the key is {ClaimWords.Of(one.Key.Kind)}{(key.IsNot ? "" : $", not {ClaimWords.Of(key.Kind)}")}"
            ),
            Claim.PatternsHaveSameForm same => Explanation.OfFrets(
                $"no motion along the neck carries {Pattern(same.One)} onto {Pattern(same.Other)}"
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

    /// <summary>That the steps between some strings do not read the same both ways.</summary>
    public static string Palindrome(Case one, OtherStrings? other) =>
        Steps(one, other, "do not read the same both ways");

    // A mere tuning is called by its steps: they are not said again.
    private static string Steps(Case one, OtherStrings? other, string what) =>
        other is null && one.Place.Instrument is null
            ? $"the steps {what}"
            : $"{ClaimWords.Strings(other)} are tuned in steps of {ClaimWords.List(one.StringsOf(other).Steps.Select(ClaimWords.Number))} semitones, which {what}";

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
        var wanted = claim.Count;
        var isOfNone = wanted.Number == 0 || wanted == new Count(Comparison.FewerThan, 1);
        var beside =
            frets.Count > 0 ? (isOfNone ? "" : $", {ClaimWords.Against(wanted)}")
            : wanted.Number > 1 ? $", where there should be {ClaimWords.Of(wanted)}"
            : "";
        return Explanation.OfFrets(
            $"there {(frets.Count > 1 ? "are" : "is")} {ClaimWords.HowMany(claim.Noun, frets)}{beside}",
            frets
        );
    }

    private static Explanation OfFretsAndNot(Case one, Claim.AsMany claim)
    {
        var (frets, others) = (one.FretsOf(claim.One), one.FretsOf(claim.Other));
        return Explanation.OfFrets(
            $"there {(frets.Count > 1 ? "are" : "is")} {ClaimWords.HowMany(claim.One, frets)} but {ClaimWords.HowMany(claim.Other, others)}",
            one.Neck.Set(frets.Concat(others))
        );
    }

    private static Explanation OfPattern(Case one, Claim.PatternIs claim)
    {
        var name = Pattern(claim.One);
        var moved = claim.MovedFrets == 0 ? "" : $" moved {ClaimWords.Moved(claim.MovedFrets)}";
        if (
            claim is { Motion: PatternMotion.HalfTurn, IsOwn: true }
            && TurnExplainer.WhyNone(one, claim.One) is { } why
        )
        {
            return Explanation.OfFrets($"{why}, so no half-turn carries {name} onto itself");
        }

        if (claim.Motion is PatternMotion.None or PatternMotion.Flip)
        {
            return OfPlaces(one, claim, $"{name}{moved}");
        }

        var motion = claim.Motion == PatternMotion.HalfTurn ? "half-turn" : "mirror";
        var other =
            claim.IsOwn ? $"its own {motion}"
            : claim.Other == claim.One ? $"the {motion} of itself"
            : $"the {motion} of {Pattern(claim.Other)}";
        return Explanation.OfFrets($"{name}{moved} is not {other} about any place of the neck");
    }

    /// <summary>Two patterns that should lie on the same places, one perhaps with its strings reversed: the first place that is in one only.</summary>
    private static Explanation OfPlaces(Case one, Claim.PatternIs claim, string name)
    {
        var (strings, others) = (one.StringsOf(claim.One), one.StringsOf(claim.IsOwn ? claim.One : claim.Other));
        var isFlipped = claim.Motion == PatternMotion.Flip;
        var at = Enumerable.Range(0, strings.Count).First(index => Differs(index) != 0);
        var fret = System.Numerics.BitOperations.TrailingZeroCount(Differs(at));
        var (mine, theirs) = (strings.Numbers.Numbers[at], others.Numbers.Numbers[Image(at)]);
        var isMine = (Mine(at) >> fret & 1) != 0;
        var (has, hasNot) = isMine ? ("has a note", "has none") : ("has no note", "has one");
        var other =
            (claim.IsOwn || claim.Other == claim.One)
                ? (isFlipped ? $"on string {theirs} it" : "unmoved it")
                : Pattern(claim.Other);
        var place = isFlipped && other == Pattern(claim.Other) ? $" on string {theirs}" : "";
        return new Explanation(
            $"{name} {has} at fret {fret} of string {mine}, but {other} {hasNot}{place}",
            [2 * fret],
            one.Place.HasString(mine) ? [one.Place.SpotAt(mine, fret)] : []
        );

        int Image(int index) => isFlipped ? strings.Count - 1 - index : index;
        int Mine(int index) => Twelve.Turned(strings.FretsOf(index, one.Notes), claim.MovedFrets);
        int Differs(int index) => Mine(index) ^ others.FretsOf(Image(index), one.Notes);
    }

    private static Explanation OfNeighbours(Case one, Claim.NeighboursLieApart claim)
    {
        var frets = one.FretsOf(claim.Noun);
        var distances = DistanceClaims.Distances(one, frets);
        var at = distances.Index().First(each => !DistanceClaims.Admits(claim.Frets, each.Item)).Index;
        var next = frets[(at + 1) % frets.Count];
        var distance = $"{ClaimWords.Distance(distances[at])}, {ClaimWords.Against(claim.Frets)}";
        var noun = FretWords.Noun(claim.Noun, isPlural: false);
        return Explanation.OfFrets(
            frets.Count == 1
                ? $"the only {noun} ({ClaimWords.Fret(next)}) comes again after {distance}"
                : $"from the {noun} at {ClaimWords.Fret(frets[at])} up to the next, at {ClaimWords.Fret(next)}, it is {distance}",
            one.Neck.Set([frets[at], next])
        );
    }

    private static Explanation OfGap(Case one, Claim.GapIs claim)
    {
        var (frets, others) = (FretSets.Of(one, claim.One), FretSets.Of(one, claim.Other));
        var gap = DistanceClaims.Gap(one.Neck, frets, others) ?? 0;
        return Explanation.OfFrets(
            $"the gap between {ClaimWords.Of(one, claim.One)} and {ClaimWords.Of(one, claim.Other)} is {ClaimWords.Distance(gap)}, {ClaimWords.Against(claim.Frets)}",
            one.Neck.Set(frets.Concat(others))
        );
    }

    private static string Pattern(OtherStrings? other) => $"the key pattern{ClaimWords.OfStrings(other)}";
}
