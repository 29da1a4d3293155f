using System.Globalization;
using System.Text;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using ColumnAlignment = Fretloom.Lessons.Syntax.ColumnAlignment;
using Side = Fretloom.Pages.Pdf.ColumnAlignment;

namespace Fretloom.Pages.Documents;

/// <summary>Writes the blocks of a lesson as Typst source.</summary>
/// <param name="pictured">The lesson.</param>
/// <param name="width">The width of the text, in points.</param>
/// <param name="scale">How much larger than drawn the pictures are shown.</param>
/// <param name="files">Takes the picture files that the source names.</param>
internal sealed class BlockTypst(PicturedLesson pictured, double width, double scale, Dictionary<string, byte[]> files)
{
    private readonly Outline _outline = new();
    private int _depth;

    /// <summary>The blocks, one after the other.</summary>
    public TypstMarkup Markup(ValueList<Block> blocks) => TypstMarkup.Join(blocks.Select(Markup));

    private TypstMarkup Markup(Block block) =>
        block switch
        {
            Block.Heading heading => TypstMarkup.Heading(_outline.LevelOf(heading.Level), Markup(heading.Content)),
            Block.Paragraph paragraph => TypstMarkup.Paragraph(Markup(paragraph.Content)),
            Block.Listing { FirstNumber: { } first } list => TypstMarkup.NumberedList(Entries(list), first),
            Block.Listing list => TypstMarkup.BulletList(Entries(list), !list.Entries.All(IsTask)),
            Block.Quote quote => TypstMarkup.Quote(Inside(() => Markup(quote.Content))),
            Block.Code code => TypstMarkup.CodeBlock(code.Characters),
            Block.Table table => Table(table),
            Block.Rule => TypstMarkup.Rule,
            Block.Figure figure => Figure(figure),
            Block.Problem problem => TypstMarkup.Problem(
                TypstMarkup.Text(string.Create(CultureInfo.InvariantCulture, $"Line {problem.Line}")),
                TypstMarkup.Text(problem.Message)
            ),
            _ => TypstMarkup.Empty,
        };

    private IEnumerable<TypstMarkup> Entries(Block.Listing list) => list.Entries.Select(Entry);

    private static bool IsTask(ValueList<Block> entry) =>
        entry is [Block.Paragraph { Content: [Inline.Checkbox, ..] }, ..];

    // A paragraph alone in an entry is written without its empty lines, which would spread the list.
    private TypstMarkup Entry(ValueList<Block> entry) =>
        Inside(() =>
            TypstMarkup.Join(
                entry.Select(
                    (block, at) =>
                        at == 0 && block is Block.Paragraph paragraph ? Markup(paragraph.Content) : Markup(block)
                )
            )
        );

    private TypstMarkup Inside(Func<TypstMarkup> write)
    {
        _depth++;
        var markup = write();
        _depth--;
        return markup;
    }

    private static TypstMarkup Table(Block.Table table) =>
        TypstMarkup.Table(
            [.. table.Header.Select(Markup)],
            table.Rows.Select(row => (IReadOnlyList<TypstMarkup>)[.. row.Select(Markup)]),
            [
                .. table.Columns.Select(column =>
                    column switch
                    {
                        ColumnAlignment.Center => Side.Centre,
                        ColumnAlignment.End => Side.Right,
                        _ => Side.Left,
                    }
                ),
            ]
        );

    private TypstMarkup Figure(Block.Figure figure)
    {
        var markup = figure.Options.Title is { } title
            ? TypstMarkup.Lead(TypstMarkup.Strong(TypstMarkup.Text(title)))
            : TypstMarkup.Empty;
        var caption = TypstMarkup.Text(figure.Options.Caption ?? "");
        var pictures = pictured.PicturesOf(figure);
        if (pictures.Count == 0)
        {
            return markup + TypstMarkup.Paragraph(TypstMarkup.Text(PicturedLesson.NothingToSee));
        }

        foreach (var picture in pictures)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"figures/{files.Count + 1}.svg");
            files[path] = Encoding.UTF8.GetBytes(SvgWriter.Write(picture.Drawing, SvgTheme.Print));
            markup += TypstMarkup.Figure(Placed(picture, path), caption);
            caption = TypstMarkup.Empty;
        }

        return markup;
    }

    // Shown at the size it was drawn for, so that no type gets too small. What is wider than the text is turned in large
    // print, but not in a list or a quote, which cannot hold a sheet of its own.
    private HandoutPicture Placed(Picture picture, string path)
    {
        var shown = picture.Drawing.Width * scale;
        return new HandoutPicture(path, picture.Drawing.Description, isLandscape: shown > width && _depth == 0)
        {
            WidthPt = Math.Round(shown, 2),
        };
    }

    private static TypstMarkup Markup(ValueList<Inline> content) => TypstMarkup.Join(content.Select(Markup));

    private static TypstMarkup Markup(Inline inline) =>
        inline switch
        {
            Inline.Text text => TypstMarkup.Text(text.Characters),
            Inline.Code code => TypstMarkup.Code(code.Characters),
            Inline.Emphasis emphasis => TypstMarkup.Emphasis(Markup(emphasis.Content)),
            Inline.Strong strong => TypstMarkup.Strong(Markup(strong.Content)),
            Inline.Link link => TypstMarkup.Link(link.Address, Markup(link.Content)),
            Inline.Checkbox box => TypstMarkup.Checkbox(box.IsTicked) + TypstMarkup.Text(" "),
            Inline.LineBreak => TypstMarkup.LineBreak,
            _ => TypstMarkup.Empty,
        };
}
