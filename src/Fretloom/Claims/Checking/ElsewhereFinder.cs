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
            var failing = OutcomeTable
                .Of(sentence, Retunings.OfOneString(here).ToValueList(), cancellation)
                .Concat(listed.Where(at => at.Place.Strings.Count == here.Strings.Count))
                .Where(at => at.Fails)
                .MinBy(at => Retunings.Distance(here.Strings.Opens, at.Place.Strings.Opens));
            return failing?.Smallest(sentence);
        }
    }

    /// <summary>Fingering shapes takes too long to be done on twenty necks unasked.</summary>
    private static bool IsSlow(Claim claim) =>
        Parts.Of(claim).Any(part => part is ShapePredicate.CanBePlayed or ShapePredicate.IsFingeredAs);
}
