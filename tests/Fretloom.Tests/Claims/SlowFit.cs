using System.Collections;
using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Tests.Claims;

/// <summary>Whether a claim can be asked of a place: the frets and the strings are there, and as many as its shapes have notes.</summary>
internal static class SlowFit
{
    public static bool Fits(SlowPlace place, ClaimSentence sentence) =>
        Within(sentence.Claim).All(part => PartFits(place, part))
        && (
            sentence.Window is not { } window
            || HasFrets(place.Instrument, place.Chosen, window.Last)
                && Within(sentence.Claim)
                    .OfType<OtherStrings>()
                    .All(other => HasFrets(other.Instrument ?? place.Instrument, place.Resolve(other)!, window.Last))
                && Within(sentence.Claim)
                    .Select(part =>
                        part switch
                        {
                            FretSet.OfDegree of => of.String,
                            Claim.DegreeStands stands => stands.String,
                            _ => (int?)null,
                        }
                    )
                    .OfType<int>()
                    .All(number => HasFrets(place.Instrument, [place.String(number)], window.Last))
        );

    /// <summary>Whether every string goes on for so many frets from its own nut; a mere tuning has no end.</summary>
    private static bool HasFrets(Instrument? instrument, List<SlowString> strings, int last) =>
        instrument is null
        || strings.TrueForAll(s => instrument.Has(new Spot(s.Number, last + instrument.String(s.Number).StartsAtFret)));

    private static bool PartFits(SlowPlace place, object part) =>
        part switch
        {
            OtherStrings other => place.Resolve(other) is not null,
            ShapeSet set => place.Resolve(set.Of)?.Count == set.Notes
                && set.Voicing.Inversion < set.Notes
                && (set.Voicing.Arrangement != Arrangement.DropThree || set.Notes > 2)
                && (set.Voicing.Arrangement == Arrangement.Close || !IsWide(set)),
            FretSet.OfDegree of => place.All.Exists(s => s.Number == of.String),
            Claim.DegreeStands stands => place.All.Exists(s => s.Number == stands.String),
            Claim.PatternsHaveSameForm same => place.Resolve(same.One)?.Count == place.Resolve(same.Other)?.Count,
            Claim.PatternIs { IsOwn: false } pattern => place.Resolve(pattern.One)?.Count
                == place.Resolve(pattern.Other)?.Count,
            FretSet.OfShapes { Shapes: ShapeSet.OfQuality } => false,
            Claim.OfShapes
            {
                Shapes: ShapeSet.OfQuality,
                Says: ShapePredicate.BeginsOn
                    or ShapePredicate.EndsOn
                    or ShapePredicate.HasRootOn
                    or ShapePredicate.IsThatOfDegree
            } => false,
            ShapePredicate.Stretches or ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs => place.Instrument
                is not null,
            Claim.CarriesShapes carries => carries.From.Of?.Instrument is null && carries.To?.Of?.Instrument is null,
            _ => true,
        };

    private static bool IsWide(ShapeSet set) =>
        set is ShapeSet.ByNumeral by && by.Numeral.Quality.Intervals.Any(interval => interval.Semitones >= 12);

    /// <summary>A claim and everything in it, found by looking at every property.</summary>
    public static IEnumerable<object> Within(object part) =>
        part.GetType().Namespace != typeof(Claim).Namespace
            ? part is IEnumerable many and not string
                ? many.Cast<object>().SelectMany(Within)
                : []
            : part.GetType()
                .GetProperties()
                .Where(property => property.GetMethod!.IsPublic && !property.GetMethod.IsStatic)
                .Select(property => property.GetValue(part))
                .OfType<object>()
                .SelectMany(Within)
                .Prepend(part);
}
