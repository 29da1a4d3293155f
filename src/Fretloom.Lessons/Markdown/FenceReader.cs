using System.Text.RegularExpressions;
using Fretloom.Lessons.Syntax;
using Fretloom.Lessons.Yaml;
using Markdig.Helpers;
using Markdig.Syntax;
using Block = Fretloom.Lessons.Syntax.Block;

namespace Fretloom.Lessons.Markdown;

/// <summary>Fenced blocks -> code, or a sentence with its options.</summary>
internal sealed partial class FenceReader(
    SourceText source,
    FrontMatter front,
    DiagnosticList found,
    DiagnosticList bound,
    LessonMemory? memory
)
{
    private static readonly string[] Kinds = ["show", "claim", "play", "text"];

    /// <summary>Reads a block by the first word after its fence.</summary>
    /// <returns>The block; one that tells the error when there is one, which has also been reported.</returns>
    public Block Read(FencedCodeBlock fence)
    {
        var line = fence.Line + 1;
        var offset = fence.Span.Start;
        var kind = fence.Info ?? "";
        var kindOffset = offset + Math.Max(0, source.Text.AsSpan(offset).IndexOf(kind, StringComparison.Ordinal));
        if (fence.ClosingFencedCharCount == 0)
        {
            var mark = new string(fence.FencedChar, fence.OpeningFencedCharCount);
            return Problem(line, offset, $"This block is never closed; put {mark} on a line of its own below it.");
        }

        switch (kind)
        {
            case "" or "text":
                return new Block.Code(line, fence.Lines.ToString());
            case "show" or "claim" or "play" when !string.IsNullOrWhiteSpace(fence.Arguments):
                return Problem(line, kindOffset + kind.Length + 1, $"Write the sentence on the line below '{kind}'.");
            case "show":
                return Show(fence);
            case "claim":
                return Claim(fence);
            case "play":
                return Play(fence);
            default:
                var message = found.Misspelt(
                    kindOffset,
                    kind,
                    Kinds,
                    $"{Suggestion.Quoted(kind)} is not a kind of block;",
                    " Lines to be printed as they stand are 'text'."
                );
                return new Block.Problem(line, message);
        }
    }

    private Block Show(FencedCodeBlock fence)
    {
        var (sentence, options) = PartsOf(fence);
        var before = found.Count;
        var parsed = SentenceReader.Read(sentence, front.Defaults, fence.Span.Start, found, memory);
        var wrong = found.ErrorsAfter(before);
        var read = Options(options);
        return parsed is null ? Unread(fence, before, wrong) : new Block.Show(fence.Line + 1, parsed, read);
    }

    private Block Claim(FencedCodeBlock fence)
    {
        var (sentence, options) = PartsOf(fence);
        var before = found.Count;
        var parsed = SentenceReader.ReadClaim(sentence, front.ClaimDefaults, fence.Span.Start, found);
        var wrong = found.ErrorsAfter(before);
        var read = ClaimOptionsIn(options);
        return parsed is null ? Unread(fence, before, wrong) : new Block.Claim(fence.Line + 1, parsed, read);
    }

    private Block Play(FencedCodeBlock fence)
    {
        var (sentence, options) = PartsOf(fence);
        var before = found.Count;
        var parsed = SentenceReader.ReadPlay(sentence, front.Defaults, fence.Span.Start, found, memory);
        var wrong = found.ErrorsAfter(before);
        var read = ExerciseOptionsIn(options);
        return parsed is null ? Unread(fence, before, wrong) : new Block.Play(fence.Line + 1, parsed, read);
    }

    private ExerciseOptions ExerciseOptionsIn(PlacedText text)
    {
        var options = ExerciseOptions.None;
        foreach (var entry in FlatYaml.Read(text.Text, text.OffsetOf, ExerciseOptions.Names, found))
        {
            CheckWords(entry);
            var words = Quotes.Curl(entry.Value, front.Language);
            options = entry.Key == "caption" ? options with { Caption = words } : options with { Title = words };
        }

        return options;
    }

    private ClaimOptions ClaimOptionsIn(PlacedText text)
    {
        var options = ClaimOptions.None;
        foreach (var entry in FlatYaml.Read(text.Text, text.OffsetOf, ClaimOptions.Names, found))
        {
            if (entry.Key == "expect")
            {
                options = options with { ExpectsFailure = entry.Value == "fails", ExpectOffset = entry.ValueOffset };
                if (entry.Value is not ("fails" or "holds"))
                {
                    found.Error(
                        entry.ValueOffset,
                        $"{Suggestion.Quoted(entry.Value)} is not a verdict to expect; expected 'holds' or 'fails'."
                    );
                }

                continue;
            }

            CheckWords(entry);
            var words = Quotes.Curl(entry.Value, front.Language);
            options = entry.Key == "caption" ? options with { Caption = words } : options with { Title = words };
        }

        return options;
    }

    private void CheckWords(YamlEntry entry)
    {
        KeyWords.Check(entry.Value, entry.ValueOffset, found);
        ProseCheck.Check(entry.Value, entry.ValueOffset, bound);
    }

    // A block whose sentence cannot be read: what is wrong was found after some others, and before what its options have.
    private Block.Problem Unread(FencedCodeBlock fence, int before, string wrong) =>
        new(fence.Line + 1, wrong) { At = found.LineAfter(before) };

    private Block.Problem Problem(int line, int offset, string message)
    {
        found.Error(offset, message);
        return new Block.Problem(line, message);
    }

    private FigureOptions Options(PlacedText text)
    {
        var options = FigureOptions.None;
        foreach (var entry in FlatYaml.Read(text.Text, text.OffsetOf, FigureOptions.Names, found))
        {
            CheckWords(entry);
            options = entry.Key switch
            {
                "caption" => options with { Caption = Quotes.Curl(entry.Value, front.Language) },
                "title" => options with { Title = Quotes.Curl(entry.Value, front.Language) },
                "alt" => options with { Alt = entry.Value },
                _ => options with { WidthPercent = Width(entry) },
            };
        }

        return options;
    }

    private int? Width(YamlEntry entry)
    {
        if (FigureOptions.TryParseWidth(entry.Value, out var percent))
        {
            return percent;
        }

        found.Error(
            entry.ValueOffset,
            $"{Suggestion.Quoted(entry.Value)} is not a width; expected 'full', 'half', 'third', or 20% to 100%."
        );
        return null;
    }

    /// <summary>The sentence, and the options that follow it.</summary>
    private static (PlacedText Sentence, PlacedText Options) PartsOf(FencedCodeBlock fence)
    {
        var lines = new List<PlacedLine>();
        for (var at = 0; at < fence.Lines.Count; at++)
        {
            StringSlice slice = fence.Lines.Lines[at].Slice;
            lines.Add(new PlacedLine(slice.ToString(), slice.Start));
        }

        var options = lines.FindIndex(line => OptionLine().IsMatch(line.Text));
        options = options < 0 ? lines.Count : options;
        return (new PlacedText(lines[..options]), new PlacedText(lines[options..]));
    }

    [GeneratedRegex(@"^\s*[\p{L}][\w-]*\s*:(\s|$)", RegexOptions.CultureInvariant)]
    private static partial Regex OptionLine();
}
