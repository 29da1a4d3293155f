namespace Fretloom.Pages.Scene;

/// <summary>Which part of a text stands at its x.</summary>
public enum Anchor
{
    /// <summary>Its beginning.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}

/// <summary>The faces of a picture.</summary>
public enum Face
{
    /// <summary>Labels and data, regular.</summary>
    Sans,

    /// <summary>Labels and data, bold.</summary>
    SansBold,

    /// <summary>Words, regular.</summary>
    Serif,

    /// <summary>Words, semibold.</summary>
    SerifBold,
}

/// <summary>How a text is set.</summary>
/// <param name="Face">The face.</param>
/// <param name="Size">Points.</param>
public readonly record struct TextStyle(Face Face, double Size)
{
    /// <summary>The smallest type in a picture at its own size, in points.</summary>
    public const double SmallestSize = 9;

    /// <summary>The width of a line of writing in points, without kerning: a little too wide rather than too narrow.</summary>
    public double WidthOf(string text)
    {
        var thousandths = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            thousandths += Advances.Of(Face, rune);
        }

        return thousandths * Size / 1000;
    }
}
