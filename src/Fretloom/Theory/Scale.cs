using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>A scale on a tonic, such as A minor pentatonic, with its notes spelled.</summary>
public sealed record Scale
{
    /// <summary>The largest alteration of a tonic, in semitones either way.</summary>
    public const int MaxTonicAlteration = 3;

    /// <summary>Makes a scale.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The tonic is altered by more than <see cref="MaxTonicAlteration"/>.</exception>
    public Scale(NoteName tonic, ScaleKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        if (!IsWritable(tonic))
        {
            throw new ArgumentOutOfRangeException(
                nameof(tonic),
                tonic,
                "A tonic is altered by at most three semitones."
            );
        }

        Tonic = tonic;
        Kind = kind;
        Notes = kind.Intervals.Select(tonic.Plus).ToValueList();
        PitchClasses = PitchClassSet.Of(Notes.Select(note => note.PitchClass));
    }

    /// <summary>The first note.</summary>
    public NoteName Tonic { get; }

    /// <summary>The pattern.</summary>
    public ScaleKind Kind { get; }

    /// <summary>The notes from the tonic up.</summary>
    public ValueList<NoteName> Notes { get; }

    /// <summary>The pitch classes of <see cref="Notes"/>.</summary>
    public PitchClassSet PitchClasses { get; }

    /// <summary>Reads a scale written as by <see cref="ToString"/>; accidentals and kind as in <see cref="Key.Parse"/>.</summary>
    /// <exception cref="FormatException">The text is not a scale.</exception>
    public static Scale Parse(string text) =>
        TryParse(text, out var scale)
            ? scale
            : throw new FormatException($"'{text}' is not a scale such as A minor pentatonic.");

    /// <summary>Reads a scale if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Scale? scale)
    {
        scale = null;
        var words = (text ?? "").Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (
            words.Length == 2
            && TryParseTonic(words[0], out var tonic)
            && IsWritable(tonic)
            && ScaleKind.TryParse(words[1], out var kind)
        )
        {
            scale = new Scale(tonic, kind);
        }

        return scale is not null;
    }

    /// <summary>Reads a tonic: <c>Bb</c>, <c>B-flat</c>, <c>F#</c>, <c>F-sharp</c>, <c>B-double-flat</c>.</summary>
    public static bool TryParseTonic([NotNullWhen(true)] string? text, out NoteName tonic)
    {
        var plain = (text ?? "")
            .Replace("-double-flat", "bb", StringComparison.OrdinalIgnoreCase)
            .Replace("-double-sharp", "##", StringComparison.OrdinalIgnoreCase)
            .Replace("-flat", "b", StringComparison.OrdinalIgnoreCase)
            .Replace("-sharp", "#", StringComparison.OrdinalIgnoreCase);
        return NoteName.TryParse(plain, out tonic);
    }

    /// <summary>Tonic and kind: <c>A minor pentatonic</c>, <c>Bb major</c>.</summary>
    public override string ToString() => $"{Tonic} {Kind}";

    private static bool IsWritable(NoteName tonic) => Math.Abs(tonic.Alteration) <= MaxTonicAlteration;
}
