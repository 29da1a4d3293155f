using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>The pattern of a scale, whatever its tonic: its name and the intervals of its notes above the tonic.</summary>
/// <remarks>
/// The kinds are the fixed list in <see cref="All"/>; two are equal when they are the same one. Patterns: common practice,
/// checked in the tests against an independent theory library.
/// </remarks>
public sealed class ScaleKind
{
    private ScaleKind(string name, string intervals, params string[] otherNames)
    {
        Name = name;
        OtherNames = [.. otherNames];
        Intervals = intervals.Split(' ').Select(Interval.Parse).ToValueList();
    }

    /// <summary>Major: the Ionian mode.</summary>
    public static ScaleKind Major { get; } = new("major", "P1 M2 M3 P4 P5 M6 M7", "ionian");

    /// <summary>Natural minor: the Aeolian mode. Written <c>minor</c>.</summary>
    public static ScaleKind NaturalMinor { get; } = new("minor", "P1 M2 m3 P4 P5 m6 m7", "natural minor", "aeolian");

    /// <summary>Harmonic minor: natural minor with the seventh raised.</summary>
    public static ScaleKind HarmonicMinor { get; } = new("harmonic minor", "P1 M2 m3 P4 P5 m6 M7");

    /// <summary>Melodic minor, ascending form: natural minor with the sixth and seventh raised.</summary>
    public static ScaleKind MelodicMinor { get; } = new("melodic minor", "P1 M2 m3 P4 P5 M6 M7");

    /// <summary>Dorian: the second mode of the major scale.</summary>
    public static ScaleKind Dorian { get; } = new("dorian", "P1 M2 m3 P4 P5 M6 m7");

    /// <summary>Phrygian: the third mode.</summary>
    public static ScaleKind Phrygian { get; } = new("phrygian", "P1 m2 m3 P4 P5 m6 m7");

    /// <summary>Lydian: the fourth mode.</summary>
    public static ScaleKind Lydian { get; } = new("lydian", "P1 M2 M3 A4 P5 M6 M7");

    /// <summary>Mixolydian: the fifth mode.</summary>
    public static ScaleKind Mixolydian { get; } = new("mixolydian", "P1 M2 M3 P4 P5 M6 m7");

    /// <summary>Locrian: the seventh mode.</summary>
    public static ScaleKind Locrian { get; } = new("locrian", "P1 m2 m3 P4 d5 m6 m7");

    /// <summary>Harmonic major: major with the sixth lowered.</summary>
    public static ScaleKind HarmonicMajor { get; } = new("harmonic major", "P1 M2 M3 P4 P5 m6 M7");

    /// <summary>Double harmonic: major with the second and sixth lowered.</summary>
    public static ScaleKind DoubleHarmonic { get; } =
        new("double harmonic", "P1 m2 M3 P4 P5 m6 M7", "double harmonic major");

    /// <summary>Major pentatonic.</summary>
    public static ScaleKind MajorPentatonic { get; } =
        new("major pentatonic", "P1 M2 M3 P5 M6", "pentatonic", "pentatonic major");

    /// <summary>Minor pentatonic.</summary>
    public static ScaleKind MinorPentatonic { get; } = new("minor pentatonic", "P1 m3 P4 P5 m7", "pentatonic minor");

    /// <summary>The blues scale: minor pentatonic with the lowered fifth. Written <c>blues</c>.</summary>
    public static ScaleKind Blues { get; } = new("blues", "P1 m3 P4 d5 P5 m7", "minor blues");

    /// <summary>The major blues scale: major pentatonic with the lowered third.</summary>
    public static ScaleKind MajorBlues { get; } = new("major blues", "P1 M2 m3 M3 P5 M6");

    /// <summary>The chromatic scale, every half-step, in the spelling that is the same up and down: the notes of major and minor, the second lowered, the fourth raised.</summary>
    public static ScaleKind Chromatic { get; } = new("chromatic", "P1 m2 M2 m3 M3 P4 A4 P5 m6 M6 m7 M7");

    /// <summary>Every kind, seven-note kinds first.</summary>
    public static ValueList<ScaleKind> All { get; } =
    [
        Major,
        NaturalMinor,
        HarmonicMinor,
        MelodicMinor,
        Dorian,
        Phrygian,
        Lydian,
        Mixolydian,
        Locrian,
        HarmonicMajor,
        DoubleHarmonic,
        MajorPentatonic,
        MinorPentatonic,
        Blues,
        MajorBlues,
        Chromatic,
    ];

    /// <summary>The canonical name, in lower case.</summary>
    public string Name { get; }

    /// <summary>Other names that <see cref="TryParse"/> reads.</summary>
    public ValueList<string> OtherNames { get; }

    /// <summary>The intervals above the tonic, ascending, the unison first.</summary>
    public ValueList<Interval> Intervals { get; }

    /// <summary>Whether it uses each letter once, and so can be the scale of a key.</summary>
    public bool IsSevenNote => Intervals.Count == 7;

    /// <summary>Whether the third above the tonic is minor.</summary>
    public bool IsMinor =>
        Intervals.Any(interval => interval is { Steps: 2, Semitones: 3 })
        && !Intervals.Any(interval => interval is { Steps: 2, Semitones: 4 });

    /// <summary>Reads a canonical or other name, in any case.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out ScaleKind? kind)
    {
        kind = All.FirstOrDefault(one => one.IsCalled(text));
        return kind is not null;
    }

    /// <summary>Reads a canonical or other name, in any case.</summary>
    /// <exception cref="FormatException">No kind has that name.</exception>
    public static ScaleKind Parse(string text) =>
        TryParse(text, out var kind) ? kind : throw new FormatException($"'{text}' is not a kind of scale.");

    /// <summary>The canonical name.</summary>
    public override string ToString() => Name;

    private bool IsCalled(string? text) => OtherNames.Append(Name).Contains(text, StringComparer.OrdinalIgnoreCase);
}
