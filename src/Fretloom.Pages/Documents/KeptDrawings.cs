using System.Runtime.CompilerServices;
using Fretloom.Claims;
using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Scores.Engraving;

namespace Fretloom.Pages.Documents;

/// <summary>Draws what was not drawn before. What is drawn is kept as long as the exhibit, exercise or verdict itself is.</summary>
/// <remarks>
/// A picture comes from what it shows, its width, and which of its own signs were explained before; signs that it does not
/// have make no difference. For one thread at a time.
/// </remarks>
internal sealed class KeptDrawings : Drawings
{
    private readonly ConditionalWeakTable<object, List<Drawn>> _drawn = [];

    /// <inheritdoc/>
    public override FigureDrawing Of(Exhibit exhibit, double width, ExplainedSigns explained) =>
        Kept(exhibit, width, null, explained, () => base.Of(exhibit, width, explained));

    /// <inheritdoc/>
    public override StatementDrawing Of(ClaimVerdict verdict, double width) =>
        Kept(verdict, width, null, new(), () => base.Of(verdict, width));

    /// <inheritdoc/>
    public override PicturedExercise Of(
        Exercise exercise,
        double width,
        IEngraver? engraver,
        ExplainedSigns explained
    ) => Kept(exercise, width, engraver, explained, () => base.Of(exercise, width, engraver, explained));

    private T Kept<T>(object shown, double width, IEngraver? engraver, ExplainedSigns explained, Func<T> draw)
        where T : class
    {
        var known = _drawn.GetOrCreateValue(shown);
        var drawn = known.Find(one =>
            one.Width == width && one.Engraver == engraver && one.State == explained.StateOf(one.Signs)
        );
        if (drawn is null)
        {
            var before = explained.Copy();
            var picture = explained.Watch(draw, out var signs);
            drawn = new Drawn(width, engraver, signs, before.StateOf(signs), picture);
            known.Add(drawn);
        }
        else
        {
            explained.AddAll(drawn.Signs);
        }

        return (T)drawn.Picture;
    }

    /// <param name="Width">The width there was.</param>
    /// <param name="Engraver">The engraver there was.</param>
    /// <param name="Signs">The signs that were asked for.</param>
    /// <param name="State">Which of them were explained before.</param>
    /// <param name="Picture">What came of it.</param>
    private sealed record Drawn(
        double Width,
        IEngraver? Engraver,
        IReadOnlyList<string> Signs,
        string State,
        object Picture
    );
}
