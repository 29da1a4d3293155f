using Fretloom.Claims;

namespace Fretloom.Sentences.Claims;

/// <summary>Writes what is claimed.</summary>
internal static class ClaimWords
{
    /// <summary>The claim, without keys, places and full stop.</summary>
    public static string Of(Claim claim) =>
        claim switch
        {
            Claim.If condition => $"if {Of(condition.Condition)}, then {Of(condition.Then)}",
            Claim.And and => string.Join(" and ", and.Parts.Select(Of)),
            Claim.Or or => string.Join(" or ", or.Parts.Select(Of)),
            Claim.ThereAre there => ThereAre(there),
            Claim.AsMany as_ =>
                $"there are as many {FretWords.Noun(as_.One, isPlural: true)} as {FretWords.Noun(as_.Other, isPlural: true)}",
            Claim.IsPalindromic => "the string set is palindromic",
            Claim.HasEqualSteps => "the string set has equal steps",
            Claim.KeyIs key => $"the key is {(key.IsNot ? "not " : "")}{ClaimPrinter.Print(key.Kind)}",
            Claim.PatternsHaveSameForm same => $"{Pattern(same.One)} has the same form as {Pattern(same.Other)}",
            Claim.PatternIs pattern => PatternIs(pattern),
            Claim.CarriesDegree degrees => CarriesDegree(degrees),
            Claim.CarriesFrets carries =>
                $"the half-turn carries {FretWords.The(carries.From)} to {(carries.To is { } to ? FretWords.The(to) : Self(FretWords.IsPlural(carries.From)))}",
            Claim.CarriesShapes carries =>
                $"the half-turn carries {ShapeWords.Of(carries.From)} to {(carries.To is { } to ? ShapeWords.Of(to) : Self(ShapeWords.IsPlural(carries.From)))}",
            Claim.DegreeStands stands =>
                $"degree {CountWords.Number(stands.Degree)} stands on string {CountWords.Number(stands.String)} at {FretWords.QuantityWord(stands.Quantity)} {FretWords.Noun(stands.Noun, isPlural: false)}",
            Claim.NeighboursLieApart apart =>
                $"neighbouring {FretWords.Noun(apart.Noun, isPlural: true)} lie {CountWords.Frets(apart.Frets)} apart",
            Claim.GapIs gap =>
                $"the gap between {FretWords.The(gap.One)} and {FretWords.The(gap.Other)} is {CountWords.Frets(gap.Frets)}",
            Claim.OfFrets of => FretWords.Of(of),
            Claim.OfShapes of => ShapeWords.Of(of),
            _ => throw new NotSupportedException(),
        };

    private static string ThereAre(Claim.ThereAre there)
    {
        var isOne = there.Count.Number == 1;
        var count = there.Count == new Count(Comparison.Exactly, 0) ? "no" : CountWords.Of(there.Count);
        return $"there {(isOne ? "is" : "are")} {count} {FretWords.Noun(there.Noun, isPlural: !isOne)}";
    }

    private static string PatternIs(Claim.PatternIs pattern)
    {
        var subject = Pattern(pattern.One) + CountWords.Moved(pattern.MovedFrets);
        var motion = pattern.Motion switch
        {
            PatternMotion.HalfTurn => "half-turn",
            PatternMotion.Mirror => "mirror",
            PatternMotion.Flip => "flip",
            _ => "",
        };
        return pattern.IsOwn ? $"{subject} is its own {motion}"
            : motion.Length > 0 ? $"{subject} is the {motion} of {Pattern(pattern.Other)}"
            : $"{subject} is {Pattern(pattern.Other)}";
    }

    private static string CarriesDegree(Claim.CarriesDegree degrees)
    {
        var (from, to) = (CountWords.Number(degrees.From), CountWords.Number(degrees.To));
        return degrees.Swaps
            ? $"the half-turn swaps degree {from} and degree {to}"
            : $"the half-turn carries degree {from} to degree {to}";
    }

    private static string Pattern(OtherStrings? of) => $"the key pattern{StringWords.Of(of)}";

    private static string Self(bool isPlural) => isPlural ? "themselves" : "itself";
}
