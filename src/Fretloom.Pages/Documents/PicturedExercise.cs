using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Pages.Pictures;
using Fretloom.Scores.Engraving;
using Fretloom.Scores.Tab;

namespace Fretloom.Pages.Documents;

/// <summary>An exercise of a lesson, engraved for the widths that a document shows it in, and what is said beside it.</summary>
internal sealed class PicturedExercise
{
    private const double PointsPerMm = 72 / 25.4;

    // A phone of 360 CSS pixels, less the margins of the page, in points.
    private const double PhoneWidth = 328 * 72 / 96.0;

    private readonly Exercise _exercise;
    private readonly Lazy<EngravedExercise?> _wide;
    private readonly Lazy<EngravedExercise?> _narrow;

    /// <summary>Promises pictures; they are engraved when they are first asked for.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="width">The width of the text, in points.</param>
    /// <param name="engraver">The engraver; null writes plain-text tablature.</param>
    /// <param name="explained">The signs that the page has explained; those of the chord boxes are added.</param>
    public PicturedExercise(Exercise exercise, double width, IEngraver? engraver, ExplainedSigns? explained = null)
    {
        _exercise = exercise;
        Boxes = ExerciseBoxes.Of(exercise, width, explained ?? new()).ToValueList();
        _wide = new(() => Engraved(width));
        _narrow = new(() => Engraved(PhoneWidth));

        EngravedExercise? Engraved(double points) =>
            engraver?.Engrave(exercise, Math.Max(EngravedPage.LeastWidthMm, points / PointsPerMm));
    }

    /// <summary>A chord box for each chord that is held; empty where notes are played one by one.</summary>
    public ValueList<Picture> Boxes { get; }

    /// <summary>The systems as wide as the text; empty when there is no engraver.</summary>
    public ValueList<EngravedSystem> Systems => _wide.Value?.Systems ?? [];

    /// <summary>More and shorter systems, for a phone.</summary>
    public ValueList<EngravedSystem> NarrowSystems => _narrow.Value?.Systems ?? [];

    /// <summary>Plain-text tablature with fingers, to stand in the place of the systems.</summary>
    public string Tablature
    {
        get
        {
            var text = TabText.Write(_exercise, hasFingers: true);
            return text[(text.IndexOf("\n\n", StringComparison.Ordinal) + 2)..];
        }
    }

    /// <summary>Why there are no systems, of those that were asked for; empty when there are.</summary>
    public IEnumerable<string> Warnings =>
        new[] { _wide, _narrow }
            .Where(width => width.IsValueCreated)
            .Select(width => width.Value?.Warning)
            .OfType<string>();

    /// <summary>What a system says, for those who do not see it.</summary>
    public string WordsOf(EngravedSystem system) => ExerciseWords.Bars(_exercise, system.FirstBar, system.LastBar);

    /// <summary>What is said of its widest stretch; null when it is in reach.</summary>
    public string? Caution =>
        _exercise.Widest is { Width: not Width.InReach } widest
            ? $"{Cautions.Opening(widest.Width, _exercise.Player.Hand)}: {widest.Words}."
            : null;

    /// <summary>The general words of caution, to be said once on a page; null when nothing is wide.</summary>
    public string? General => Caution is null ? null : $"{Cautions.General(_exercise.Player.Hand)} {Cautions.Settings}";
}
