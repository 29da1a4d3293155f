using Fretloom.Claims;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Pages.Statements;

/// <summary>The keys of one kind as ticks: what a claim comes to in each.</summary>
/// <param name="Kind">The kind of the keys, <c>harmonic minor</c>; empty where there is but one kind.</param>
/// <param name="Ticks">The tonic of each key with Unicode accidentals, and what the claim comes to in it.</param>
internal sealed record KeyRow(string Kind, ValueList<(string Tonic, Verdict Verdict)> Ticks)
{
    private const int Fifths = 12;

    /// <summary>The rows of a claim, a row for each kind of key, in fifths.</summary>
    /// <param name="verdict">What came of the claim.</param>
    /// <param name="first">The key on whose tonic each row begins.</param>
    /// <returns>None for a claim that speaks of a single key.</returns>
    public static ValueList<KeyRow> Of(ClaimVerdict verdict, Key first)
    {
        if (verdict.ByKey.Count < 2)
        {
            return [];
        }

        var kinds = verdict.ByKey.GroupBy(result => result.Key.Kind).ToList();
        return kinds
            .Select(kind => new KeyRow(
                kinds.Count == 1 ? "" : ClaimPrinter.Print(kind.Key),
                kind.OrderBy(result => FromFirst(result.Key, first))
                    .Select(result => (Accidentals.Pretty(result.Key.Tonic.ToString()), result.Verdict))
                    .ToValueList()
            ))
            .ToValueList();
    }

    private static int FromFirst(Key key, Key first) =>
        ((key.Tonic.FifthsFromC - first.Tonic.FifthsFromC) % Fifths + Fifths) % Fifths;
}
