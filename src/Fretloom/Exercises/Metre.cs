using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Fretloom.Exercises;

/// <summary>A time signature. The <c>default</c> is 4/4.</summary>
/// <remarks>6/8, 9/8 and 12/8 are compound: a beat is a dotted quarter. In the others it is a quarter.</remarks>
public readonly record struct Metre
{
    private readonly int _countLess4;
    private readonly int _unitLess4;

    private Metre(int count, int unit) => (_countLess4, _unitLess4) = (count - 4, unit - 4);

    /// <summary>Every metre there is: 2/4, 3/4, 4/4, 5/4, 6/8, 9/8 and 12/8.</summary>
    public static ValueList<Metre> All { get; } =
    [new(2, 4), new(3, 4), new(4, 4), new(5, 4), new(6, 8), new(9, 8), new(12, 8)];

    /// <summary>The upper figure.</summary>
    public int Count => _countLess4 + 4;

    /// <summary>The lower figure, 4 or 8.</summary>
    public int Unit => _unitLess4 + 4;

    /// <summary>Whether beats fall into three.</summary>
    public bool IsCompound => Unit == 8;

    /// <summary>The length of a bar.</summary>
    public Beats Bar => Beats.Of(Count, Unit);

    /// <summary>The length of a beat, a quarter or a dotted quarter.</summary>
    public Beats Beat => IsCompound ? Beats.Of(3, 8) : Beats.Quarter;

    /// <summary>Beats in a bar.</summary>
    public int BeatsPerBar => Bar / Beat;

    /// <summary>Reads <c>4/4</c>.</summary>
    /// <exception cref="FormatException">The text is none of <see cref="All"/>.</exception>
    public static Metre Parse(string text) =>
        TryParse(text, out var metre) ? metre : throw new FormatException($"'{text}' is not a metre such as 3/4.");

    /// <summary>Reads a metre if the whole text is one of <see cref="All"/>.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out Metre metre)
    {
        foreach (var one in All)
        {
            if (one.ToString() == text)
            {
                metre = one;
                return true;
            }
        }

        metre = default;
        return false;
    }

    /// <summary>The two figures: <c>6/8</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Count}/{Unit}");
}
