using System.Globalization;
using System.Text;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Scores.Engraving;
using ColumnAlignment = Fretloom.Lessons.Syntax.ColumnAlignment;
using Side = Fretloom.Pages.Pdf.ColumnAlignment;

namespace Fretloom.Pages.Documents;

/// <summary>Writes the blocks of a lesson as Typst source.</summary>
/// <param name="pictured">The lesson.</param>
/// <param name="width">The width of the text, in points.</param>
/// <param name="scale">How much larger than drawn the pictures are shown, at most.</param>
/// <param name="files">Takes the picture files that the source names.</param>
internal sealed class BlockTypst(PicturedLesson pictured, double width, double scale, Dictionary<string, byte[]> files)
{
    private readonly Outline _outline = new();

    // A list of this many entries and characters is kept on one page.
    private const int EntriesKeptTogether = 8;
    private const int CharactersKeptTogether = 800;

    // A lead of more than some five lines can be parted.
    private const int CharactersOfLead = 500;

    /// <summary>The blocks, one after the other.</summary>
    public TypstMarkup Markup(ValueList<Block> blocks) =>
        TypstMarkup.Join(
            FigureRows
                .Of(blocks)
                .Zip(FigureRows.Of(blocks).Skip(1).Append([]), (row, next) => (Row: row, Next: next))
                .Select(each => Markup(each.Row, each.Next) + After(each.Row))
        );

    // A short paragraph that leads to a claim or an exercise stays with it.
    private TypstMarkup Markup(ValueList<Block> row, ValueList<Block> next) =>
        row switch
        {
            [Block.Paragraph lead]
                when next is [Block.Statement or Block.Exercise] && Length(lead.Content) <= CharactersOfLead =>
                TypstMarkup.Lead(Markup(lead.Content)),
            [var block] => Markup(block),
            _ => Row(row.Cast<Block.Figure>().ToValueList()),
        };

    // How many shapes the hand reaches with a table of the others (where it reaches all, that is said below the picture), and once in the lesson the general words of caution.
    private TypstMarkup After(ValueList<Block> row) =>
        TypstMarkup.Join(
            row.OfType<Block.Figure>()
                .Select(pictured.NotesOn)
                .Where(notes => notes.OutOfReach.Rows.Count > 0)
                .Select(Reach)
                .Concat(
                    pictured
                        .CautionsAfter(row)
                        .Select(words =>
                            TypstMarkup.Caution(
                                TypstMarkup.Text(HandNotes.Heading),
                                TypstMarkup.Small(TypstMarkup.Text(words))
                            )
                        )
                )
        );

    private static ValueList<string> Below(HandNotes notes) =>
        notes.Summary.Length > 0 && notes.OutOfReach.Rows.Count == 0 ? [notes.Summary] : notes.Cautions;

    private static TypstMarkup Reach(HandNotes notes) =>
        TypstMarkup.Reach(
            TypstMarkup.Text(notes.Summary),
            [.. notes.OutOfReach.Header.Select(TypstMarkup.Text)],
            notes.OutOfReach.Rows.Select(row => (IReadOnlyList<TypstMarkup>)[.. row.Select(TypstMarkup.Text)])
        );

    private TypstMarkup Markup(Block block) =>
        block switch
        {
            Block.Heading heading => TypstMarkup.Heading(_outline.LevelOf(heading.Level), Markup(heading.Content)),
            Block.Paragraph paragraph => TypstMarkup.Paragraph(Markup(paragraph.Content)),
            Block.Listing list => IsShort(list) ? TypstMarkup.Together(Listing(list)) : Listing(list),
            Block.Quote quote => TypstMarkup.Quote(Markup(quote.Content)),
            Block.Code code => TypstMarkup.CodeBlock(code.Characters),
            Block.Table table => Table(table),
            Block.Rule => TypstMarkup.Rule,
            Block.Figure figure => Figure(figure),
            Block.Statement statement => StatementTypst.Markup(
                statement,
                pictured.NeckOf(statement) is ({ } neck, var isAside) ? (Placed(neck), isAside) : null
            ),
            Block.Exercise exercise => Exercise(exercise),
            Block.Problem problem => TypstMarkup.Problem(
                TypstMarkup.Text(string.Create(CultureInfo.InvariantCulture, $"Line {problem.At}")),
                TypstMarkup.Text(problem.Message)
            ),
            _ => TypstMarkup.Empty,
        };

    private TypstMarkup Listing(Block.Listing list) =>
        list.FirstNumber is { } first
            ? TypstMarkup.NumberedList(Entries(list), first)
            : TypstMarkup.BulletList(Entries(list), !list.Entries.All(IsTask));

    private static bool IsShort(Block.Listing list) =>
        list.Entries.Count <= EntriesKeptTogether
        && list.Entries.All(entry => entry is [Block.Paragraph])
        && list.Entries.Sum(entry => Length(((Block.Paragraph)entry[0]).Content)) <= CharactersKeptTogether;

