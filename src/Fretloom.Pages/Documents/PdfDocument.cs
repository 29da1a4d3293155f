using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;
using Fretloom.Neck;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Scores.Engraving;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>How a lesson is printed.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="IsLargePrint">18 point type; all sheets lie on their side where a picture would else be too small.</param>
/// <param name="SourceName">The name of the lesson file, for the last line of each page; empty for none.</param>
public sealed record PrintOptions(Paper Paper = Paper.A4, bool IsLargePrint = false, string SourceName = "");

/// <summary>A lesson as a tagged PDF.</summary>
public static class PdfDocument
{
    private const double PointsPerMm = 72 / 25.4;

    // 18 point type is 1.8 times that of the standard edition. Where a picture has no room for that, 1.3 times is the least.
    private const double LargePrintScale = 1.8;
    private const double LeastLargePrintScale = 1.3;

    /// <summary>Sets a lesson.</summary>
    /// <param name="lesson">The lesson, in the key it is wanted in.</param>
    /// <param name="options">How it is printed.</param>
    /// <param name="typst">The compiler, kept warm by the caller.</param>
    /// <param name="engraver">Engraves the exercises; null writes them as plain-text tablature.</param>
    /// <returns>The file. The same lesson gives the same bytes.</returns>
    /// <exception cref="TypstException">The language of the lesson is not known to the typesetter.</exception>
    public static byte[] Of(Lesson lesson, PrintOptions options, TypstCompiler typst, IEngraver? engraver = null) =>
        Of(Pictured(lesson, options, engraver), options, typst);

    /// <summary>Sets an exercise by itself.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="options">How it is printed.</param>
    /// <param name="typst">The compiler, kept warm by the caller.</param>
    /// <param name="engraver">Engraves it; null writes plain-text tablature.</param>
    /// <param name="caption">Words to the student below the heading; null for none.</param>
    /// <param name="warn">Told why it is plain-text tablature where the engraver failed; null for nobody.</param>
    /// <returns>The file. The same exercise gives the same bytes.</returns>
    /// <exception cref="TypstException">The typesetter cannot be started.</exception>
    public static byte[] Of(
        Exercise exercise,
        PrintOptions options,
        TypstCompiler typst,
        IEngraver? engraver = null,
        string? caption = null,
        Action<string>? warn = null
    )
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(options);
        var front = FrontOf(
            exercise.Name,
            exercise.Instrument,
            exercise.Key,
            exercise.Player,
            exercise.IsLeftHanded,
            exercise.NoteNames
        );
        var keys = exercise.Sections.Select(section => section.Key).Distinct().Count();
        var lines = RunningLines.Of(front, keys > 1 ? "All keys" : Accidentals.Pretty(exercise.Key.ToString()));
        var block = new Block.Exercise(1, 1, exercise, ExerciseOptions.None with { Caption = caption });
        var pictured = Pictured(options, width => new PicturedLesson(front, lines, [block], width, engraver: engraver));
        var file = Of(pictured, options, typst);
        foreach (var warning in pictured.PicturesOf(block).Warnings)
        {
            warn?.Invoke(warning);
        }

        return file;
    }

    /// <summary>Sets an exhibit by itself.</summary>
    /// <param name="exhibit">The exhibit.</param>
    /// <param name="options">How it is printed.</param>
    /// <param name="typst">The compiler, kept warm by the caller.</param>
    /// <returns>The file. The same exhibit gives the same bytes.</returns>
    /// <exception cref="TypstException">The typesetter cannot be started.</exception>
    public static byte[] Of(Exhibit exhibit, PrintOptions options, TypstCompiler typst)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        ArgumentNullException.ThrowIfNull(options);
        var front = FrontOf(
            exhibit.Name,
            exhibit.Map.Instrument,
            exhibit.Map.Key,
            exhibit.Player,
            exhibit.IsLeftHanded,
            exhibit.NoteNames
        );
        var lines = RunningLines.Of(front, Accidentals.Pretty(exhibit.Map.Key.ToString()));
        ValueList<Block> blocks = [new Block.Figure(1, 1, exhibit, FigureOptions.None)];
        if (exhibit.WhatIsMissing is { } missing)
        {
            blocks = [.. blocks, new Block.Paragraph(2, [new Inline.Text(Accidentals.Pretty(missing))])];
        }

        return Of(Pictured(options, width => new PicturedLesson(front, lines, blocks, width)), options, typst);
    }

    // What a lesson would say of itself that holds one block and nothing else.
    private static FrontMatter FrontOf(
        string title,
        Instrument instrument,
        Key key,
        Player player,
        bool isLeftHanded,
        NoteNaming noteNames
    ) =>
        new()
        {
            Title = title,
            Capo = instrument.Capo,
            Defaults = new ShowDefaults(
                instrument,
                key,
                Hand: player.Hand,
                IsLeftHanded: isLeftHanded,
                NoteNames: noteNames,
                IsTurnedOver: player.IsTurnedOver
            ),
        };

    /// <summary>Draws the pictures of a lesson as they are printed.</summary>
    internal static PicturedLesson Pictured(Lesson lesson, PrintOptions options, IEngraver? engraver) =>
        Pictured(options, width => new PicturedLesson(lesson, width, engraver: engraver));

    private static PicturedLesson Pictured(PrintOptions options, Func<double, PicturedLesson> draw)
    {
        if (!options.IsLargePrint)
        {
            return draw(PicturePlan.PageWidth);
        }

        var upright = draw(TextWidth(options.Paper, isLandscape: false) / LeastLargePrintScale);
        return FitsUpright(upright, options.Paper)
            ? upright
            : draw(TextWidth(options.Paper, isLandscape: true) / LargePrintScale);
    }

    // The whole edition lies on its side when one picture would be too small on an upright sheet; a point more is no matter.
    private static bool FitsUpright(PicturedLesson pictured, Paper paper) =>
        pictured.Pictures.All(picture =>
            picture.Drawing.Width * LeastLargePrintScale <= TextWidth(paper, isLandscape: false) + 1
        );

    /// <summary>Sets a lesson whose pictures are drawn.</summary>
    internal static byte[] Of(PicturedLesson pictured, PrintOptions options, TypstCompiler typst)
    {
        var lines = pictured.Lines;
        var isLandscape = options.IsLargePrint && !FitsUpright(pictured, options.Paper);
        var width = TextWidth(options.Paper, isLandscape);
        var scale = options.IsLargePrint ? LargePrintScale : 1;
        var files = new Dictionary<string, byte[]>();
        var front = pictured.Front;
        var body = new BlockTypst(pictured, width, scale, files).Markup(pictured.Blocks);
        var handout = new Handout(front.Title, body)
        {
            Subtitle = front.Subtitle ?? "",
            Byline = lines.Byline,
            HeaderLeft = lines.Left,
            HeaderRight = lines.Right,
            SourceName = options.SourceName,
            Paper = options.Paper,
            IsLargePrint = options.IsLargePrint,
            IsLandscape = isLandscape,
            Language = front.Language.Split('-')[0],
        };
        return handout.ToPdf(typst, files);
    }

    // Margins of 18 mm.
    private static double TextWidth(Paper paper, bool isLandscape)
    {
        var (width, height) = paper == Paper.Letter ? (215.9, 279.4) : (210, 297);
        return ((isLandscape ? height : width) - 36) * PointsPerMm;
    }
}
