using Fretloom.Lessons.Syntax;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Syntax;
using Block = Fretloom.Lessons.Syntax.Block;

namespace Fretloom.Lessons.Markdown;

/// <summary>Markdown text -> our own tree. What Markdown can say and a handout cannot is reported.</summary>
/// <param name="source">The text.</param>
/// <param name="front">What the lesson says of itself.</param>
/// <param name="found">Takes what is wrong in any key.</param>
/// <param name="bound">Takes what is wrong in other keys than the lesson's own.</param>
/// <param name="memory">What was read before; null for nothing.</param>
internal sealed class MarkdownReader(
    SourceText source,
    FrontMatter front,
    DiagnosticList found,
    DiagnosticList bound,
    LessonMemory? memory = null
)
{
    private readonly InlineReader _inlines = new(found, front.Language);
    private readonly FenceReader _fences = new(source, front, found, bound, memory);

    /// <summary>Reads the blocks of a lesson.</summary>
    /// <param name="text">As long as the source, so that places agree; the front matter is blanked out.</param>
    /// <param name="isEnglish">Whether two hyphens become a dash, three dots an ellipsis.</param>
    public ValueList<Block> Read(string text, bool isEnglish)
    {
        if (!DepthCheck.Passes(source, found))
        {
            return [];
        }

        var pipeline = Pipeline(isEnglish);
        return Parse(text, pipeline) is { } document ? Blocks(document, 0) : ReportDepth(text, pipeline);
    }

    private static MarkdownPipeline Pipeline(bool isEnglish)
    {
        var builder = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UsePipeTables().UseTaskLists();
        if (isEnglish)
        {
            builder.UseSmartyPants();
        }

        builder.InlineParsers.Insert(0, new KeyWordsParser());
        return builder.Build();
    }

    private static MarkdownDocument? Parse(string text, MarkdownPipeline pipeline)
    {
        try
        {
            return Markdig.Markdown.Parse(text, pipeline);
        }
        catch (ArgumentException)
        {
            // The one error Markdig throws: brackets or stress marks more than 128 deep in one another, without a place.
            return null;
        }
    }

    private ValueList<Block> ReportDepth(string text, MarkdownPipeline pipeline)
    {
        var (good, bad) = (0, source.LineCount);
        while (bad - good > 1)
        {
            var middle = (good + bad) / 2;
            var isGood = Parse(text[..(source.StartOf(middle) + source.Line(middle).Length)], pipeline) is not null;
            (good, bad) = isGood ? (middle, bad) : (good, middle);
        }

        found.Error(source.StartOf(bad), DepthCheck.TooDeep);
        return [];
    }

    private ValueList<Block> Blocks(ContainerBlock container, int depth)
    {
        if (depth > Block.MaxDepth)
        {
            found.Error(container.Span.Start, DepthCheck.TooDeep);
            return [];
        }

        return container.SelectMany(block => One(block, depth)).ToValueList();
    }

    private IEnumerable<Block> One(Markdig.Syntax.Block block, int depth)
    {
        var line = block.Line + 1;
        if (block is HeadingBlock or ParagraphBlock or Table)
        {
            ProseCheck.Check(source.Text[block.Span.Start..(block.Span.End + 1)], block.Span.Start, bound);
        }

        switch (block)
        {
            case HeadingBlock heading:
                yield return new Block.Heading(line, heading.Level, _inlines.Read(heading.Inline));
                break;
            case ParagraphBlock paragraph:
                yield return new Block.Paragraph(line, _inlines.Read(paragraph.Inline));
                break;
            case ThematicBreakBlock:
                yield return new Block.Rule(line);
                break;
            case QuoteBlock quote:
                yield return new Block.Quote(line, Blocks(quote, depth + 1));
                break;
            case ListBlock list:
                yield return Listing(list, depth);
                break;
            case Table table:
                yield return TableOf(table);
                break;
            case FencedCodeBlock fence:
                yield return _fences.Read(fence);
                break;
            case CodeBlock code:
                yield return new Block.Code(line, code.Lines.ToString());
                break;
            case HtmlBlock { Type: HtmlBlockType.Comment }:
                break;
            case HtmlBlock html:
                found.Warning(html.Span.Start, InlineReader.HtmlIsText);
                yield return new Block.Paragraph(line, [new Inline.Text(html.Lines.ToString())]);
                break;
        }
    }

    private Block.Listing Listing(ListBlock list, int depth)
    {
        var first = list.IsOrdered
            ? int.Parse(list.OrderedStart ?? "1", System.Globalization.CultureInfo.InvariantCulture)
            : (int?)null;
        var entries = list.Cast<ListItemBlock>().Select(entry => Blocks(entry, depth + 1)).ToValueList();
        return new Block.Listing(list.Line + 1, first, !list.IsLoose, entries);
    }

    private Block.Table TableOf(Table table)
    {
        var rows = table.Cast<TableRow>().Select(Cells).ToList();
        var width = rows[0].Count;
        var columns = Enumerable.Range(0, width).Select(at => AlignmentOf(table, at)).ToValueList();
        return new Block.Table(
            table.Line + 1,
            columns,
            rows[0],
            rows.Skip(1).Select(row => Padded(row, width)).ToValueList()
        );
    }

    // A first row that is longer than the line below it has columns of which nothing was said.
    private static ColumnAlignment AlignmentOf(Table table, int column) =>
        table.ColumnDefinitions.ElementAtOrDefault(column)?.Alignment switch
        {
            TableColumnAlign.Center => ColumnAlignment.Center,
            TableColumnAlign.Right => ColumnAlignment.End,
            _ => ColumnAlignment.Start,
        };

    private ValueList<ValueList<Inline>> Cells(TableRow row) =>
        row.Cast<TableCell>()
            .Select(cell => cell.OfType<ParagraphBlock>().FirstOrDefault())
            .Select(paragraph => _inlines.Read(paragraph?.Inline))
            .ToValueList();

    private static ValueList<ValueList<Inline>> Padded(ValueList<ValueList<Inline>> row, int width) =>
        row.Concat(Enumerable.Repeat(default(ValueList<Inline>), width)).Take(width).ToValueList();
}
