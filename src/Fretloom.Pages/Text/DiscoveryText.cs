using System.Globalization;
using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Neck;
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

        if (exhibits.Select(exhibit => exhibit.CountingNote).FirstOrDefault(note => note is not null) is { } counting)
        {
            yield return Wrapping.Lines(counting, width);
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
            .Lines(
                string.Join(
                    ' ',
                    (
                        (string?[])
                            [$"True {result.Scope}.", DiscoveryWords.Counts(result), DiscoveryWords.Counting(result)]
                    ).OfType<string>()
                ),
                width
            )
            .Concat(List(DiscoveryWords.LandmarksTitle, result.Landmarks, 1, DiscoveryWords.NoLandmarks, width))
            .Concat(
                List(
                    DiscoveryWords.LawsTitle,
                    result.Laws,
                    result.Landmarks.Count + 1,
                    DiscoveryWords.NoLaws(result),
                    width
                )
            );

    private static IEnumerable<string> List(
        string title,
        ValueList<DiscoveredClaim> claims,
        int first,
        string otherwise,
        int width
    ) =>
        (
            claims.Count == 0
                ? Wrapping.Lines(otherwise, width)
                : claims
                    .Index()
                    .SelectMany(one => Item(first + one.Index, one.Item, DiscoveryWords.AllNotes(one.Item), width))
        )
            .Prepend(title)
            .Prepend("");

    private static IEnumerable<string> Item(int number, DiscoveredClaim claim, IEnumerable<string> notes, int width)
    {
        var first = $"{number.ToString(CultureInfo.InvariantCulture)}.".PadRight(Indent);
        return Indented(DiscoveryWords.Headline(claim), width)
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

    /// <summary>What the landmarks are.</summary>
    public const string AboutLandmarks = "What is true here and rare elsewhere.";

    /// <summary>What the laws are.</summary>
    public const string AboutLaws = "What is true of every tuning that meets a condition.";

    private const int MostAlso = 3;

    /// <summary>How many statements were tried.</summary>
    public static string Counts(DiscoveryResult result) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Of {result.Tried:N0} statements, {result.True:N0} are true here. To see which of them are special, each was tried on {result.Tunings:N0} tunings of as many strings."
        );

    /// <summary>How frets are counted where the neck counts them otherwise; null elsewhere.</summary>
    public static string? Counting(DiscoveryResult result) =>
        ShortStrings.Words(result.Scope.Instrument, result.Scope.ChosenStrings);

    /// <summary>Why a list is empty.</summary>
    public static string NoLaws(DiscoveryResult result) => $"None. {result.WhyNoLaws}";

    /// <summary>Why a list is empty.</summary>
    public const string NoLandmarks = "None: nothing was found that is true here and rare elsewhere.";

    /// <summary>The statement in few words where it says several things, else the statement itself.</summary>
    public static string Headline(DiscoveredClaim claim)
    {
        var whole = claim.Sentence.ToString();
        var said = ClaimPrinter.Print(Bare(claim.Sentence));
        return claim.Summary is { } summary ? whole.Replace(said, summary, StringComparison.Ordinal) : whole;
    }

    /// <summary>In how many cases a statement was checked, and how often it is true elsewhere.</summary>
    public static string Rarity(DiscoveredClaim claim)
    {
        var hundredths = 100 * claim.Elsewhere;
        var often =
            hundredths < 1 ? "in fewer than 1 case of 100"
            : hundredths > 99 ? "nearly everywhere"
            : string.Create(CultureInfo.InvariantCulture, $"in about {hundredths:0} of 100 cases");
        var cases = claim.Sentence.Places is PlaceScope.On ? "keys" : "cases, each a tuning and a key";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Checked in all {claim.Cases:N0} {cases}. On other tunings, or in other kinds of key, it is true {often}."
        );
    }

    /// <summary>The lines below a statement whose nearest failure and equals are told apart.</summary>
    public static IEnumerable<string> Notes(DiscoveredClaim claim)
    {
        if (claim.Summary is not null)
        {
            yield return $"In full: {claim.Sentence}";
        }

        if (claim.Converse is { } converse)
        {
            yield return $"And the other way round: {converse}";
        }

        yield return Rarity(claim);
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
