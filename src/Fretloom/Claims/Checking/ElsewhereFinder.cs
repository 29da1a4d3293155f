using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Looks where else a sentence is true.</summary>
internal static class ElsewhereFinder
{
    private static readonly ScaleKind[] UsualKinds =
    [
        ScaleKind.Major,
        ScaleKind.NaturalMinor,
        ScaleKind.HarmonicMinor,
        ScaleKind.MelodicMinor,
    ];

    public static ClaimElsewhere? Of(Survey survey, CheckOptions options, CancellationToken cancellation)
    {
        var sentence = survey.Sentence;
        if (survey.Verdict is not (Verdict.Holds or Verdict.Fails) || IsSlow(sentence.Claim))
        {
            return null;
        }

        var kinds = sentence.Keys is KeyScope.One ? [] : UsualKinds.Where(HoldsIn).ToValueList();
        if (sentence.Places is not PlaceScope.On on)
        {
            return new ClaimElsewhere(kinds, [], 0, null);
        }

        var listed = ListedStringSets
            .All.Select(place => (Place: place, Survey: At(place)))
            .Where(each => each.Survey.Cases > 0)
            .ToList();
        return new ClaimElsewhere(
            kinds,
            listed.Where(each => each.Survey.Verdict == Verdict.Holds).Select(each => each.Place.Name).ToValueList(),
            listed.Count,
            survey.Verdict == Verdict.Holds ? Nearest() : null
        );

        bool HoldsIn(ScaleKind kind) =>
            survey.Kinds.Contains(kind)
                ? survey.HoldsIn(kind)
                : Survey.Of(sentence with { Keys = new KeyScope.EveryOf(kind) }, options, null, cancellation).Verdict
                    == Verdict.Holds;

        Survey At(Place place) =>
            Survey.Of(
                sentence with
                {
                    Places = new PlaceScope.On(place.ToInstrument(), place.Strings.Numbers),
                },
                options,
                null,
                cancellation
            );

        ClaimFailure? Nearest()
        {
            var here = survey.Places[0];
            var sets = listed.Where(each => each.Place.Strings.Count == here.Strings.Count);
            var tuned = Retunings(here).Select(place => (Place: place, Survey: At(place)));
            return sets.Concat(tuned)
                .Where(each => each.Survey.Verdict == Verdict.Fails)
                .OrderBy(each => Distance(here, each.Place))
                .SelectMany(each => Failures.Of(each.Survey, 1))
                .FirstOrDefault();
        }
    }

    /// <summary>Fingering shapes takes too long to be done on twenty necks unasked.</summary>
    private static bool IsSlow(Claim claim) =>
        Parts.Of(claim).Any(part => part is ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs);

    /// <summary>The place with one of its strings a semitone or two lower or higher.</summary>
    private static IEnumerable<Place> Retunings(Place here) =>
        from semitones in new[] { -1, 1, -2, 2 }
        from number in here.Strings.Numbers.Numbers
        let open = here.Instrument!.OpenPitches
        select Place.On(
            here.Instrument!.Tuned(
                open.Select(
                    (pitch, at) => at == number - 1 ? Pitch.FromMidiNumber(pitch.MidiNumber + semitones) : pitch
                )
            ),
            here.Strings.Numbers
        );

    /// <summary>By how many semitones the steps differ, all told.</summary>
    private static int Distance(Place one, Place other) =>
        one.Strings.Steps.Zip(other.Strings.Steps, (a, b) => Math.Abs(a - b)).Sum();
}
