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

        var listed = OutcomeTable.Of(sentence, ListedStringSets.All, cancellation).Where(at => at.IsAsked).ToList();
        return new ClaimElsewhere(
            kinds,
            listed.Where(at => at.Holds).Select(at => at.Place.Name).ToValueList(),
            listed.Count,
            survey.Verdict == Verdict.Holds ? Nearest() : null
        );

        bool HoldsIn(ScaleKind kind) =>
            survey.Kinds.Contains(kind)
                ? survey.HoldsIn(kind)
                : Survey.Of(sentence with { Keys = new KeyScope.EveryOf(kind) }, options, null, cancellation).Verdict
                    == Verdict.Holds;

        ClaimFailure? Nearest()
        {
            var here = survey.Places[0];
            var failing = listed
                .Where(at => at.Place.Strings.Count == here.Strings.Count)
                .Concat(OutcomeTable.Of(sentence, Retunings(here).ToValueList(), cancellation))
                .Where(at => at.Fails)
                .MinBy(at => Distance(here, at.Place));
            return failing?.Smallest(sentence);
        }
    }

    /// <summary>Fingering shapes takes too long to be done on twenty necks unasked.</summary>
    private static bool IsSlow(Claim claim) =>
        Parts.Of(claim).Any(part => part is ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs);

    /// <summary>The place with one of its strings a semitone or two lower or higher; a tuning is that of the neck without its capo.</summary>
    public static IEnumerable<Place> Retunings(Place here) => Retunings(here, -1, 1, -2, 2);

    /// <summary>The place with one of its strings so many semitones higher, or lower where they are negative.</summary>
    public static IEnumerable<Place> Retunings(Place here, params int[] distances) =>
        from semitones in distances
        from number in here.Strings.Numbers.Numbers
        let bare = here.Instrument!.WithCapo(0)
        select Place.On(
            bare.Tuned(
                    bare.OpenPitches.Select(
                        (pitch, at) => at == number - 1 ? Pitch.FromMidiNumber(pitch.MidiNumber + semitones) : pitch
                    )
                )
                .WithCapo(here.Instrument!.Capo),
            here.Strings.Numbers
        );

    /// <summary>By how many semitones the steps differ, all told.</summary>
    public static int Distance(Place one, Place other) =>
        one.Strings.Steps.Zip(other.Strings.Steps, (a, b) => Math.Abs(a - b)).Sum();
}
