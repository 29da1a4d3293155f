using System.Globalization;
using Fretloom.Claims;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Statements;
using Fretloom.Theory;

namespace Fretloom.Pages.Html;

/// <summary>Writes claims as HTML: tick, sentence, verdict, a tick for each key, and the first counterexample.</summary>
internal sealed class StatementHtml(HtmlText html, PictureHtml drawings, KeptHtml? kept)
{
    /// <summary>Writes a claim.</summary>
    /// <param name="statement">The claim.</param>
    /// <param name="neck">Its counterexample.</param>
    public void Write(Block.Statement statement, StatementDrawing neck)
    {
        if (kept is null)
        {
            WriteAnew(statement, neck);
        }
        else
        {
            var said = (statement.Number, statement.Key, statement.Options.Title, statement.Options.Caption);
            kept.Write(html, neck, said, () => WriteAnew(statement, neck));
        }
    }

    private void WriteAnew(Block.Statement statement, StatementDrawing neck)
    {
        var (verdict, id) = (
            statement.Verdict,
            string.Create(CultureInfo.InvariantCulture, $"claim-{statement.Number}")
        );
        var kind = neck.IsAside ? "statement beside" : "statement";
        html.Open("div", ("class", kind), ("role", "group"), ("aria-labelledby", id)).Line();
        html.Open("span", ("class", $"tick {ClassOf(verdict.Verdict)}"), ("aria-hidden", "true")).Close().Line();
        html.Open("div", ("class", "said")).Line();
        Optional(statement.Options.Title, "figure-title");
        Optional(statement.Options.Caption, "claim-caption");
        html.Sentence("p", Accidentals.Pretty(verdict.Sentence.ToString()), ("class", "claim"), ("id", id)).Line();
        html.Element("p", StatementWords.Summary(verdict), ("class", $"verdict {ClassOf(verdict.Verdict)}")).Line();
        foreach (var row in KeyRow.Of(verdict, statement.Key))
        {
            Keys(row);
        }

        Optional(StatementWords.FailingKeys(verdict), "note");
        Optional(StatementWords.Why(verdict), "why");
        Optional(StatementWords.Note(verdict), "note");
        Optional(StatementWords.Repair(verdict), "note");
        Optional(StatementWords.Notes(verdict), "note");
        Optional(verdict.DistinctWords is { } words ? words + "." : null, "note");
        html.Close().Line();
        if (neck.Picture is { } picture)
        {
            Neck(picture, id);
        }

        html.Close();
    }

    private static string ClassOf(Verdict verdict) =>
        verdict switch
        {
            Verdict.Holds => "holds",
            Verdict.Fails => "fails",
            _ => "open",
        };

    private static string Words(Verdict verdict) =>
        verdict switch
        {
            Verdict.Holds => "holds",
            Verdict.Fails => "fails",
            _ => "nothing to test",
        };

    private void Keys(KeyRow row)
    {
        if (row.Kind.Length > 0)
        {
            html.Element("p", row.Kind, ("class", "keys-of")).Line();
        }

        var label = row.Kind.Length > 0 ? $"{row.Kind} keys in fifths" : "Keys in fifths";
        html.Open("ul", ("class", "keys"), ("aria-label", label)).Line();
        foreach (var (tonic, verdict) in row.Ticks)
        {
            html.Open("li", ("class", ClassOf(verdict)))
                .Open("span", ("class", "key-tick"), ("aria-hidden", "true"))
                .Close()
                .Text(tonic)
                .Element("span", " " + Words(verdict), ("class", "unseen"))
                .Close()
                .Line();
        }

        html.Close().Line();
    }

    private void Neck(Picture picture, string id)
    {
        html.Open("figure", ("class", "counterexample"), ("style", PictureHtml.Drawn(picture.Drawing.Width))).Line();
        drawings.Write(picture, id + "-neck");
        drawings.WriteWords([picture]);
        html.Close().Line();
    }

    private void Optional(string? text, string kind)
    {
        if (!string.IsNullOrEmpty(text))
        {
            html.Element("p", text, ("class", kind)).Line();
        }
    }
}
