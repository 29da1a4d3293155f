using Fretloom.Neck;
using Fretloom.Sentences.Claims;

namespace Fretloom.Claims.Checking;

/// <summary>What is to be said, and marked, where a claim counts a short string from its own nut and its neck does not.</summary>
internal static class OwnNuts
{
    /// <summary>How the frets of a sentence are counted, on its own strings and on those of other instruments; null where that goes without saying.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="ofFailure">What was said of its own strings with a failure; null for nothing.</param>
    public static string? WordsFor(ClaimSentence sentence, string? ofFailure)
    {
        var on = sentence.Places as PlaceScope.On;
        var others = Parts
            .Of(sentence.Claim)
            .OfType<OtherStrings>()
            .Where(other => other.Instrument is not null && other.Instrument != on?.Instrument)
            .Select(other =>
                ShortStrings.WordsNaming(other.Instrument!, other.Strings ?? other.Instrument!.AllStrings)
            );
        var notes = others
            .Prepend(
                ofFailure ?? (on is null ? null : ShortStrings.Words(on.Instrument, StringsOf(on, sentence.Claim)))
            )
            .OfType<string>()
            .Distinct()
            .ToList();
        return notes.Count == 0 ? null : string.Join(" ", notes);
    }

    /// <summary>The strings chosen, those whose degrees are spoken of, and others of the same instrument.</summary>
    private static StringSet StringsOf(PlaceScope.On on, Claim claim)
    {
        var all = on.Instrument.AllStrings;
        var spoken = Parts
            .Of(claim)
            .SelectMany(part =>
                part switch
                {
                    FretSet.OfDegree of => [of.String],
                    Claim.DegreeStands stands => [stands.String],
                    OtherStrings { Instrument: { } other } strings when other == on.Instrument => strings
                        .Strings
                        ?.Numbers
                        ?? all.Numbers,
                    _ => (ValueList<int>)[],
                }
            );
        return new StringSet((on.Strings ?? all).Numbers.Union(spoken).Intersect(all.Numbers));
    }

    /// <summary>How the frets and spots that show a failure are counted; null where that goes without saying.</summary>
    public static string? WordsFor(Place place, Explanation why)
    {
        if (place.Instrument is not { } instrument)
        {
            return null;
        }

        var strings = new StringSet(place.Strings.Numbers.Numbers.Union(why.Spots.Select(spot => spot.String)));
        var ofSpots = why.Spots.Where(spot => StartOf(spot) > 0).Select(Own).ToList();
        var ofFrets = why.Frets.Where(halfFret => halfFret % 2 == 0).Select(halfFret => halfFret / 2);
        return ShortStrings.Words(instrument, strings, [.. ofSpots, .. ofFrets]) is { } words ? words + Span() : null;

        int StartOf(Spot spot) => instrument.String(spot.String).StartsAtFret;
        int Own(Spot spot) => spot.Fret - StartOf(spot);

        string Span()
        {
            if (ofSpots.Count == 0 || ofSpots.Count == why.Spots.Count)
            {
                return "";
            }

            var (own, neck) = (why.Spots.Select(Own).ToList(), why.Spots.Select(spot => spot.Fret).ToList());
            return $" So counted, the spots marked lie at {Run(own)}; along the neck, at {Run(neck)}.";
        }

        static string Run(List<int> frets) =>
            frets.Min() == frets.Max()
                ? $"fret {ClaimWords.Number(frets[0])}"
                : $"frets {ClaimWords.Number(frets.Min())} to {ClaimWords.Number(frets.Max())}";
    }

    /// <summary>Where a claim speaks of the frets of one short string only, these are spots of it and no frets of the others.</summary>
    public static Explanation OnItsString(Place place, Claim claim, Explanation why)
    {
        var sets = Parts
            .Of(claim)
            .OfType<FretSet>()
            .Where(set => set is not (FretSet.Numbers or FretSet.Moved))
            .ToList();
        return
            why.Spots.Count == 0
            && place.Instrument is { } instrument
            && sets.Count > 0
            && sets.TrueForAll(set => set is FretSet.OfDegree)
            && sets.Cast<FretSet.OfDegree>().Select(set => set.String).Distinct().ToList() is [var number]
            && instrument.String(number).StartsAtFret > 0
            ? why with
            {
                Frets = [],
                Spots = why.Frets.Select(halfFret => place.SpotAt(number, halfFret / 2)).ToValueList(),
            }
            : why;
    }
}
