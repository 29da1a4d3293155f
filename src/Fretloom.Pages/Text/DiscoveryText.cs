using System.Globalization;
using System.Text;
using Fretloom.Claims;
using Fretloom.Sentences;

namespace Fretloom.Pages.Text;

/// <summary>Writes discovered statements as text for a terminal: landmarks, then laws, each with what is known of it.</summary>
public static class DiscoveryText
{
    private const int Indent = 4;
    private const int MostAlso = 3;

    /// <summary>Both lists.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="width">Characters on a line, at least <see cref="PlainText.SmallestWidth"/>.</param>
    /// <returns>Lines that end with \n.</returns>
    public static string Write(DiscoveryResult result, int width = 80)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, PlainText.SmallestWidth);
        var text = new StringBuilder();
        foreach (var line in Lines(result, width))
        {
            text.Append(line).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<string> Lines(DiscoveryResult result, int width) =>
        Wrapping
            .Lines($"True {result.Scope}. {DiscoveryWords.Counts(result)}", width)
            .Concat(List(DiscoveryWords.LandmarksTitle, result.Landmarks, width))
            .Concat(List(DiscoveryWords.LawsTitle, result.Laws, width));

    private static IEnumerable<string> List(string title, ValueList<DiscoveredClaim> claims, int width) =>
        claims
            .Index()
            .SelectMany(one => Item(one.Index + 1, one.Item, width))
            .DefaultIfEmpty("None was found.")
            .Prepend(title)
            .Prepend("");

    private static IEnumerable<string> Item(int number, DiscoveredClaim claim, int width)
    {
        var first = $"{number.ToString(CultureInfo.InvariantCulture)}.".PadRight(Indent);
        var notes = DiscoveryWords.Notes(claim, MostAlso);
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

    /// <summary>The lines below a statement.</summary>
    /// <param name="claim">The statement.</param>
    /// <param name="mostAlso">How many others at most are written out.</param>
    public static IEnumerable<string> Notes(DiscoveredClaim claim, int mostAlso)
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
        if (claim.NearestFailure is { } near)
        {
            yield return $"Nearest failure: {near.Place}, in {near.Kind}.";
        }

        if (mostAlso > 0 && claim.AlsoSays.Count > 0)
        {
            var some = claim.AlsoSays.Take(mostAlso).Select(other => ClaimPrinter.Print(Bare(other)));
            var rest = claim.AlsoSays.Count - mostAlso;
            var more = rest > 0 ? string.Create(CultureInfo.InvariantCulture, $"; and {rest} more") : "";
            yield return $"The same as: {string.Join("; ", some)}{more}.";
        }
    }

    /// <summary>What is claimed, without the condition that stands in the line above.</summary>
    private static Claim Bare(ClaimSentence sentence) =>
        sentence.Claim is Claim.If condition ? condition.Then : sentence.Claim;
}
