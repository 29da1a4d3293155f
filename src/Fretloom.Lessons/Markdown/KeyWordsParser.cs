using Fretloom.Lessons.Syntax;
using Markdig.Helpers;
using Markdig.Parsers;
using Markdig.Syntax.Inlines;

namespace Fretloom.Lessons.Markdown;

/// <summary>Words that follow the key, as Markdig holds them; <see cref="Words"/> is null when they could not be read.</summary>
internal sealed class KeyWordsInline : LeafInline
{
    /// <summary>The words.</summary>
    public KeyWords? Words { get; init; }

    /// <summary>What is wrong with them, or null.</summary>
    public string? Problem { get; init; }
}

/// <summary>Finds <c>{key}</c>, <c>{degree 5}</c> and <c>{chord V7}</c> in running text, but not in code or after a backslash.</summary>
internal sealed class KeyWordsParser : InlineParser
{
    public KeyWordsParser() => OpeningCharacters = ['{'];

    public override bool Match(InlineProcessor processor, ref StringSlice slice)
    {
        var problem = KeyWords.Read(slice.AsSpan(), out var length, out var words);
        if (length == 0)
        {
            return false;
        }

        var start = processor.GetSourcePosition(slice.Start, out var line, out var column);
        processor.Inline = new KeyWordsInline
        {
            Words = words,
            Problem = problem,
            Span = new(start, start + length - 1),
            Line = line,
            Column = column,
        };
        slice.Start += length;
        return true;
    }
}
