using Fretloom.Claims;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Statements;
using Fretloom.Theory;

namespace Fretloom.Pages.Html;

/// <summary>A claim that was checked, as it stands in a handout, to be shown elsewhere.</summary>
public static class StatementFragment
{
    // Points: beside a neck, where there is no room for one beside the words.
    private const double Width = 220;

    /// <summary>Writes the claim: an element that the handout's style sheet knows.</summary>
    /// <param name="verdict">What came of it.</param>
    /// <param name="key">The key that the row of keys begins with.</param>
    public static string Of(ClaimVerdict verdict, Key key)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        var html = new HtmlText();
        var statement = new Block.Statement(1, 1, verdict, key, new ClaimOptions());
        var neck = StatementPicture.Of(verdict, Width, new ExplainedSigns());
        new StatementHtml(html, new PictureHtml(html), null).Write(
            statement,
            new StatementDrawing(neck?.Picture, IsAside: false)
        );
        return html.ToString();
    }
}
