using System.Globalization;
using Fretloom.Claims;
using Fretloom.Pages.Pictures;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Pages.Statements;

/// <summary>What is said of a claim beside its verdict.</summary>
internal static class StatementWords
{
    private const int MostSetsNamed = 6;

    /// <summary>The verdict with its counts, as a sentence without a full stop.</summary>
    public static string Summary(ClaimVerdict verdict) => Accidentals.Pretty(verdict.Summary);

    /// <summary>The keys in which it fails: <c>It fails in C, F and B♭ major.</c> Null when it fails in none, or in all that it speaks of.</summary>
    public static string? FailingKeys(ClaimVerdict verdict)
    {
        var failing = verdict.ByKey.Where(result => result.Failing > 0).Select(result => result.Key).ToList();
        if (failing.Count == 0 || failing.Count == verdict.ByKey.Count)
        {
            return null;
        }

        var kinds = failing
            .GroupBy(key => key.Kind)
            .Select(kind =>
                kind.Count() == verdict.ByKey.Count(result => result.Key.Kind == kind.Key)
                    ? $"every {ClaimPrinter.Print(kind.Key)} key"
                    : $"{Wording.List(kind.Select(key => Accidentals.Pretty(key.Tonic.ToString())))} {ClaimPrinter.Print(kind.Key)}"
            );
        return $"It fails in {string.Join("; in ", kinds)}.";
    }

    /// <summary>What is to be known of chords named by numeral; null when there is nothing.</summary>
    public static string? Notes(ClaimVerdict verdict) =>
        verdict.Notes.Count == 0 ? null : Accidentals.Pretty(string.Join(' ', verdict.Notes));

    /// <summary>Cases that count for nothing, as a sentence; null when there are none.</summary>
    public static string? NotApplicable(ClaimVerdict verdict) =>
        verdict.NotApplicable == 0
            ? null
            : string.Create(
                CultureInfo.InvariantCulture,
                $"In {verdict.NotApplicable:N0}{(verdict.Cases == 0 ? "" : " further")} {(verdict.NotApplicable == 1 ? "case" : "cases")} it does not apply."
            );

    /// <summary>The first counterexample in words; null when there is none.</summary>
    public static string? Why(ClaimVerdict verdict) =>
        verdict.Failures is [var first, ..] ? Accidentals.Pretty(first.Why) : null;

    /// <summary>How its frets are counted, in sentences; null where that goes without saying.</summary>
    public static string? Note(ClaimVerdict verdict) => verdict.CountingNote;

    /// <summary>What would make it true; null when that is not known.</summary>
    public static string? Repair(ClaimVerdict verdict) =>
        verdict.Repair is { } repair ? Quoted(Accidentals.Pretty(repair.Message)) : null;

    /// <summary>Where else it is true, and the nearest place where it is not, sentence by sentence.</summary>
    public static IEnumerable<string> Elsewhere(ClaimVerdict verdict)
    {
        if (verdict.Elsewhere is not { } elsewhere)
        {
            yield break;
        }

        if (elsewhere.Kinds.Count > 0)
        {
            var does = verdict.Verdict == Verdict.Fails ? "It does hold in" : "Here it holds in";
            yield return $"{does} every key of {(elsewhere.Kinds.Count == 1 ? "this kind" : "these kinds")}: {Wording.List(elsewhere.Kinds.Select(ClaimPrinter.Print))}.";
        }

        if (elsewhere.ListedSetsAsked > 0)
        {
            var sets = elsewhere.ListedSets;
            var more = sets.Count > MostSetsNamed ? $" and {Wording.Number(sets.Count - MostSetsNamed)} more" : "";
            var named = more.Length > 0 ? string.Join(", ", sets.Take(MostSetsNamed)) + more : Wording.List(sets);
            yield return $"Of {Wording.Number(elsewhere.ListedSetsAsked)} listed string sets it holds on "
                + (sets.Count == 0 ? "none." : $"{Wording.Number(sets.Count)}: {named}.");
        }

        if (elsewhere.NearestFailure is { } nearest)
        {
            yield return $"Nearest place where it does not hold: {Inner(Accidentals.Pretty(nearest.Why))}";
            if (nearest.CountingNote is { } note && note != verdict.CountingNote)
            {
                yield return note;
            }
        }
    }

    // Straight quotation marks come in pairs.
    private static string Quoted(string text) =>
        string.Concat(
            text.Split('"')
                .Select(
                    (part, at) =>
                        at == 0 ? part
                        : at % 2 == 1 ? $"“{part}"
                        : $"”{part}"
                )
        );

    // A counterexample begins with its key and place: "In C major, on guitar strings 4-1, ...".
    private static string Inner(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];
}
