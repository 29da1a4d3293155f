using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Fretloom.Theory;

/// <summary>A place in a key's own scale: 1 to 7, with an alteration only for notes outside the scale.</summary>
/// <remarks>In A minor, C is 3. The <c>default</c> is degree 1. Text: <c>5</c>, <c>b3</c>, <c>#4</c>.</remarks>
public readonly record struct Degree
{
    /// <summary>The largest alteration, in semitones either way: any note name has a degree in any key.</summary>
    public const int MaxAlteration = 16;

    private readonly int _steps;

    /// <summary>Makes a degree.</summary>
    /// <param name="number">1 to 7.</param>
    /// <param name="alteration">Semitones away from the scale's note of that number, -16 to 16.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number or the alteration is out of range.</exception>
    public Degree(int number, int alteration = 0)
    {
        if (number is < 1 or > 7)
        {
            throw new ArgumentOutOfRangeException(nameof(number), number, "A key has degrees 1 to 7.");
        }

        if (alteration is < -MaxAlteration or > MaxAlteration)
        {
            throw new ArgumentOutOfRangeException(
                nameof(alteration),
                alteration,
                "A degree is altered by at most 16 semitones."
            );
        }

        _steps = number - 1;
        Alteration = alteration;
    }

    /// <summary>1 to 7.</summary>
    public int Number => _steps + 1;

    /// <summary>Semitones away from the scale's note.</summary>
    public int Alteration { get; }

    /// <summary>Whether the note belongs to the scale.</summary>
    public bool IsDiatonic => Alteration == 0;

    /// <summary>The degree some steps further up the scale (negative: down), with no alteration.</summary>
    public Degree Plus(int steps) => new(Modulo.Of(_steps + steps, 7) + 1);

    /// <summary>Reads <c>5</c>, <c>b3</c>, <c>#4</c>.</summary>
    /// <exception cref="FormatException">The text is not a degree.</exception>
    public static Degree Parse(string text) =>
        TryParse(text, out var degree)
            ? degree
            : throw new FormatException($"'{text}' is not a degree such as 5 or b3.");

    /// <summary>Reads a degree if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Degree degree)
    {
        degree = default;
        if (text is not { Length: > 0 and <= MaxAlteration + 1 } || text[^1] is < '1' or > '7')
        {
            return false;
        }

        var signs = text[..^1];
        var flats = signs.Count(sign => sign is 'b' or '♭');
        var sharps = signs.Count(sign => sign is '#' or '♯');
        if (flats + sharps != signs.Length || (flats > 0 && sharps > 0))
        {
            return false;
        }

        degree = new Degree(text[^1] - '0', sharps - flats);
        return true;
    }

    /// <summary>The degree in ASCII.</summary>
    public override string ToString() => Accidentals.Ascii(Alteration) + Number.ToString(CultureInfo.InvariantCulture);
}
