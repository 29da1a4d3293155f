using System.Globalization;
using Fretloom.Claims;

namespace Fretloom.Sentences.Claims;

/// <summary>Writes numbers of things, with the noun in its number.</summary>
internal static class CountWords
{
    /// <summary><c>exactly 3</c>, <c>at most 1</c>.</summary>
    /// <param name="count">The condition.</param>
    /// <param name="fewer">What is said of a smaller number: things are fewer, a length is less.</param>
    public static string Of(Count count, string fewer = "fewer")
    {
        var comparison = count.Comparison switch
        {
            Comparison.AtLeast => "at least",
            Comparison.AtMost => "at most",
            Comparison.MoreThan => "more than",
            Comparison.FewerThan => $"{fewer} than",
            _ => "exactly",
        };
        return $"{comparison} {Number(count.Number)}";
    }

    /// <summary><c>exactly 3 frets</c>, <c>at most 1 fret</c>.</summary>
    public static string Frets(Count count) => $"{Of(count)} {(count.Number == 1 ? "fret" : "frets")}";

    /// <summary><c>2 frets</c>, <c>1 fret</c>.</summary>
    public static string Frets(int count) => $"{Number(count)} {(count == 1 ? "fret" : "frets")}";

    /// <summary><c> moved up 2 frets</c>, with the space before; empty for 0.</summary>
    public static string Moved(int frets) =>
        frets == 0 ? "" : $" moved {(frets > 0 ? "up" : "down")} {Frets(Math.Abs(frets))}";

    /// <summary>In figures.</summary>
    public static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
