using System.Globalization;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pictures;
using Fretloom.Scores.Engraving;

namespace Fretloom.Pages.Html;

/// <summary>Writes exercises as HTML: heading, staff and tablature, the player, the neck, and the same in words.</summary>
internal sealed class ExerciseHtml(HtmlText html, PicturedLesson pictured, PictureHtml drawings, KeptHtml? kept)
{
    // Points: the neck fits a page of 600 CSS pixels, and scrolls on a phone as other necks do.
    private const double NeckWidth = 340;

    /// <summary>Writes an exercise.</summary>
    public void Write(Block.Exercise block)
    {
        if (kept is null)
        {
            WriteAnew(block);
        }
        else
        {
            kept.Write(
                html,
                pictured.PicturesOf(block),
                (block.Number, block.Options, Beside(block), pictured.PicturesOf(block).IsAwaited),
                () => WriteAnew(block)
            );
        }
    }

    private void WriteAnew(Block.Exercise block)
    {
        var id = "exercise-" + Number(block.Number);
        var pictures = pictured.PicturesOf(block);
        html.Open(
                "div",
                ("class", "exercise"),
                ("id", id),
                ("role", "group"),
                ("aria-labelledby", id + "-title"),
                ("data-exercise", PlayerHtml.DataOf(block.Played))
            )
            .Line();
        html.Open("p", ("class", "exercise-title"), ("id", id + "-title"));
        html.Element("b", "Exercise " + Number(block.Number)).Text(" " + block.Title).Close().Line();
        if (block.Options.Caption is { } caption)
        {
            html.Element("p", caption, ("class", "exercise-caption")).Line();
        }

        html.Element("p", Beside(block), ("class", "note")).Line();
        foreach (var (at, boxes) in pictures.Boxes.Index())
        {
            drawings.Write(boxes, $"{id}-boxes-{Number(at + 1)}");
        }

        Staves(block, pictures);
        if (pictures.Caution is { } caution)
        {
            html.Element("p", caution, ("class", "reach")).Line();
        }

        PlayerHtml.Write(html, block.Played, id);
        html.Open("div", ("class", "exercise-neck")).Line();
        var neck = ExerciseNeck.Of(block.Played, NeckWidth);
        drawings.Write(neck, id + "-neck");
        html.Close().Line();
        InWords(block, pictures);
        html.Close();
    }

    private string Beside(Block.Exercise block)
    {
        var player = RunningLines.NoteOn(block.Played, pictured.Front);
        return (player.Length > 0 ? player + ", " : "") + $"{block.Played.Metre}, {ExerciseWords.Tempo(block.Played)}";
    }

    private void Staves(Block.Exercise block, PicturedExercise pictures)
    {
        var isAwaited = pictures.IsAwaited;
        html.Open("div", ("class", "staves"), ("aria-busy", isAwaited ? "true" : null)).Line();
        if (isAwaited || pictures.Systems.Count == 0)
        {
            html.Open("pre", ("tabindex", "0"), ("class", "tablature"))
                .Element("code", pictures.Tablature)
                .Close()
                .Line();
            html.Open("div", ("class", "bars"), ("aria-hidden", "true"));
            for (var bar = 1; bar <= block.Played.Bars; bar++)
            {
                html.Element("span", Number(bar), ("data-bar", Number(bar)));
            }

            html.Close().Line();
        }
        else
        {
            Systems(block, "wide", pictures.Systems, pictures);
            Systems(block, "narrow", pictures.NarrowSystems, pictures);
        }

        html.Close().Line();
    }

    private void Systems(
        Block.Exercise block,
        string kind,
        ValueList<EngravedSystem> systems,
        PicturedExercise pictures
    )
    {
        html.Open("div", ("class", kind)).Line();
        foreach (var (at, system) in systems.Index())
        {
            // The same exercise may stand on the page twice.
            var name = $"staves-{Number(block.Number)}-{kind}-{Number(at + 1)}";
            html.Open("div", ("class", "system"), ("role", "img"), ("aria-label", pictures.WordsOf(system)));
            html.Raw(system.SvgNamed(name)).Close().Line();
        }

        html.Close().Line();
    }

    private void InWords(Block.Exercise block, PicturedExercise pictures)
    {
        html.Open("details").Element("summary", "In words").Line();
        html.Element("p", ExerciseWords.Description(block.Played)).Line();
        drawings.WriteTable(ExerciseWords.Table(block.Played), "Table: " + block.Title);
        foreach (var boxes in pictures.Boxes)
        {
            drawings.WriteTable(boxes.Table, "Table: " + boxes.Drawing.Title);
        }

        html.Close().Line();
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
