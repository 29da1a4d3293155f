using Fretloom.Claims;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Statements;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>Writes a claim as Typst source.</summary>
internal static class StatementTypst
{
    /// <summary>The statement strip.</summary>
    /// <param name="statement">The claim.</param>
    /// <param name="neck">The first counterexample, and whether it stands beside the claim; null for none.</param>
    public static TypstMarkup Markup(Block.Statement statement, (HandoutPicture Picture, bool IsAside)? neck)
    {
        var verdict = statement.Verdict;
        var why = TypstMarkup.Text(StatementWords.Why(verdict) ?? "");
        return new Statement(
            MarkOf(verdict.Verdict),
            TypstMarkup.Text(Accidentals.Pretty(verdict.Sentence.ToString())),
            TypstMarkup.Text(StatementWords.Summary(verdict))
        )
        {
            Title = TypstMarkup.Text(statement.Options.Title ?? ""),
            Caption = TypstMarkup.Text(statement.Options.Caption ?? ""),
            Rows =
            [
                .. KeyRow
                    .Of(verdict, statement.Key)
                    .Select(row => new StatementKeys(
                        TypstMarkup.Text(row.Kind),
                        [.. row.Ticks.Select(tick => (TypstMarkup.Text(tick.Tonic), MarkOf(tick.Verdict)))]
                    )),
            ],
            Details = Details(verdict, neck is { IsAside: true } ? TypstMarkup.Empty : why),
            Aside = neck is (var beside, true) ? (beside, why) : null,
            Below = neck is (var below, false) ? below : null,
        }.ToMarkup();
    }

    private static TypstMarkup Details(ClaimVerdict verdict, TypstMarkup why)
    {
        TypstMarkup[] lines =
        [
            TypstMarkup.Text(StatementWords.FailingKeys(verdict) ?? ""),
            why,
            TypstMarkup.Text(StatementWords.Note(verdict) ?? ""),
            TypstMarkup.Text(StatementWords.Repair(verdict) ?? ""),
            TypstMarkup.Text(StatementWords.Notes(verdict) ?? ""),
            TypstMarkup.Text(verdict.DistinctWords is { } words ? words + "." : ""),
        ];
        return TypstMarkup.Join(
            lines.Where(line => !line.IsEmpty).Select((line, at) => at == 0 ? line : TypstMarkup.LineBreak + line)
        );
    }

    private static StatementMark MarkOf(Verdict verdict) =>
        verdict switch
        {
            Verdict.Holds => StatementMark.Holds,
            Verdict.Fails => StatementMark.Fails,
            _ => StatementMark.Open,
        };
}
