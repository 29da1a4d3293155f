using System.Globalization;

namespace Fretloom.Pages.Pdf;

// Blocks that stand between paragraphs. Those with a name of the handout template need its import.
public readonly partial record struct TypstMarkup
{
    private const int RowsKeptTogether = 12;

    /// <summary>A heading.</summary>
    /// <param name="level">1 to 6. The handout's title is its only heading of level 1: sections start at 2.</param>
    /// <param name="content">The words.</param>
    /// <exception cref="ArgumentOutOfRangeException">The level is not in 1 to 6.</exception>
    public static TypstMarkup Heading(int level, TypstMarkup content)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(level, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(level, 6);
        return Block(string.Create(CultureInfo.InvariantCulture, $"heading(level: {level}){content.Bracketed}"));
    }

    /// <summary>A paragraph.</summary>
    public static TypstMarkup Paragraph(TypstMarkup content) => new($"\n\n{content}\n\n");

    /// <summary>A paragraph that stays with what follows it.</summary>
    public static TypstMarkup Lead(TypstMarkup content) =>
        Block($"block(sticky: true, below: 0.9em){content.Bracketed}");

    /// <summary>A list; items may hold blocks.</summary>
    /// <param name="items">The items in order.</param>
    /// <param name="hasBullets">Whether bullets stand before them; false where each begins with a box to tick.</param>
    public static TypstMarkup BulletList(IEnumerable<TypstMarkup> items, bool hasBullets = true) =>
        Block(
            $"list({(hasBullets ? "" : "marker: none, body-indent: 0pt, ")}{string.Concat(items.Select(item => item.Bracketed + ", "))})"
        );

    /// <summary>A numbered list; items may hold blocks.</summary>
    /// <param name="items">The items in order.</param>
    /// <param name="start">Number of the first, at least 0.</param>
    public static TypstMarkup NumberedList(IEnumerable<TypstMarkup> items, int start = 1)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(start);
        return Block(
            string.Create(
                CultureInfo.InvariantCulture,
                $"enum(start: {start}, {string.Concat(items.Select(item => item.Bracketed + ", "))})"
            )
        );
    }

    /// <summary>Blocks that are not parted by the end of a page.</summary>
    public static TypstMarkup Together(TypstMarkup content) => Block($"block(breakable: false){content.Bracketed}");

    /// <summary>A block quotation.</summary>
    public static TypstMarkup Quote(TypstMarkup content) => Block($"quote(block: true){content.Bracketed}");

    /// <summary>
    /// A table whose first row is its header, repeated on every page it reaches. Up to twelve
    /// rows are kept on one page. Rows that are too short are
    /// filled with empty cells.
    /// </summary>
    /// <param name="header">Cells of the header: as many as there are columns, at least one.</param>
    /// <param name="rows">Rows in order, each with at most that many cells.</param>
    /// <param name="alignments">Alignment by column; unsaid, all start at the left.</param>
    /// <exception cref="ArgumentException">No column, a row that is too long, or alignments that are not one a column.</exception>
    public static TypstMarkup Table(
        IReadOnlyList<TypstMarkup> header,
        IEnumerable<IReadOnlyList<TypstMarkup>> rows,
        IReadOnlyList<ColumnAlignment>? alignments = null
    )
    {
        if (header.Count == 0)
        {
            throw new ArgumentException("A table has at least one column.", nameof(header));
        }

        if (alignments is not null && alignments.Count != header.Count)
        {
            throw new ArgumentException(
                $"{alignments.Count} alignments for {header.Count} columns.",
                nameof(alignments)
            );
        }

        var body = rows.ToList();
        var cells = body.SelectMany(row =>
            row.Count <= header.Count
                ? row.Concat(Enumerable.Repeat(Empty, header.Count - row.Count))
                : throw new ArgumentException($"A row has {row.Count} cells, the header {header.Count}.", nameof(rows))
        );
        var sides = string.Concat(
            (alignments ?? [.. header.Select(_ => ColumnAlignment.Left)]).Select(side => Side(side) + ", ")
        );
        var table = string.Create(
            CultureInfo.InvariantCulture,
            $"table(columns: {header.Count}, align: ({sides}), table.header({Cells(header)}), {Cells(cells)})"
        );
        return Block(body.Count <= RowsKeptTogether ? $"block(breakable: false, {table})" : table);
    }

    /// <summary>Starts a new page, unless the page is still empty.</summary>
    public static TypstMarkup PageBreak => Block("pagebreak(weak: true)");

    /// <summary>A thin line across the text (handout template).</summary>
    public static TypstMarkup Rule => Block("rule()");

    /// <summary>A picture with its caption above it; the two are never parted (handout template).</summary>
    /// <param name="picture">Which picture, and how it is shown.</param>
    /// <param name="caption">Caption; figures with one are numbered. Empty for a picture without.</param>
    public static TypstMarkup Figure(HandoutPicture picture, TypstMarkup caption) => Block(picture.ToCall(caption));

    /// <summary>An exercise: its systems one below the other, the first with its heading (handout template).</summary>
    /// <param name="number">What it is called.</param>
    /// <param name="title">Its heading.</param>
    /// <param name="caption">Words to the student; empty for none.</param>
    /// <param name="note">Metre and tempo.</param>
    /// <param name="boxes">Chord boxes above the systems, a row each.</param>
    /// <param name="systems">Its systems; empty when there is only plain text.</param>
    /// <param name="tablature">Plain-text tablature; empty when there are systems.</param>
    /// <param name="caution">Words for the sake of the hand; empty for none.</param>
    internal static TypstMarkup Exercise(
        TypstMarkup number,
        TypstMarkup title,
        TypstMarkup caption,
        TypstMarkup note,
        IReadOnlyList<HandoutPicture> boxes,
        IReadOnlyList<HandoutPicture> systems,
        string tablature,
        TypstMarkup caution
    )
    {
        var rows = string.Concat(boxes.Select(row => $"arguments({row.Arguments}), "));
        var pictures = string.Concat(systems.Select(system => $"arguments({system.Arguments}), "));
        var lines = tablature.Length == 0 ? "none" : Literal(tablature);
        return Block(
            $"exercise({number.OrNone}, {title.OrNone}, caption: {caption.OrNone}, note: {note.Bracketed}, boxes: ({rows}), systems: ({pictures}), tablature: {lines}, caution: {caution.OrNone})"
        );
    }

    /// <summary>Figures side by side, each in a column of at least its width (handout template).</summary>
    /// <param name="figures">Caption as for <see cref="Figure"/>, and pictures one below the other, each with its width in points.</param>
    public static TypstMarkup FigureRow(
        IEnumerable<(TypstMarkup Caption, IReadOnlyList<HandoutPicture> Pictures)> figures
    ) => Block($"picture-row({string.Join(", ", figures.Select(figure => Column(figure.Caption, figure.Pictures)))})");

    private static string Column(TypstMarkup caption, IReadOnlyList<HandoutPicture> pictures) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"(widest: {pictures.Max(picture => picture.WidthPt ?? 0)}pt, caption: {caption.OrNone}, pictures: ({string.Concat(pictures.Select(picture => $"arguments({picture.Arguments}), "))}))"
        );

    /// <summary>What a hand reaches: a line, and if there are rows a table across the whole width in small type (handout template).</summary>
    /// <param name="summary">The line.</param>
    /// <param name="header">The header of the table.</param>
    /// <param name="rows">As many cells each.</param>
    public static TypstMarkup Reach(
        TypstMarkup summary,
        IReadOnlyList<TypstMarkup> header,
        IEnumerable<IReadOnlyList<TypstMarkup>> rows
    ) =>
        Block(
            $"reach({summary.Bracketed}, ({Cells(header)}), ({string.Concat(rows.Select(row => $"({Cells(row)}), "))}))"
        );

    /// <summary>A box that asks for care (handout template).</summary>
    public static TypstMarkup Caution(TypstMarkup label, TypstMarkup content) =>
        Block($"caution({label.Bracketed}, {content.Bracketed})");

    /// <summary>A box that shows an error or a warning in its place in the lesson (handout template).</summary>
    public static TypstMarkup Problem(TypstMarkup label, TypstMarkup content) =>
        Block($"problem({label.Bracketed}, {content.Bracketed})");

    private static string Cells(IEnumerable<TypstMarkup> cells) =>
        string.Join(", ", cells.Select(cell => cell.Bracketed));

    private static string Side(ColumnAlignment side) =>
        side switch
        {
            ColumnAlignment.Left => "left",
            ColumnAlignment.Centre => "center",
            ColumnAlignment.Right => "right",
            _ => throw new ArgumentOutOfRangeException(nameof(side)),
        };
}
