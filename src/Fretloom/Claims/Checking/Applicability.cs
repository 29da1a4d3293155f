using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>Whether a claim can be asked of a string set at all; the key never matters.</summary>
internal static class Applicability
{
    /// <summary>Whether a sentence can: its claim, and every string it speaks of has all of its frets.</summary>
    public static bool Applies(Place place, ClaimSentence sentence) =>
        HasFrets(place, sentence) && Applies(place, sentence.Claim);

    /// <summary>Whether a claim of the endless neck can.</summary>
    public static bool Applies(Place place, Claim claim) => Parts.Of(claim).All(part => Fits(place, part));

    private static bool HasFrets(Place place, ClaimSentence sentence) =>
        sentence.Window is not { } window
        || Parts
            .Of(sentence.Claim)
            .Select(part => LastFretFor(place, part))
            .Prepend(place.Strings.LastFret)
            .All(last => !(last < window.Last));

    /// <summary>The last fret of the strings that a part names; null where it names none, or they have no end.</summary>
    private static int? LastFretFor(Place place, object part) =>
        part switch
        {
            OtherStrings other => place.Resolve(other)?.LastFret,
            FretSet.OfDegree of => place.LastFretOf(of.String),
            Claim.DegreeStands stands => place.LastFretOf(stands.String),
            _ => null,
        };

    private static bool Fits(Place place, object part) =>
        part switch
        {
            OtherStrings other => place.Resolve(other) is not null,
            ShapeSet shapes => place.Resolve(shapes.Of)?.Count == shapes.Notes && ShapeMembers.CanBeVoiced(shapes),
            FretSet.OfDegree of => place.HasString(of.String),
            FretSet.OfShapes { Shapes: ShapeSet.OfQuality } => false,
            Claim.DegreeStands stands => place.HasString(stands.String),
            Claim.PatternsHaveSameForm same => CountOf(place, same.One) == CountOf(place, same.Other),
            Claim.PatternIs { IsOwn: false } pattern => CountOf(place, pattern.One) == CountOf(place, pattern.Other),
            Claim.OfShapes { Shapes: ShapeSet.OfQuality } of => !NeedsPlace(of.Says),
            Claim.CarriesShapes carries => IsOfThePlace(carries.From) && IsOfThePlace(carries.To),
            ShapePredicate.Stretches or ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs => place.Instrument
                is not null,
            _ => true,
        };

    private static int? CountOf(Place place, OtherStrings? strings) => place.Resolve(strings)?.Count;

    private static bool IsOfThePlace(ShapeSet? shapes) => shapes?.Of?.Instrument is null;

    /// <summary>A form whose root is left open begins, ends and has its root nowhere.</summary>
    private static bool NeedsPlace(ShapePredicate says) =>
        says
            is ShapePredicate.BeginsOn
                or ShapePredicate.EndsOn
                or ShapePredicate.HasRootOn
                or ShapePredicate.IsThatOfDegree;
}
