using Fretloom.Hand.Lines;
using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>Strings, frets and fingers for notes that are played one after another.</summary>
/// <remarks>
/// The model is in <c>docs/hand.md</c>, section Lines. What comes back is its exact optimum; costs are whole thousandths, so
/// that nothing hangs on rounding. A line played backwards gets the same fingers.
/// </remarks>
public static class LineFingering
{
    /// <summary>The most notes of all fingerings together that come back.</summary>
    public const int MostNotesOfAll = 1_000_000;

    // Where each two fingerings part is kept: some 50 MB.
    private const int MostFingerings = 5_000;

    /// <summary>The best fingerings of a line.</summary>
    /// <remarks>
    /// Two fingerings differ when a note has another spot or finger. Equally good ones come in the order of their first
    /// difference, the lower string number and then the lower finger first. At most 5,000 come back, and fewer of very long
    /// lines: notes times fingerings is at most a million.
    /// </remarks>
    /// <param name="player">The hand and the instrument. The thumb is not used.</param>
    /// <param name="notes">The notes in order.</param>
    /// <param name="rules">What the teacher asks, in any order.</param>
    /// <param name="count">How many fingerings at most, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is less than 1.</exception>
    public static FingeringAnswer Find(
        Player player,
        ValueList<LineNote> notes,
        ValueList<LineRule> rules,
        int count = 1
    )
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        if (BadNotes.In(player, notes, rules) is { } refusal)
        {
            return FingeringAnswer.Refused(refusal);
        }

        var layers = new Layers(MoveTable.Of(player), player, notes);
        var graph = layers.Graph(rules);
        if (graph.DeadEnd is not null)
        {
            return FingeringAnswer.Refused(Contradiction.Of(layers, notes, rules));
        }

        var ranked = new RankedLines(graph).Take(
            (int)Math.Clamp(MostNotesOfAll / notes.Count, 1, Math.Min(count, MostFingerings))
        );
        return FingeringAnswer.Found(ranked.Select(labels => LineReport.Of(player, graph, labels)).ToValueList());
    }

    /// <summary>The best fingerings of an arpeggio or a stretch of scale that is played up, down, or both ways.</summary>
    /// <remarks>
    /// A spot that comes again has the same finger again; up and down cost the same, so the direction cannot matter. Up to 400
    /// notes; where many of them come again, fewer fingerings may come back than asked, or a refusal.
    /// </remarks>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="spots">The spots in one of the directions.</param>
    /// <param name="count">How many fingerings at most, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The count is less than 1.</exception>
    public static FingeringAnswer FindBothWays(Player player, ValueList<Spot> spots, int count = 1)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return new BothWays(player, spots).Find(count);
    }
}
