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
    private readonly double _width;
    private readonly IEngraver? _engraver;
    private Lazy<EngravedExercise?> _wide;
    private Lazy<EngravedExercise?> _narrow;

    /// <summary>Promises pictures; they are engraved when they are first asked for.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="width">The width of the text, in points.</param>
    /// <param name="engraver">The engraver; null writes plain-text tablature.</param>
    /// <param name="explained">The signs that the page has explained; those of the chord boxes are added.</param>
    public PicturedExercise(Exercise exercise, double width, IEngraver? engraver, ExplainedSigns? explained = null)
    {
        (_exercise, _width, _engraver) = (exercise, width, engraver);
        Boxes = ExerciseBoxes.Of(exercise, width, explained ?? new()).ToValueList();
        (_wide, _narrow) = (Promised(width), Promised(PhoneWidth));
    }

    /// <summary>A chord box for each chord that is held; empty where notes are played one by one.</summary>
    public ValueList<Picture> Boxes { get; }

    /// <summary>The systems as wide as the text; empty when there is no engraver.</summary>
    public ValueList<EngravedSystem> Systems => Wide?.Systems ?? [];

    /// <summary>More and shorter systems, for a phone.</summary>
    public ValueList<EngravedSystem> NarrowSystems => Narrow?.Systems ?? [];

    /// <summary>Whether the systems of some width are still being engraved; those that are not asked for yet are now.</summary>
    public bool IsAwaited => Wide is { IsAwaited: true } | (Wide is { Warning: null } && Narrow is { IsAwaited: true });

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

    private EngravedExercise? Wide => Engraved(ref _wide, _width);

    private EngravedExercise? Narrow => Engraved(ref _narrow, PhoneWidth);

    /// <summary>What a system says, for those who do not see it.</summary>
    public string WordsOf(EngravedSystem system) => ExerciseWords.Bars(_exercise, system.FirstBar, system.LastBar);

    /// <summary>What is said of its widest stretch; null when it is in reach.</summary>
    public string? Caution =>
        _exercise.Widest is { Width: not Width.InReach } widest
            ? $"{Cautions.Opening(widest.Width, _exercise.Player.Hand)}: {widest.Words}."
            : null;

    /// <summary>The general words of caution, to be said once on a page; null when nothing is wide.</summary>
    public string? General => Caution is null ? null : $"{Cautions.General(_exercise.Player.Hand)} {Cautions.Settings}";

    // What is still being engraved is asked for again.
    private EngravedExercise? Engraved(ref Lazy<EngravedExercise?> promised, double points)
    {
        if (promised is { IsValueCreated: true, Value.IsAwaited: true })
        {
            promised = Promised(points);
        }

        return promised.Value;
    }

    private Lazy<EngravedExercise?> Promised(double points) =>
        new(() => _engraver?.Engrave(_exercise, Math.Max(EngravedPage.LeastWidthMm, points / PointsPerMm)));
}
