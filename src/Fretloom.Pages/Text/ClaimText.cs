using System.Text;
using Fretloom.Claims;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Statements;
using Fretloom.Theory;

namespace Fretloom.Pages.Text;

/// <summary>Writes what came of a claim as text for a terminal: sentence, verdict, counterexample with its neck, repair, where else it holds.</summary>
public static class ClaimText
{
    /// <summary>The claim and everything that was found out about it.</summary>
    /// <param name="verdict">What came of it.</param>
    /// <param name="width">Characters on a line, at least <see cref="PlainText.SmallestWidth"/>.</param>
    /// <returns>Lines that end with \n.</returns>
    public static string Write(ClaimVerdict verdict, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, PlainText.SmallestWidth);
        var text = new StringBuilder();
        foreach (var line in Parts(verdict, width).SelectMany((part, at) => at == 0 ? part : part.Prepend("")))
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<IEnumerable<string>> Parts(ClaimVerdict verdict, int width)
    {
        yield return Wrapping.Lines(Accidentals.Pretty(verdict.Sentence.ToString()), width);
        yield return Lines(
            StatementWords.Summary(verdict) + ".",
            verdict.DistinctWords is { } words ? words + "." : null,
            StatementWords.NotApplicable(verdict),
            StatementWords.FailingKeys(verdict),
            StatementWords.Notes(verdict)
        );
        if (StatementWords.Why(verdict) is { } why)
        {
            yield return Lines(why);
        }

        if (StatementPicture.ExhibitOf(verdict) is { } exhibit)
        {
            yield return new NeckText(NeckContent.Of(exhibit)).Lines(width);
        }

        if (StatementWords.Note(verdict) is { } note)
        {
            yield return Lines(note);
        }

        if (StatementWords.Repair(verdict) is { } repair)
        {
            yield return Lines(repair);
        }

        var elsewhere = Lines([.. StatementWords.Elsewhere(verdict)]).ToList();
        if (elsewhere.Count > 0)
        {
            yield return elsewhere;
        }

        IEnumerable<string> Lines(params string?[] sentences) =>
            sentences.Where(sentence => sentence is not null).SelectMany(sentence => Wrapping.Lines(sentence!, width));
    }
}
