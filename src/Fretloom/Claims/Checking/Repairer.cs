using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Looks for the shortest change that makes a false sentence true, and tries it before it is told.</summary>
internal static class Repairer
{
    public static ClaimRepair? Of(Survey survey, CheckOptions options, CancellationToken cancellation)
    {
        var known = survey.FirstFailing.Take(Tally.Remembered).ToList();
        return Candidates(survey)
            .Where(candidate => IsWorthTrying(survey, candidate, known, cancellation))
            .FirstOrDefault(candidate =>
                ClaimCost.Of(candidate.Sentence).WhyNot(options.Budget) is null
                && Survey.Of(candidate.Sentence, options, null, cancellation).Verdict == Verdict.Holds
            );
    }

    private static IEnumerable<ClaimRepair> Candidates(Survey survey) =>
        [
            .. FewerKinds(survey),
            .. ShorterWindows(survey.Sentence),
            .. OtherNumbers(survey.Sentence),
            .. FewerPlaces(survey.Sentence),
            .. OtherKinds(survey),
        ];

    /// <summary>Whether a change does away with every failing case that is known; the kinds of key are known already.</summary>
    private static bool IsWorthTrying(
        Survey survey,
        ClaimRepair candidate,
        List<(Key Key, int Place)> known,
        CancellationToken cancellation
    )
    {
        var (sentence, changed) = (survey.Sentence, candidate.Sentence);
        if (changed.Keys != sentence.Keys || changed.Places != sentence.Places)
        {
            return true;
        }

        var neck = new NeckLine(changed.Window);
        return known.TrueForAll(failing =>
        {
            cancellation.ThrowIfCancellationRequested();
            var one = new Case(survey.Places[failing.Place], failing.Key, neck);
            return Evaluator.Of(one, changed.Claim) != Outcome.Fails;
        });
    }

    private static IEnumerable<ClaimRepair> FewerKinds(Survey survey)
    {
        var kinds = survey.Kinds;
        var failing = kinds.Where(kind => survey.FailingIn(kind) > 0).ToList();
        if (kinds.Count < 2 || failing.Count == kinds.Count)
        {
            return [];
        }

        var where = $"It fails in {ClaimWords.List(failing.Select(ClaimWords.Of))} only; ";
        var minor = new KeyScope.EveryMinorKey();
        var scopes = kinds
            .Where(kind => survey.FailingIn(kind) == 0)
            .Select(kind => ((KeyScope)new KeyScope.EveryOf(kind), ClaimWords.Every(kind)));
        if (survey.Sentence.Keys is KeyScope.EveryKey && failing is [var only] && only == ScaleKind.Major)
        {
            scopes = scopes.Prepend((minor, "in every minor key"));
        }

        return scopes.Select(scope =>
            Repair(survey.Sentence with { Keys = scope.Item1 }, scope.Item2, where + "it holds")
        );
    }

    private static IEnumerable<ClaimRepair> OtherKinds(Survey survey) =>
        survey.Sentence.Keys is KeyScope.EveryOf
            ? new[] { ScaleKind.Major, ScaleKind.NaturalMinor, ScaleKind.HarmonicMinor, ScaleKind.MelodicMinor }
                .Where(kind => !survey.Kinds.Contains(kind))
                .Select(kind =>
                    Repair(survey.Sentence with { Keys = new KeyScope.EveryOf(kind) }, ClaimWords.Every(kind))
                )
            : [];

    private static IEnumerable<ClaimRepair> ShorterWindows(ClaimSentence sentence)
    {
        if (sentence.Window is not { } window)
        {
            return [];
        }

        return Enumerable
            .Range(1, window.Count - 1)
            .SelectMany(shorter =>
                Enumerable
                    .Range(0, shorter + 1)
                    .Select(from => new Neck.FretRange(window.First + from, window.Last - shorter + from))
            )
            .Select(range => Repair(sentence with { Window = range }, $"on frets {range.First} to {range.Last}"));
    }

    private static IEnumerable<ClaimRepair> OtherNumbers(ClaimSentence sentence) =>
        ClaimChanges.Of(sentence.Claim).Select(change => Repair(sentence with { Claim = change.Claim }, change.Words));

    private static IEnumerable<ClaimRepair> FewerPlaces(ClaimSentence sentence) =>
        sentence.Places switch
        {
            PlaceScope.Listed { IsPalindromic: false } listed =>
            [
                Repair(
                    sentence with
                    {
                        Places = listed with { IsPalindromic = true },
                    },
                    $"on every palindromic {(listed.IsFourString ? "four-string " : "")}listed string set"
                ),
            ],
            PlaceScope.Tunings { IsPalindromic: false } tunings =>
            [
                Repair(
                    sentence with
                    {
                        Places = new PlaceScope.Tunings(tunings.Strings, true, tunings.Least, tunings.Most),
                    },
                    $"on every {tunings.Strings} string tuning that is palindromic"
                ),
            ],
            _ => [],
        };

    private static ClaimRepair Repair(ClaimSentence sentence, string words, string start = "It holds") =>
        new(sentence, words, $"{start} if you write \"{words}\".");
}
