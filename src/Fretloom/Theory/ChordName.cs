namespace Fretloom.Theory;

/// <summary>A name for a set of notes: a chord, and how the notes depart from its full form.</summary>
/// <param name="Chord">The chord, with the bass that sounds.</param>
/// <param name="Omitted">The members that do not sound, as intervals above the root.</param>
/// <param name="Added">What sounds beyond the members without changing the name; a foreign bass is not counted.</param>
public sealed record ChordName(Chord Chord, ValueList<Interval> Omitted, ValueList<Interval> Added)
{
    /// <summary>Whether every member sounds and nothing else but a foreign bass.</summary>
    public bool IsComplete => Omitted.Count == 0 && Added.Count == 0;

    /// <summary>Whether the root does not sound.</summary>
    public bool IsRootless => Omitted.Count > 0 && Omitted[0] == default;

    /// <summary>The symbol, with what is missing or added in brackets: <c>C9 (no 5)</c>, <c>C13 (no 9, with 11)</c>.</summary>
    public override string ToString()
    {
        var missing = Omitted.Select(interval => interval == default ? "no root" : "no " + interval.ToDegreeText());
        var extra = Added.Select(interval => "with " + interval.ToDegreeText());
        return IsComplete ? Chord.ToString() : $"{Chord} ({string.Join(", ", missing.Concat(extra))})";
    }
}
