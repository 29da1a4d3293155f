using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>Changes of the kinds of key that a sentence speaks of.</summary>
internal static class KindsRepairer
{
    private static readonly KeyScope EveryMinor = new KeyScope.EveryMinorKey();

    /// <summary>Sentences that leave out the kinds in which it fails, those that leave out least first.</summary>
    public static IEnumerable<ClaimRepair> FewerKinds(Survey survey)
    {
        var kinds = survey.Kinds;
        var failing = kinds.Where(kind => survey.FailingIn(kind) > 0).ToList();
        var left = kinds.Except(failing).ToList();
        if (failing.Count == 0 || left.Count == 0)
        {
            yield break;
        }

        var sentence = survey.Sentence;
        var alone = left.Where(survey.HoldsIn).Select(kind => new KeyScope.EveryOf(kind)).ToList();
        var where =
            failing.Count <= left.Count
                ? $"It fails in {Names(failing)} only; it holds if you"
                : $"It holds in {Names(left)} only:";
        if (sentence.Keys is KeyScope.EveryKey && failing is [var only] && only == ScaleKind.Major)
        {
            yield return Write(EveryMinor);
        }

        // What is said of the kind of key alone would say nothing any more.
        if (left.Count > 1 && sentence.Claim is not Claim.KeyIs)
        {
            var condition = Condition(failing, left);
            var words = $"if {ClaimPrinter.Print(condition)}, then";
            var or = alone.Count > 0 ? $", or write \"{ClaimPrinter.Print(alone[0])}\"" : "";
            yield return new ClaimRepair(
                sentence with
                {
                    Claim = new Claim.If(condition, sentence.Claim),
                },
                words,
                $"{where} put \"{words}\" before the claim{or}."
            );
        }

        foreach (var kind in alone)
        {
            yield return Write(kind);
        }

        ClaimRepair Write(KeyScope keys) => Of(sentence, keys, $"{where} write");
    }

    /// <summary>The same sentence of keys of another kind, for one that is false in every kind it speaks of.</summary>
    public static IEnumerable<ClaimRepair> OtherKinds(Survey survey) =>
        survey.Sentence.Keys is not KeyScope.EveryOf every
            ? []
            : new[] { ScaleKind.Major, ScaleKind.NaturalMinor, ScaleKind.HarmonicMinor, ScaleKind.MelodicMinor }
                .Where(kind => kind != every.Kind)
                .Select(kind =>
                    Of(survey.Sentence, new KeyScope.EveryOf(kind), "It is true of other keys: it holds if you write")
                );

    private static ClaimRepair Of(ClaimSentence sentence, KeyScope keys, string message)
    {
        var words = ClaimPrinter.Print(keys);
        return new ClaimRepair(sentence with { Keys = keys }, words, $"{message} \"{words}\".");
    }

    /// <summary>The kinds named that are fewer: those left out, or those left.</summary>
    private static Claim Condition(List<ScaleKind> failing, List<ScaleKind> left)
    {
        var isNot = failing.Count <= left.Count;
        var parts = (isNot ? failing : left).Select(kind => (Claim)new Claim.KeyIs(kind, isNot)).ToValueList();
        return parts.Count == 1 ? parts[0]
            : isNot ? new Claim.And(parts)
            : new Claim.Or(parts);
    }

    private static string Names(IEnumerable<ScaleKind> kinds) => ClaimWords.List(kinds.Select(ClaimWords.Of));
}
