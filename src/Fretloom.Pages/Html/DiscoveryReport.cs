using System.Globalization;
using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Statements;
using Fretloom.Pages.Text;
using Fretloom.Theory;

namespace Fretloom.Pages.Html;

/// <summary>
/// Discovered statements as one HTML file that needs nothing else and has no script. Light or dark as the reader wishes. Every line opens its
/// necks; those that are open are printed, on A4 or Letter as the printer has it.
/// </summary>
public sealed class DiscoveryReport
{
    // A telephone's screen less the margins of a list: 290 pixels of 96 to the inch.
    private const double NarrowWidth = 217;

    private readonly HtmlText _html = new();
    private readonly PictureHtml _drawings;

    private DiscoveryReport() => _drawings = new PictureHtml(_html);

    /// <summary>Writes the report.</summary>
    /// <param name="result">What was found.</param>
    /// <returns>The file. The same result gives the same text.</returns>
    public static string Write(DiscoveryResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var report = new DiscoveryReport();
        report.Page(result);
        return report._html.ToString();
    }

    private void Page(DiscoveryResult result)
    {
        var title = Accidentals.Pretty($"True {result.Scope}");
        _html.Raw("<!doctype html>\n").Open("html", ("lang", "en")).Line();
        PageHead.Write(_html, title, "");
        _html.Open("body").Line();
        _html.Element("a", "Skip to the statements", ("class", "skip"), ("href", "#found")).Line();
        _html.Open("main", ("id", "found"), ("tabindex", "-1")).Open("article", ("class", "found")).Line();
        _html.Open("header").Sentence("h1", title).Element("p", DiscoveryWords.Counts(result), ("class", "byline"));
        if (DiscoveryWords.Counting(result) is { } counting)
        {
            _html.Element("p", counting, ("class", "byline"));
        }

        _html.Element("p", "Open a line to see it on the neck. What is open is printed.", ("class", "byline"));
        _html.Close().Line();
        List(
            DiscoveryWords.LandmarksTitle,
            result.Landmarks.Count == 0 ? DiscoveryWords.NoLandmarks : DiscoveryWords.AboutLandmarks,
            result.Landmarks,
            1
        );
        List(
            DiscoveryWords.LawsTitle,
            result.Laws.Count == 0 ? DiscoveryWords.NoLaws(result) : DiscoveryWords.AboutLaws,
            result.Laws,
            result.Landmarks.Count + 1
        );
        _html.Close().Close().Line();
        _html.Open("footer").Element("p", "Made with Fretloom").Close().Line();
        _html.Close().Line().Close().Line();
    }

    /// <summary>The general words of caution, where a shape that is wide is seen.</summary>
    private void Caution(ValueList<Exhibit> exhibits)
    {
        if (
            exhibits.Select(exhibit => HandNotes.Of(exhibit).General).FirstOrDefault(words => words is not null) is
            { } caution
        )
        {
            _html.Open("div", ("class", "caution"), ("role", "note"));
            _html.Open("p").Element("strong", HandNotes.Heading).Close();
            _html.Element("p", caution).Close().Line();
        }
    }

    private void List(string title, string about, ValueList<DiscoveredClaim> claims, int first)
    {
        _html.Open("section").Element("h2", title).Element("p", about).Line();
        if (claims.Count == 0)
        {
            _html.Close().Line();
            return;
        }

        _html.Open("ol", ("start", Number(first))).Line();
        foreach (var (at, claim) in claims.Index())
        {
            Line(claim, $"line-{Number(first + at)}");
        }

        _html.Close().Close().Line();
    }

    private void Line(DiscoveredClaim claim, string id)
    {
        _html
            .Open("li", ("id", id))
            .Sentence("p", Accidentals.Pretty(DiscoveryWords.Headline(claim)), ("class", "claim"));
        foreach (var note in DiscoveryWords.Notes(claim))
        {
            _html.Element("p", Accidentals.Pretty(note), ("class", "note"));
        }

        _html.Line();
        var exhibits = DiscoveredPictures.Of(claim);
        if (exhibits.Count > 0)
        {
            Necks(DiscoveredPictures.Heading(exhibits), null, exhibits, $"{id}-neck");
        }

        if (claim.NearestFailure is { } failure)
        {
            Necks(
                DiscoveredPictures.Heading(failure),
                DiscoveredPictures.Why(failure),
                DiscoveredPictures.Of(failure),
                $"{id}-failure"
            );
        }

        AlsoSays(claim.AlsoSays);
        _html.Close().Line();
    }

    private void Necks(string heading, string? words, ValueList<Exhibit> exhibits, string id)
    {
        _html.Open("details", ("class", "necks")).Element("summary", heading).Line();
        if (words is not null)
        {
            _html.Sentence("p", words, ("class", "why")).Line();
        }

        var pictures = Drawn(exhibits, PicturePlan.PageWidth);
        Figures(pictures, "wide", id);
        Figures(Drawn(exhibits, NarrowWidth), "narrow", id + "-narrow");
        foreach (var note in exhibits.Select(exhibit => exhibit.CountingNote).OfType<string>().Distinct())
        {
            _html.Element("p", note, ("class", "note")).Line();
        }

        Caution(exhibits);
        _drawings.WriteWords(pictures);
        _html.Close().Line();
    }

    private void Figures(ValueList<Picture> pictures, string size, string id)
    {
        foreach (var (at, picture) in pictures.Index())
        {
            _html.Open("figure", ("class", size), ("style", PictureHtml.Drawn(picture.Drawing.Width))).Line();
            _drawings.Write(picture, $"{id}-{Number(at + 1)}");
            _html.Close().Line();
        }
    }

    /// <summary>The pictures of one heading: a sign is explained where it first occurs among them.</summary>
    private static ValueList<Picture> Drawn(ValueList<Exhibit> exhibits, double width)
    {
        var explained = new ExplainedSigns();
        return exhibits.SelectMany(exhibit => PicturePlan.For(exhibit, width, null, explained)).ToValueList();
    }

    private void AlsoSays(ValueList<ClaimSentence> others)
    {
        if (others.Count == 0)
        {
            return;
        }

        _html.Open("details").Element("summary", $"True in exactly the same cases: {Number(others.Count)}").Open("ul");
        foreach (var other in others)
        {
            _html.Sentence("li", Accidentals.Pretty(other.ToString()));
        }

        _html.Close().Close();
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
