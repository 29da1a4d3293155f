namespace Fretloom.Exercises.Notation;

/// <summary>The head and flags of a written note or rest, from long to short.</summary>
public enum NoteType
{
    /// <summary>A whole note.</summary>
    Whole,

    /// <summary>A half note.</summary>
    Half,

    /// <summary>A quarter note.</summary>
    Quarter,

    /// <summary>An eighth note.</summary>
    Eighth,

    /// <summary>A sixteenth note.</summary>
    Sixteenth,

    /// <summary>A thirty-second note.</summary>
    ThirtySecond,
}

/// <summary>How a length is written with one sign.</summary>
/// <param name="Type">The sign.</param>
/// <param name="IsDotted">Whether a dot makes it half as long again.</param>
/// <param name="IsTriplet">Whether three stand for two.</param>
public readonly record struct WrittenValue(NoteType Type, bool IsDotted = false, bool IsTriplet = false)
{
    /// <summary>Every value there is, the longest first.</summary>
    public static ValueList<WrittenValue> All { get; } =
        Enum.GetValues<NoteType>()
            .SelectMany(type => new WrittenValue[] { new(type, true), new(type), new(type, IsTriplet: true) })
            .Where(value => value is not { Type: NoteType.ThirtySecond, IsDotted: true })
            .OrderByDescending(value => value.Length)
            .ToValueList();

    /// <summary>How long it is.</summary>
    public Beats Length =>
        Beats.FromTicks((4 * Beats.TicksPerQuarter >> (int)Type) * (IsDotted ? 3 : 2) / 2 * (IsTriplet ? 2 : 3) / 3);

    /// <summary>Flags or beams: 1 for an eighth, 2 for a sixteenth; 0 from a quarter up.</summary>
    public int Beams => Math.Max(0, (int)Type - (int)NoteType.Quarter);
}