    private static int Length(ValueList<Inline> content) =>
        content.Sum(inline =>
            inline switch
            {
                Inline.Text text => text.Characters.Length,
                Inline.Code code => code.Characters.Length,
                Inline.Emphasis emphasis => Length(emphasis.Content),
                Inline.Strong strong => Length(strong.Content),
                Inline.Link link => Length(link.Content),
                _ => 1,
            }
        );

    private IEnumerable<TypstMarkup> Entries(Block.Listing list) => list.Entries.Select(Entry);

    private static bool IsTask(ValueList<Block> entry) =>
        entry is [Block.Paragraph { Content: [Inline.Checkbox, ..] }, ..];

    // A paragraph alone in an entry is written without its empty lines, which would spread the list.
    private TypstMarkup Entry(ValueList<Block> entry) =>
        entry is [Block.Paragraph paragraph, ..]
            ? Markup(paragraph.Content) + Markup(entry.Skip(1).ToValueList())
            : Markup(entry);

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

    private TypstMarkup Exercise(Block.Exercise exercise)
    {
        var pictures = pictured.PicturesOf(exercise);
        var player = RunningLines.NoteOn(exercise.Played, pictured.Front);
        var tempo = $"{exercise.Played.Metre}, {ExerciseWords.Tempo(exercise.Played)}";
        return TypstMarkup.Exercise(
            TypstMarkup.Text(
                pictured.IsOneExercise ? "" : string.Create(CultureInfo.InvariantCulture, $"Exercise {exercise.Number}")
            ),
            TypstMarkup.Text(pictured.IsOneExercise ? "" : exercise.Title),
            TypstMarkup.Text(exercise.Options.Caption ?? ""),
            TypstMarkup.Text(player.Length > 0 ? $"{player}, {tempo}" : tempo),
            [.. pictures.Boxes.Select(Placed)],
            [.. pictures.Systems.Select(system => Placed(system, pictures))],
            pictures.Systems.Count == 0 ? pictures.Tablature : "",
            TypstMarkup.Text(pictures.Caution ?? "")
        );
    }

    private HandoutPicture Placed(EngravedSystem system, PicturedExercise pictures)
    {
        var path = string.Create(CultureInfo.InvariantCulture, $"figures/{files.Count + 1}.svg");
        files[path] = Encoding.UTF8.GetBytes(system.Svg);
        return new HandoutPicture(path, pictures.WordsOf(system))
        {
            WidthPt = Math.Round(Math.Min(width, system.WidthMm * 72 / 25.4 * scale), 2),
        };
    }

    private TypstMarkup Figure(Block.Figure figure)
    {
        var markup = figure.Options.Title is { } title
            ? TypstMarkup.Lead(TypstMarkup.Strong(TypstMarkup.Text(title)))
            : TypstMarkup.Empty;
        var caption = TypstMarkup.Text(figure.Options.Caption ?? "");
        var pictures = Placed(figure);
        if (pictures.Count == 0)
        {
            return markup + TypstMarkup.Paragraph(TypstMarkup.Text(PicturedLesson.NothingToSee));
        }

        foreach (var picture in pictures)
        {
            markup += TypstMarkup.Figure(picture, caption);
            caption = TypstMarkup.Empty;
        }

        return markup;
    }

    // Side by side where all of them have room at their full size.
    private TypstMarkup Row(ValueList<Block.Figure> figures)
    {
        var needed = figures.Sum(Widest) + FigureRows.Gutter * (figures.Count - 1);
        return needed > width || !figures.All(CanStandBeside)
            ? TypstMarkup.Join(figures.Select(Figure))
            : TypstMarkup.FigureRow(
                figures.Select(figure =>
                    (TypstMarkup.Text(figure.Options.Caption ?? ""), (IReadOnlyList<HandoutPicture>)Placed(figure))
                )
            );
    }

    private double Widest(Block.Figure figure) =>
        pictured.PicturesOf(figure).Select(picture => picture.Drawing.Width * scale).DefaultIfEmpty(0).Max();

    private bool CanStandBeside(Block.Figure figure) =>
        figure.Options.Title is null && pictured.PicturesOf(figure).Count > 0;

    // Shown at the size it was drawn for, so that no type gets too small; in large print as much larger as there is room.
    private List<HandoutPicture> Placed(Block.Figure figure)
    {
        var pictures = pictured.PicturesOf(figure);
        var placed = new List<HandoutPicture>();
        foreach (var picture in pictures)
        {
            var isLast = placed.Count == pictures.Count - 1;
            placed.Add(
                Placed(picture) with
                {
                    Note = isLast ? RunningLines.NoteOn(figure.Exhibit, pictured.Front) : "",
                    Cautions = isLast ? [.. Below(pictured.NotesOn(figure))] : [],
                }
            );
        }

        return placed;
    }

    private HandoutPicture Placed(Picture picture)
    {
        var path = string.Create(CultureInfo.InvariantCulture, $"figures/{files.Count + 1}.svg");
        files[path] = Encoding.UTF8.GetBytes(SvgWriter.Write(picture.Drawing, SvgTheme.Print));
        return new HandoutPicture(path, picture.Drawing.Description)
        {
            WidthPt = Math.Round(Math.Min(width, picture.Drawing.Width * scale), 2),
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
