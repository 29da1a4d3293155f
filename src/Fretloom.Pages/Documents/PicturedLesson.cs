using System.Globalization;
using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Pictures;
using Fretloom.Scores.Engraving;

namespace Fretloom.Pages.Documents;

/// <summary>A lesson with its pictures drawn, once for every document that shows them.</summary>
internal sealed class PicturedLesson
{
    private readonly Dictionary<int, FigureDrawing> _figures = [];
    private readonly Dictionary<int, ValueList<Picture>> _pictures = [];
    private readonly Dictionary<Block, string> _cautions = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<int, StatementDrawing> _necks = [];
    private readonly Dictionary<int, PicturedExercise> _exercises = [];
    private readonly IEngraver? _engraver;
    private readonly Drawings _drawings;

    /// <summary>What stands in the place of a figure that has no picture.</summary>
    public const string NothingToSee = "No shape fits here.";

    /// <summary>Draws every picture of a lesson.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="width">The width of the text, in points.</param>
    /// <param name="areAlone">Whether the pictures are to be shown one by one: else a sign is explained where it first occurs.</param>
    /// <param name="engraver">Engraves the exercises; null writes them as plain-text tablature.</param>
    /// <param name="drawings">Draws; null draws everything anew.</param>
    public PicturedLesson(
        Lesson lesson,
        double width = PicturePlan.PageWidth,
        bool areAlone = false,
        IEngraver? engraver = null,
        Drawings? drawings = null
    )
        : this(lesson.Front, RunningLines.Of(lesson), lesson.Blocks, width, areAlone, engraver, drawings) { }

    /// <summary>Draws every picture of a page about a lesson.</summary>
    /// <param name="front">Title, language and the like.</param>
    /// <param name="lines">What stands above every page.</param>
    /// <param name="blocks">The text and the pictures.</param>
    /// <param name="width">The width of the text, in points.</param>
    /// <param name="areAlone">Whether the pictures are to be shown one by one: else a sign is explained where it first occurs.</param>
    /// <param name="engraver">Engraves the exercises; null writes them as plain-text tablature.</param>
    /// <param name="drawings">Draws; null draws everything anew.</param>
    public PicturedLesson(
        FrontMatter front,
        RunningLines lines,
        ValueList<Block> blocks,
        double width = PicturePlan.PageWidth,
        bool areAlone = false,
        IEngraver? engraver = null,
        Drawings? drawings = null
    )
    {
        (_engraver, _drawings) = (engraver, drawings ?? new Drawings());
        (Front, Lines, Blocks) = (front, lines, blocks);
        var drawn = DrawnIn(blocks).ToList();
        Figures = drawn.OfType<Block.Figure>().ToValueList();
        Statements = drawn.OfType<Block.Statement>().ToValueList();
        Exercises = drawn.OfType<Block.Exercise>().ToValueList();
        var explained = new ExplainedSigns();
        var said = new HashSet<string>();
        foreach (var block in drawn)
        {
            Draw(block, width, areAlone ? new() : explained, said);
        }
    }

    /// <summary>What the lesson says of itself.</summary>
    public FrontMatter Front { get; }

    /// <summary>What stands above every page.</summary>
    public RunningLines Lines { get; }

    /// <summary>The text and the pictures, in order.</summary>
    public ValueList<Block> Blocks { get; }

    /// <summary>Its figures in order, also those in lists and quotes.</summary>
    public ValueList<Block.Figure> Figures { get; }

    /// <summary>Its claims in order, also those in lists and quotes.</summary>
    public ValueList<Block.Statement> Statements { get; }

    /// <summary>Its exercises in order, also those in lists and quotes.</summary>
    public ValueList<Block.Exercise> Exercises { get; }

    /// <summary>Whether there is nothing but one exercise, whose name is the title: it needs no heading then.</summary>
    public bool IsOneExercise => Blocks is [Block.Exercise one] && one.Title == Front.Title;

    /// <summary>The pictures of an exercise.</summary>
    public PicturedExercise PicturesOf(Block.Exercise exercise) => _exercises[exercise.Number];

    /// <summary>Engraves its exercises at every width that a page shows them in.</summary>
    public void Engrave()
    {
        foreach (var exercise in _exercises.Values)
        {
            _ = (exercise.Systems, exercise.NarrowSystems);
        }
    }

