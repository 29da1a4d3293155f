using System.Globalization;
using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Statements;
using Fretloom.Sentences;

namespace Fretloom.Pages.Text;

/// <summary>Writes discovered statements as text for a terminal: landmarks, then laws, numbered through, each with what is known of it.</summary>
public static class DiscoveryText
{
    private const int Indent = 4;

    /// <summary>Both lists.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="width">Characters on a line, at least <see cref="PlainText.SmallestWidth"/>.</param>
    /// <returns>Lines that end with \n.</returns>
    public static string Write(DiscoveryResult result, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, PlainText.SmallestWidth);
        return Joined(Lines(result, width));
    }

    /// <summary>One line with its necks: where it is true, and the nearest place where it is not.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="number">The line, counted from 1 through landmarks and laws.</param>
    /// <param name="width">Characters on a line, at least <see cref="PlainText.SmallestWidth"/>.</param>
    /// <returns>Lines that end with \n.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such line.</exception>
    public static string WritePictures(DiscoveryResult result, int number, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, PlainText.SmallestWidth);
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, result.Landmarks.Count + result.Laws.Count);
        var claim = result.Landmarks.Concat(result.Laws).ElementAt(number - 1);
        return Joined(
            Pictures(claim, width)
                .Aggregate(
                    Item(number, claim, DiscoveryWords.Notes(claim), width),
                    (all, part) => [.. all, "", .. part]
                )
        );
    }

    private static IEnumerable<IEnumerable<string>> Pictures(DiscoveredClaim claim, int width)
    {
        var exhibits = DiscoveredPictures.Of(claim);
        if (exhibits.Count > 0)
        {
            yield return Wrapping.Lines(DiscoveredPictures.Heading(exhibits) + ":", width);
        }

        foreach (var part in exhibits.SelectMany(exhibit => Necks(exhibit, width)))
        {
            yield return part;
        }

        if (
            exhibits.Select(exhibit => HandNotes.Of(exhibit).General).FirstOrDefault(words => words is not null) is
            { } caution
        )
        {
            yield return Wrapping.Lines(caution, width);
        }

        if (claim.NearestFailure is { } failure)
        {
            yield return Wrapping
                .Lines(DiscoveredPictures.Heading(failure) + ".", width)
                .Concat(Wrapping.Lines(DiscoveredPictures.Why(failure), width));
            foreach (var part in DiscoveredPictures.Of(failure).SelectMany(exhibit => Necks(exhibit, width)))
            {
                yield return part;
            }
        }
    }

    /// <summary>The neck of an exhibit, or of each of its shapes.</summary>
    private static IEnumerable<IEnumerable<string>> Necks(Exhibit exhibit, int width) =>
        PicturePlan.HasShapes(exhibit)
            ? (exhibit.Shapes ?? []).Select(shape => NeckText.OfShape(exhibit, shape, width))
            : [new NeckText(NeckContent.Of(exhibit)).Lines(width)];

    private static string Joined(IEnumerable<string> lines) => string.Concat(lines.Select(line => line + "\n"));

    private static IEnumerable<string> Lines(DiscoveryResult result, int width) =>
        Wrapping
            .Lines($"True {result.Scope}. {DiscoveryWords.Counts(result)}", width)
            .Concat(List(DiscoveryWords.LandmarksTitle, result.Landmarks, 1, width))
            .Concat(List(DiscoveryWords.LawsTitle, result.Laws, result.Landmarks.Count + 1, width));

    private static IEnumerable<string> List(string title, ValueList<DiscoveredClaim> claims, int first, int width) =>
        claims
            .Index()
            .SelectMany(one => Item(first + one.Index, one.Item, DiscoveryWords.AllNotes(one.Item), width))
            .DefaultIfEmpty("None was found.")
            .Prepend(title)
            .Prepend("");

    private static IEnumerable<string> Item(int number, DiscoveredClaim claim, IEnumerable<string> notes, int width)
    {
        var first = $"{number.ToString(CultureInfo.InvariantCulture)}.".PadRight(Indent);
        return Indented(claim.Sentence.ToString(), width)
            .Select((line, at) => at == 0 ? first + line[Indent..] : line)
            .Concat(notes.SelectMany(note => Indented(note, width)));
    }

    private static IEnumerable<string> Indented(string text, int width) =>
        Wrapping.Lines(text, width - Indent).Select(line => new string(' ', Indent) + line);
}

/// <summary>What is told of discovered statements, in text and on the page.</summary>
internal static class DiscoveryWords
{
    public const string LandmarksTitle = "Landmarks here";
    public const string LawsTitle = "Laws";

    private const int MostAlso = 3;

    /// <summary>How many statements were tried.</summary>
    public static string Counts(DiscoveryResult result) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Of {result.Tried:N0} statements tried, {result.True:N0} are true here; each was held against {result.Tunings:N0} tunings."
        );

    /// <summary>The share of other cases in which a statement is true.</summary>
    public static string Rarity(DiscoveredClaim claim)
    {
        var percent = 100 * claim.Elsewhere;
        return percent < 0.1
            ? "true next to nowhere else"
            : string.Create(CultureInfo.InvariantCulture, $"true in {percent:0.#} % of all tunings and keys");
    }

    /// <summary>The lines below a statement whose nearest failure and equals are told apart.</summary>
    public static IEnumerable<string> Notes(DiscoveredClaim claim)
    {
        if (claim.Summary is { } summary)
        {
            yield return $"In short: {summary}.";
        }

        if (claim.Converse is { } converse)
        {
            yield return $"And the other way round: {converse}";
        }

        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"Checked in {claim.Cases:N0} cases; {Rarity(claim)}; score {claim.Score:0.0}."
        );
    }

    /// <summary>The lines below a statement, with its nearest failure and some of its equals.</summary>
    public static IEnumerable<string> AllNotes(DiscoveredClaim claim)
    {
        foreach (var note in Notes(claim))
        {
            yield return note;
        }

        if (claim.NearestFailure is { } near)
        {
            yield return $"Nearest failure: {near.Place}, in {near.Kind}.";
        }

        if (claim.AlsoSays.Count > 0)
        {
            var some = claim.AlsoSays.Take(MostAlso).Select(other => ClaimPrinter.Print(Bare(other)));
            var rest = claim.AlsoSays.Count - MostAlso;
            var more = rest > 0 ? string.Create(CultureInfo.InvariantCulture, $"; and {rest} more") : "";
            yield return $"The same as: {string.Join("; ", some)}{more}.";
        }
    }

    /// <summary>What is claimed, without the condition that stands in the line above.</summary>
    private static Claim Bare(ClaimSentence sentence) =>
        sentence.Claim is Claim.If condition ? condition.Then : sentence.Claim;
}
