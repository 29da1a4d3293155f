using System.Globalization;

namespace Fretloom.Lessons.Syntax;

/// <summary>What the author says about a picture.</summary>
public sealed record FigureOptions
{
    /// <summary>Nothing said.</summary>
    public static FigureOptions None { get; } = new();

    /// <summary>The names of the options in a lesson file.</summary>
    internal static IReadOnlyList<string> Names { get; } = ["caption", "title", "alt", "width"];

    /// <summary>The words under the picture.</summary>
    public string? Caption { get; init; }

    /// <summary>A short heading above the picture.</summary>
    public string? Title { get; init; }

    /// <summary>What to read to somebody who cannot see the picture, instead of the computed description.</summary>
    public string? Alt { get; init; }

    /// <summary>How much of the text's width the picture takes, in hundredths, 20 to 100; null for all of it. It never gets narrower than can be read.</summary>
    public int? WidthPercent { get; init; }

    /// <summary>Reads <c>full</c>, <c>half</c>, <c>third</c>, or <c>20%</c> to <c>100%</c>.</summary>
    internal static bool TryParseWidth(string text, out int percent)
    {
        percent = text switch
        {
            "full" => 100,
            "half" => 50,
            "third" => 33,
            _ when int.TryParse(text.TrimEnd('%'), NumberStyles.None, CultureInfo.InvariantCulture, out var number) =>
                number,
            _ => 0,
        };
        return percent is >= 20 and <= 100;
    }
}