    /// <summary>The neck that shows the first counterexample of a claim, and whether it stands beside it.</summary>
    public StatementDrawing NeckOf(Block.Statement statement) => _necks[statement.Number];

    /// <summary>Every drawing.</summary>
    public IEnumerable<Picture> Pictures =>
        Figures
            .SelectMany(figure => PicturesOf(figure))
            .Concat(Statements.Select(statement => NeckOf(statement).Picture).OfType<Picture>());

    /// <summary>The drawing that the pictures of a figure come from.</summary>
    public FigureDrawing DrawingOf(Block.Figure figure) => _figures[figure.Number];

    /// <summary>The pictures of a figure, as its author describes them.</summary>
    public ValueList<Picture> PicturesOf(Block.Figure figure) => _pictures[figure.Number];

    /// <summary>What is to be said below a figure for the sake of the hand.</summary>
    public HandNotes NotesOn(Block.Figure figure) => _figures[figure.Number].Notes;

    /// <summary>The general words of caution that belong after some blocks, each said once in the lesson.</summary>
    public IEnumerable<string> CautionsAfter(IEnumerable<Block> blocks) =>
        blocks.Select(block => _cautions.GetValueOrDefault(block)).OfType<string>();

    /// <summary>Every picture with the name of its file, without ending: the lesson, the number of the figure, what it shows.</summary>
    public IEnumerable<(string Name, Picture Picture)> NamedPictures(string lessonName) =>
        NamedFigures(lessonName)
            .Concat(
                from statement in Statements
                let neck = NeckOf(statement).Picture
                where neck is not null
                select (string.Create(CultureInfo.InvariantCulture, $"{lessonName}-claim-{statement.Number}"), neck)
            );

    private IEnumerable<(string Name, Picture Picture)> NamedFigures(string lessonName) =>
        from figure in Figures
        from named in PicturesOf(figure).Select((picture, at) => (picture, at))
        let before = PicturesOf(figure).Take(named.at).Count(other => other.Kind == named.picture.Kind)
        let place = before == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"-{before + 1}")
        select (
            string.Create(CultureInfo.InvariantCulture, $"{lessonName}-{figure.Number}-{named.picture.Kind}{place}"),
            named.picture
        );

    private void Draw(Block block, double width, ExplainedSigns explained, HashSet<string> said)
    {
        if (block is Block.Figure figure)
        {
            var room = Math.Max(PicturePlan.SmallestWidth, Share(width, figure));
            var drawing = _drawings.Of(figure.Exhibit, room, explained);
            _figures[figure.Number] = drawing;
            _pictures[figure.Number] = Described(drawing.Pictures, figure.Options.Alt);
            Caution(block, drawing.Notes.General, said);
        }
        else if (block is Block.Statement statement)
        {
            _necks[statement.Number] = _drawings.Of(statement.Verdict, width);
        }
        else if (block is Block.Exercise exercise)
        {
            var pictured = _drawings.Of(exercise.Played, width, _engraver, explained);
            _exercises[exercise.Number] = pictured;
            Caution(block, pictured.General, said);
        }
    }

    private void Caution(Block block, string? general, HashSet<string> said)
    {
        if (general is not null && said.Add(general))
        {
            _cautions[block] = general;
        }
    }

    // Two halves, or three thirds, fill the width together with the room between them.
    private static double Share(double width, Block.Figure figure) =>
        (width + FigureRows.Gutter) * (figure.Options.WidthPercent ?? 100) / 100.0 - FigureRows.Gutter;

    // The author's own description stands for the whole figure: its first picture carries it.
    private static ValueList<Picture> Described(ValueList<Picture> pictures, string? alt) =>
        alt is null
            ? pictures
            : pictures
                .Select(
                    (picture, at) =>
                        at == 0 ? picture with { Drawing = picture.Drawing with { Description = alt } } : picture
                )
                .ToValueList();

    private static IEnumerable<Block> DrawnIn(IEnumerable<Block> blocks) =>
        blocks.SelectMany(block =>
            block switch
            {
                Block.Figure or Block.Statement or Block.Exercise => [block],
                Block.Quote quote => DrawnIn(quote.Content),
                Block.Listing list => list.Entries.SelectMany(entry => DrawnIn(entry)),
                _ => Enumerable.Empty<Block>(),
            }
        );
}
