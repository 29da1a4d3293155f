namespace Fretloom.Lessons.Markdown;

/// <summary>Finds what would cost the Markdown reader too much before it is asked to read it.</summary>
internal static class DepthCheck
{
    /// <summary>The most characters that may follow each other without an empty line.</summary>
    private const int MaxStretch = 20_000;

    /// <summary>Columns of white space before a line; a list as deep as we allow needs far fewer.</summary>
    private const int MaxIndent = 160;

    /// <summary>Reports the first line that is too deep or too long.</summary>
    /// <returns>Whether the text may be read.</returns>
    public static bool Passes(SourceText source, DiagnosticList found)
    {
        var stretch = 0;
        for (var number = 1; number <= source.LineCount; number++)
        {
            var line = source.Line(number);
            stretch = string.IsNullOrWhiteSpace(line) ? 0 : stretch + line.Length;
            if (stretch > MaxStretch)
            {
                found.Error(
                    source.StartOf(number),
                    "More than 20,000 characters without an empty line. Put empty lines between paragraphs."
                );
                return false;
            }

            var (depth, indent) = IsRule(line) ? (0, 0) : Depth(line);
            if (depth > Syntax.Block.MaxDepth || indent > MaxIndent)
            {
                found.Error(source.StartOf(number), TooDeep);
                return false;
            }
        }

        return true;
    }

    /// <summary>The finding about lists, quotes or stress in one another.</summary>
    public static string TooDeep =>
        $"Lists, quotes and stressed words stand more than {Syntax.Block.MaxDepth} deep in one another here; make it flatter.";

    // Every mark of a quote or a list entry at the start of a line opens one more level.
    private static (int Depth, int Indent) Depth(string line)
    {
        var depth = 0;
        var at = 0;
        var lastMark = 0;
        var longest = 0;
        while (at < line.Length)
        {
            if (line[at] is ' ' or '\t')
            {
                at++;
                continue;
            }

            longest = Math.Max(longest, at - lastMark);
            var mark = MarkLength(line.AsSpan(at));
            if (mark == 0)
            {
                break;
            }

            depth++;
            at += mark;
            lastMark = at;
        }

        return (depth, longest);
    }

    private static bool IsRule(string line)
    {
        var marks = line.Where(character => character is not (' ' or '\t')).Distinct().Take(2).ToList();
        return marks is ['-' or '*' or '_'];
    }

    private static int MarkLength(ReadOnlySpan<char> text)
    {
        if (text[0] == '>')
        {
            return 1;
        }

        var digits = text.IndexOfAnyExceptInRange('0', '9');
        var mark = digits switch
        {
            0 when text[0] is '-' or '+' or '*' => 1,
            > 0 and <= 9 when text[digits] is '.' or ')' => digits + 1,
            _ => 0,
        };
        return mark > 0 && (mark == text.Length || text[mark] is ' ' or '\t') ? mark : 0;
    }
}
