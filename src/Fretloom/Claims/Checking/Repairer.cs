using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>
/// Looks for the smallest change that makes a false sentence true, and tries it before it is told. What narrows the sentence goes before what
/// turns it into another: kinds of key that are left out, then frets, strings, numbers, and only then other keys.
/// </summary>
internal static class Repairer
{
    private const int PalindromicOnly = 2;
    private const int FewestStrings = 3;

    public static ClaimRepair? Of(Survey survey, CheckOptions options, CancellationToken cancellation)
    {
        var known = survey.FirstFailing.Take(Tally.Remembered).ToList();
        var left = Math.Min(options.Budget, options.RepairBudget);
        var changes = Changes(survey.Sentence).OrderBy(change => change.Cost).ToLookup(change => change.IsWeaker);
        return KindsRepairer.FewerKinds(survey).FirstOrDefault(repair => Try(repair)?.Verdict == Verdict.Holds)
            ?? Changed(changes[false])
            ?? OneKindAndNumber(survey).FirstOrDefault(IsGood)
            ?? Changed(changes[true])
            ?? KindsRepairer.OtherKinds(survey).FirstOrDefault(IsGood);

        ClaimRepair? Changed(IEnumerable<(ClaimRepair Repair, int Cost, bool IsWeaker)> some) =>
            some.Select(change => change.Repair)
                .Where(repair => IsWorthTrying(survey, repair, known, cancellation))
                .FirstOrDefault(IsGood);

        bool IsGood(ClaimRepair repair) =>
            Try(repair) is { Verdict: Verdict.Holds } changed && SaysAsMuch(survey, changed);

        // All that is tried has to be done within the time of one check.
        Survey? Try(ClaimRepair repair)
        {
            var cost = ClaimCost.Of(repair.Sentence);
            if (cost.WhyNot(left) is not null)
            {
                return null;
            }

            left -= cost.Nanoseconds;
            return Survey.Of(repair.Sentence, options, null, cancellation);
        }
    }

    private static IEnumerable<(ClaimRepair Repair, int Cost, bool IsWeaker)> Changes(ClaimSentence sentence) =>
        [
            .. ShorterWindows(sentence).Select(change => (change.Item1, change.Item2, false)),
            .. ClaimChanges
                .Of(sentence.Claim, sentence.Window)
                .Select(change =>
                    (Repair(sentence with { Claim = change.Claim }, change.Words), change.Cost, change.IsWeaker)
                ),
            .. FewerPlaces(sentence).Select(change => (change.Item1, change.Item2, false)),
        ];

    /// <summary>
    /// Another exact number in keys of one kind, which says more than a bound in all of them; for one string set. That there are none there says less.
    /// </summary>
    private static IEnumerable<ClaimRepair> OneKindAndNumber(Survey survey) =>
        survey.Sentence is not { Places: PlaceScope.On } sentence || survey.Kinds.Count == 1
            ? []
            : from change in ClaimChanges.Of(sentence.Claim, sentence.Window)
            where change.Claim is Claim.ThereAre { Count: { Comparison: Comparison.Exactly, Number: > 0 } }
            from kind in survey.Kinds
            orderby change.Cost, survey.Kinds.IndexOf(kind)
            let keys = new KeyScope.EveryOf(kind)
            select new ClaimRepair(
                sentence with
                {
                    Keys = keys,
                    Claim = change.Claim,
                },
                $"{ClaimPrinter.Print(keys)} ... {change.Words}",
                $"It holds if you write \"{ClaimPrinter.Print(keys)}\" and \"{change.Words}\"."
            );

    /// <summary>Whether a change does away with every failing case that is known.</summary>
    private static bool IsWorthTrying(
        Survey survey,
        ClaimRepair repair,
        List<(Key Key, int Place)> known,
        CancellationToken cancellation
    )
    {
        var changed = repair.Sentence;
        var isOne = changed.Places is PlaceScope.On;
        if (!isOne && changed.Places != survey.Sentence.Places)
        {
            return true;
        }

        var neck = new NeckLine(changed.Window);
        var here = isOne ? new PlaceList(changed.Places)[0] : null;
        return (here is null || Applicability.Applies(here, changed))
            && known.TrueForAll(failing =>
            {
                cancellation.ThrowIfCancellationRequested();
                var one = new Case(here ?? survey.Places[failing.Place], failing.Key, neck);
                return Evaluator.Of(one, changed.Claim) != Outcome.Fails;
            });
    }

    /// <summary>Whether a changed sentence has something to speak about in at least half as great a share of its cases: one that says nothing mends nothing.</summary>
    private static bool SaysAsMuch(Survey survey, Survey changed) =>
        2 * Tested(changed) * survey.Cases >= Tested(survey) * changed.Cases;

    private static decimal Tested(Survey survey) => survey.Cases - survey.Untested;

    private static IEnumerable<(ClaimRepair, int)> ShorterWindows(ClaimSentence sentence) =>
        sentence.Window is not { } window
            ? []
            : from shorter in Enumerable.Range(1, window.Count / 2)
            from first in Enumerable.Range(window.First, shorter + 1)
            let range = new FretRange(first, first + window.Count - 1 - shorter)
            select (Repair(sentence with { Window = range }, ClaimPrinter.Print(range)), shorter);

    private static IEnumerable<(ClaimRepair, int)> FewerPlaces(ClaimSentence sentence)
    {
        switch (sentence.Places)
        {
            case PlaceScope.Listed { IsPalindromic: false } listed:
                yield return Of(listed with { IsPalindromic = true }, PalindromicOnly);
                break;
            case PlaceScope.Tunings { IsPalindromic: false } all:
                yield return Of(new PlaceScope.Tunings(all.Strings, true, all.Least, all.Most), PalindromicOnly);
                break;
            case PlaceScope.On on:
                var chosen = on.Strings ?? on.Instrument.AllStrings;
                for (var fewer = 1; chosen.Count - fewer >= Math.Max(FewestStrings, (chosen.Count + 1) / 2); fewer++)
                {
                    foreach (var strings in chosen.Neighbours(chosen.Count - fewer).Reverse())
                    {
                        yield return Of(new PlaceScope.On(on.Instrument, strings), 1 + 2 * fewer);
                    }
                }

                break;
        }

        (ClaimRepair, int) Of(PlaceScope places, int cost) =>
            (Repair(sentence with { Places = places }, ClaimPrinter.Print(places)), cost);
    }

    private static ClaimRepair Repair(ClaimSentence sentence, string words) =>
        new(sentence, words, $"It holds if you write \"{words}\".");
}
