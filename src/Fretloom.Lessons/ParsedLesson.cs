using Fretloom.Claims;
using Fretloom.Lessons.Markdown;
using Fretloom.Lessons.Syntax;
using Fretloom.Theory;

namespace Fretloom.Lessons;

/// <summary>A lesson file as it was written: its tree and what was found while it was read.</summary>
internal sealed class ParsedLesson
{
    /// <summary>The text.</summary>
    public required SourceText Source { get; init; }

    /// <summary>The front matter, with words that follow the key left as they are.</summary>
    public required FrontMatter Front { get; init; }

    /// <summary>The tree.</summary>
    public ValueList<Block> Blocks { get; init; }

    /// <summary>What was found.</summary>
    public required ValueList<Diagnostic> Diagnostics { get; init; }

    /// <summary>Whether the file could be read as text.</summary>
    public bool IsText { get; init; } = true;

    /// <summary>What is to be said besides when the lesson is made in another key.</summary>
    public ValueList<Diagnostic> InOtherKeys { get; init; }

    /// <summary>The key of the lesson as it was written; C major when it names none.</summary>
    public Key HomeKey => Front.HomeKey;

    /// <summary>What came of the claims, as far as they have been checked.</summary>
    public required ClaimVerdicts Verdicts { get; init; }

    /// <summary>What was worked out when the lesson was read before; null for a lesson that is read once.</summary>
    public LessonMemory? Memory { get; init; }

    /// <summary>Reads a lesson.</summary>
    /// <param name="source">The text.</param>
    /// <param name="checks">How its claims are checked.</param>
    /// <param name="memory">What was worked out when the lesson was read before; null for a lesson that is read once.</param>
    public static ParsedLesson Read(SourceText source, ClaimChecks checks, LessonMemory? memory = null)
    {
        var found = new DiagnosticList(source);
        var bound = new DiagnosticList(source);
        var front = new FrontMatterReader(source, found, bound).Read(out var end);
        var isEnglish = front.Language.Split('-')[0] == "en";
        var reader = new MarkdownReader(source, front, found, bound, memory);
        var blocks = reader.Read(Blanked(source.Text, end), isEnglish);
        return new ParsedLesson
        {
            Source = source,
            Front = front,
            Blocks = blocks,
            Diagnostics = found.InOrder(),
            InOtherKeys = bound.InOrder(),
            Verdicts = new ClaimVerdicts(checks, ClaimsOf(blocks), memory),
            Memory = memory,
        };
    }

    /// <summary>A file that could not even be read.</summary>
    public static ParsedLesson Failed(Diagnostic error) =>
        new()
        {
            Source = new SourceText(""),
            Front = new FrontMatter(),
            Diagnostics = [error],
            IsText = false,
            Verdicts = new ClaimVerdicts(ClaimChecks.Default, []),
        };

    private static IEnumerable<ClaimSentence> ClaimsOf(IEnumerable<Block> blocks) =>
        blocks.SelectMany(block =>
            block switch
            {
                Block.Claim claim => [claim.Said.Sentence],
                Block.Quote quote => ClaimsOf(quote.Content),
                Block.Listing list => list.Entries.SelectMany(entry => ClaimsOf(entry)),
                _ => Enumerable.Empty<ClaimSentence>(),
            }
        );

    // Lines above the lesson become empty lines, so that every place stays where it is.
    private static string Blanked(string text, int end) =>
        string.Concat(text[..end].Select(character => character == '\n' ? '\n' : ' ')) + text[end..];
}
