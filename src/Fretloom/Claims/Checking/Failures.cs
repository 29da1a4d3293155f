using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Tells of failing cases, the smallest first.</summary>
internal static class Failures
{
    public static ValueList<ClaimFailure> Of(Survey survey, int most, CancellationToken cancellation)
    {
        var neck = new NeckLine(survey.Sentence.Window);
        return survey
            .FirstFailing.Take(most == 0 ? 0 : Tally.Remembered)
            .Select(
                (failing, order) =>
                {
                    cancellation.ThrowIfCancellationRequested();
                    var one = new Case(survey.Places[failing.Place], failing.Key, neck);
                    return (
                        Failure: Of(one, survey.Sentence.Claim),
                        Accidentals: Survey.Accidentals(failing.Key),
                        Order: order
                    );
                }
            )
            .OrderBy(each => each.Accidentals)
            .ThenBy(each => LowestFret(each.Failure))
            .ThenBy(each => each.Order)
            .Take(most)
            .Select(each => each.Failure)
            .ToValueList();
    }

    public static ClaimFailure Of(Case one, Claim claim)
    {
        var why = OwnNuts.OnItsString(one.Place, claim, Explainer.Of(one, claim));
        return new ClaimFailure(
            one.Key,
            one.Place.Name,
            one.Place.ToInstrument(),
            one.Place.Strings.Numbers,
            $"{ClaimWords.Where(one)}, {why.Text}.",
            why.Frets.Select(halfFret => halfFret / 2.0).ToValueList(),
            why.Spots
        )
        {
            CountingNote = OwnNuts.WordsFor(one.Place, why),
        };
    }

    private static double LowestFret(ClaimFailure failure) =>
        failure.Frets.Concat(failure.Spots.Select(spot => (double)spot.Fret)).DefaultIfEmpty(0).Min();
}
