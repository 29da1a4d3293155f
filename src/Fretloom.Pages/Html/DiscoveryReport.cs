using System.Globalization;
using Fretloom.Claims;
using Fretloom.Pages.Text;

namespace Fretloom.Pages.Html;

/// <summary>Discovered statements as one HTML file that needs nothing else and has no script. Light or dark as the reader wishes; prints on A4.</summary>
public static class DiscoveryReport
{
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'";

    /// <summary>Writes the report.</summary>
    /// <param name="result">What was found.</param>
    /// <returns>The file. The same result gives the same text.</returns>
    public static string Write(DiscoveryResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var title = $"True {result.Scope}";
        var html = new HtmlText().Raw("<!doctype html>\n");
        html.Open("html", ("lang", "en")).Line();
        html.Open("head").Line();
        html.Empty("meta", ("charset", "utf-8")).Line();
        html.Empty("meta", ("http-equiv", "Content-Security-Policy"), ("content", Policy)).Line();
        html.Empty("meta", ("name", "viewport"), ("content", "width=device-width, initial-scale=1")).Line();
        html.Empty("meta", ("name", "color-scheme"), ("content", "light dark")).Line();
        html.Element("title", title).Line();
        html.Open("style").Raw(EmbeddedText.Read("handout.css")).Raw("@page { size: A4; }\n").Close().Line();
        html.Close().Line();
        html.Open("body").Line().Open("main").Open("article").Line();
        html.Open("header").Element("h1", title).Element("p", DiscoveryWords.Counts(result), ("class", "byline"));
        html.Close().Line();
        List(html, DiscoveryWords.LandmarksTitle, "What is true here and rare elsewhere.", result.Landmarks);
        List(html, DiscoveryWords.LawsTitle, "What is true of every tuning that meets a condition.", result.Laws);
        html.Close().Close().Line();
        html.Open("footer").Element("p", "Made with Fretloom").Close().Line();
        return html.Close().Line().Close().Line().ToString();
    }

    private static void List(HtmlText html, string title, string about, ValueList<DiscoveredClaim> claims)
    {
        html.Open("section").Element("h2", title).Element("p", about).Line();
        if (claims.Count == 0)
        {
            html.Element("p", "None was found.").Close().Line();
            return;
        }

        html.Open("ol").Line();
        foreach (var claim in claims)
        {
            html.Open("li").Element("p", claim.Sentence.ToString());
            foreach (var note in DiscoveryWords.Notes(claim, mostAlso: 0))
            {
                html.Element("p", note, ("class", "note"));
            }

            AlsoSays(html, claim.AlsoSays);
            html.Close().Line();
        }

        html.Close().Close().Line();
    }

    private static void AlsoSays(HtmlText html, ValueList<ClaimSentence> others)
    {
        if (others.Count == 0)
        {
            return;
        }

        var count = others.Count.ToString(CultureInfo.InvariantCulture);
        html.Open("details").Element("summary", $"True in exactly the same cases: {count}").Open("ul");
        foreach (var other in others)
        {
            html.Element("li", other.ToString());
        }

        html.Close().Close();
    }
}
