using Fretloom.Claims;
using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Statements;
using Fretloom.Scores.Engraving;

namespace Fretloom.Pages.Documents;

/// <summary>The pictures of a figure, and what is to be said below it for the sake of the hand.</summary>
internal sealed record FigureDrawing(ValueList<Picture> Pictures, HandNotes Notes);

/// <summary>The neck of a claim's first counterexample, and whether it stands beside the claim; no picture where there is nothing to be seen.</summary>
internal sealed record StatementDrawing(Picture? Picture, bool IsAside);

/// <summary>Draws what the blocks of a lesson show, each time anew.</summary>
internal class Drawings
{
    /// <summary>Draws the pictures of a figure.</summary>
    /// <param name="exhibit">What it shows.</param>
    /// <param name="width">The width there is, in points.</param>
    /// <param name="explained">The signs explained before; those explained here are added.</param>
    public virtual FigureDrawing Of(Exhibit exhibit, double width, ExplainedSigns explained) =>
        new(PicturePlan.For(exhibit, width, null, explained), HandNotes.Of(exhibit));

    /// <summary>Draws the first counterexample of a claim.</summary>
    /// <param name="verdict">What came of it.</param>
    /// <param name="width">The width there is, in points.</param>
    public virtual StatementDrawing Of(ClaimVerdict verdict, double width) =>
        StatementPicture.Of(verdict, width, new()) is var (picture, isAside) ? new(picture, isAside) : new(null, false);

    /// <summary>Promises the pictures of an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="width">The width there is, in points.</param>
    /// <param name="engraver">The engraver; null writes plain-text tablature.</param>
    /// <param name="explained">The signs explained before; those explained here are added.</param>
    public virtual PicturedExercise Of(
        Exercise exercise,
        double width,
        IEngraver? engraver,
        ExplainedSigns explained
    ) => new(exercise, width, engraver, explained);
}
