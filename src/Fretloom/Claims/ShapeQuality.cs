namespace Fretloom.Claims;

/// <summary>A quality of shape by its name in a claim.</summary>
/// <remarks>Names and intervals are those of any theory book.</remarks>
public sealed record ShapeQuality
{
    private ShapeQuality(string name, params ReadOnlySpan<int> semitones)
    {
        Name = name;
        Semitones = ValueList.Create(semitones);
    }

    /// <summary>All of them, thirds first.</summary>
    public static ValueList<ShapeQuality> All { get; } =
    [
        new("major third", 0, 4),
        new("minor third", 0, 3),
        new("major triad", 0, 4, 7),
        new("minor triad", 0, 3, 7),
        new("diminished triad", 0, 3, 6),
        new("augmented triad", 0, 4, 8),
        new("major seventh", 0, 4, 7, 11),
        new("dominant seventh", 0, 4, 7, 10),
        new("minor seventh", 0, 3, 7, 10),
        new("half-diminished seventh", 0, 3, 6, 10),
        new("diminished seventh", 0, 3, 6, 9),
        new("minor-major seventh", 0, 3, 7, 11),
        new("augmented major seventh", 0, 4, 8, 11),
        new("major sixth", 0, 4, 7, 9),
        new("minor sixth", 0, 3, 7, 9),
    ];

    /// <summary>As in a sentence: <c>dominant seventh</c>.</summary>
    public string Name { get; }

    /// <summary>The members above the root in semitones, ascending from 0.</summary>
    public ValueList<int> Semitones { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
