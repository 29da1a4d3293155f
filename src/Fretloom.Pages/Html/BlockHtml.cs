using System.Globalization;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Documents;

namespace Fretloom.Pages.Html;

/// <summary>Writes the blocks of a lesson as HTML.</summary>
internal sealed class BlockHtml
{
    private readonly HtmlText _html;
    private readonly PicturedLesson _pictured;
    private readonly Outline _outline = new();
    private readonly FigureHtml _figures;
    private readonly StatementHtml _statements;
    private readonly ExerciseHtml _exercises;
    private int _sections;

    /// <summary>Writes into an HTML text.</summary>
    /// <param name="html">The page.</param>
    /// <param name="pictured">The lesson.</param>
    /// <param name="kept">What was written before; null writes everything anew.</param>
    public BlockHtml(HtmlText html, PicturedLesson pictured, KeptHtml? kept = null)
    {
        (_html, _pictured) = (html, pictured);
        var drawings = new PictureHtml(html);
        _figures = new FigureHtml(html, pictured, drawings, kept);
        _statements = new StatementHtml(html, drawings, kept);
        _exercises = new ExerciseHtml(html, pictured, drawings, kept);
    }

    /// <summary>Writes blocks, each heading opening a section that ends before the next heading of its level.</summary>
    public void WriteSections(ValueList<Block> blocks)
    {
        // Levels of the sections that are open; a heading in a list or a quote opens none, so levels may be missing.
        var open = new Stack<int>();
        foreach (var row in FigureRows.Of(blocks))
        {
            if (row is not [Block.Heading heading])
            {
                Write(row);
                continue;
            }

            var level = _outline.LevelOf(heading.Level);
            Close(level);
            var id = NextSection();
            _html.Open("section", ("aria-labelledby", id)).Line();
            open.Push(level);
            Opening(heading, level, id);
        }

        Close(0);

        void Close(int level)
        {
            while (open.TryPeek(out var last) && last >= level)
            {
                open.Pop();
                _html.Close().Line();
            }
        }
    }

    /// <summary>Writes blocks without sections, and tells where each part that stands by itself ends: a block, or figures side by side.</summary>
    /// <returns>For each part the line it begins in; when it is given, the part is written and the next is not begun.</returns>
    public IEnumerable<int> WriteParts(ValueList<Block> blocks)
    {
        foreach (var row in FigureRows.Of(blocks))
        {
            if (row is [Block.Heading heading])
            {
                Opening(heading, _outline.LevelOf(heading.Level), NextSection());
            }
            else
            {
                Write(row);
            }

            yield return row[0].Line;
        }
    }

    private string NextSection() => string.Create(CultureInfo.InvariantCulture, $"section-{++_sections}");

    private void Opening(Block.Heading heading, int level, string id)
    {
        _html.Open(ElementOf(level), ("id", id));
        InlineHtml.Write(_html, heading.Content);
        _html.Close().Line();
    }

    private static string ElementOf(int level) => string.Create(CultureInfo.InvariantCulture, $"h{level}");

    private void WriteAll(ValueList<Block> blocks)
    {
        foreach (var row in FigureRows.Of(blocks))
        {
            Write(row);
        }
    }

    private void Write(ValueList<Block> row)
    {
        if (row is [var block])
        {
            Write(block);
        }
        else
        {
            _figures.WriteRow(row.Cast<Block.Figure>());
        }

        _figures.WriteCautions(row);
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case Block.Heading heading:
                _html.Open(ElementOf(_outline.LevelOf(heading.Level)));
                InlineHtml.Write(_html, heading.Content);
                _html.Close();
                break;
            case Block.Paragraph paragraph:
                _html.Open("p");
                InlineHtml.Write(_html, paragraph.Content);
                _html.Close();
                break;
            case Block.Listing list:
                Listing(list);
                break;
            case Block.Quote quote:
                _html.Open("blockquote");
                WriteAll(quote.Content);
                _html.Close();
                break;
            case Block.Code code:
                _html.Open("pre", ("tabindex", "0")).Element("code", code.Characters).Close();
                break;
            case Block.Table table:
                Table(table);
                break;
            case Block.Rule:
                _html.Empty("hr");
                break;
            case Block.Figure figure:
                _figures.Write(figure);
                break;
            case Block.Statement statement:
                _statements.Write(statement, _pictured.NeckOf(statement));
                break;
            case Block.Exercise exercise:
                _exercises.Write(exercise);
                break;
            case Block.Problem problem:
                _html
                    .Open("aside", ("class", "problem"))
                    .Element("strong", string.Create(CultureInfo.InvariantCulture, $"Line {problem.At}"))
                    .Element("p", problem.Message)
                    .Close();
                break;
        }

        _html.Line();
    }

    private void Listing(Block.Listing list)
    {
        var start = list.FirstNumber is { } first and not 1 ? first.ToString(CultureInfo.InvariantCulture) : null;
        _html.Open(list.FirstNumber is null ? "ul" : "ol", ("start", start));
        foreach (var entry in list.Entries)
        {
            var isTask = entry is [Block.Paragraph { Content: [Inline.Checkbox, ..] }, ..];
            _html.Open("li", ("class", isTask ? "task" : null));
            foreach (var row in FigureRows.Of(entry))
            {
                if (list.IsTight && row is [Block.Paragraph paragraph])
                {
                    InlineHtml.Write(_html, paragraph.Content);
                }
                else
                {
                    Write(row);
                }
            }

            _html.Close();
        }

        _html.Close();
    }

    private void Table(Block.Table table)
    {
        _html.Open("div", ("class", "scroll"), ("tabindex", "0"), ("role", "group"), ("aria-label", "Table"));
        _html.Open("table").Open("thead");
        Row(table.Header, "th", table.Columns);
        _html.Close().Open("tbody");
        foreach (var row in table.Rows)
        {
            Row(row, "td", table.Columns);
        }

        _html.Close().Close().Close();
    }

    private void Row(ValueList<ValueList<Inline>> cells, string name, ValueList<ColumnAlignment> columns)
    {
        _html.Open("tr");
        for (var at = 0; at < cells.Count; at++)
        {
            var side = columns[at] switch
            {
                ColumnAlignment.Center => "center",
                ColumnAlignment.End => "end",
                _ => null,
            };
            _html.Open(name, ("scope", name == "th" ? "col" : null), ("class", side));
            InlineHtml.Write(_html, cells[at]);
            _html.Close();
        }

        _html.Close().Line();
    }
}
