using Fretloom.Neck;

namespace Fretloom.Hand;

/// <summary>How some notes are played.</summary>
public enum FingeringKind
{
    /// <summary>One after another.</summary>
    Line,

    /// <summary>Held together, as a chord.</summary>
    Together,

    /// <summary>One after another as one shape, each note keeping its finger in either direction.</summary>
    Arpeggio,
}

/// <summary>Notes that want fingers.</summary>
public sealed record FingeringRequest
{
    /// <summary>Makes a request.</summary>
    /// <param name="player">The hand and the instrument.</param>
    /// <param name="kind">How they are played.</param>
    /// <param name="notes">The notes in order.</param>
    /// <param name="rules">What the fingering of a line must keep to.</param>
    /// <param name="count">How many fingerings at most, at least 1.</param>
    /// <exception cref="ArgumentException">A note or a rule is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such kind, or the count is less than 1.</exception>
    public FingeringRequest(
        Player player,
        FingeringKind kind,
        ValueList<LineNote> notes,
        ValueList<LineRule> rules = default,
        int count = 1
    )
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        Player = player;
        Kind = kind is >= FingeringKind.Line and <= FingeringKind.Arpeggio
            ? kind
            : throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no such kind.");
        Notes = notes.Contains(null) ? throw new ArgumentException("A note is missing.", nameof(notes)) : notes;
        Rules = rules.Contains(null) ? throw new ArgumentException("A rule is missing.", nameof(rules)) : rules;
        Count = count;
    }

    /// <summary>The hand and the instrument.</summary>
    public Player Player { get; }

    /// <summary>How they are played.</summary>
    public FingeringKind Kind { get; }

    /// <summary>The notes in order.</summary>
    public ValueList<LineNote> Notes { get; }

    /// <summary>What the fingering of a line must keep to.</summary>
    public ValueList<LineRule> Rules { get; }

    /// <summary>How many fingerings at most, at least 1.</summary>
    public int Count { get; }

    /// <summary>Works it out.</summary>
    public FingeringAnswer Answer()
    {
        if (Kind == FingeringKind.Line)
        {
            return LineFingering.Find(Player, Notes, Rules, Count);
        }

        if (Rules.Count > 0)
        {
            return Refused("Rules steer lines; for a chord or an arpeggio ask for alternatives.", rule: 0);
        }

        var spots = Notes.OfType<LineNote.At>().Select(note => note.Spot).ToValueList();
        return spots.Count < Notes.Count
                ? Refused("A chord or an arpeggio needs its notes as string and fret, such as 4:9.", FirstWithoutSpot)
            : Kind == FingeringKind.Together ? ChordFingering.Find(Player, spots, Count)
            : ArpeggioFingering.Find(Player, spots, Count);
    }

    private int FirstWithoutSpot => Notes.Select(note => note is LineNote.At).ToValueList().IndexOf(false);

    private static FingeringAnswer Refused(string message, int? note = null, int? rule = null) =>
        FingeringAnswer.Refused(new(message, note, rule));
}
