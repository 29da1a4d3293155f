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
/// <param name="Player">The hand and the instrument.</param>
/// <param name="Kind">How they are played.</param>
/// <param name="Notes">The notes in order.</param>
/// <param name="Rules">What the fingering of a line must keep to.</param>
/// <param name="Count">How many fingerings at most, at least 1.</param>
public sealed record FingeringRequest(
    Player Player,
    FingeringKind Kind,
    ValueList<LineNote> Notes,
    ValueList<LineRule> Rules = default,
    int Count = 1
)
{
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
