using Fretloom.Pages.Pdf;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>The words in which handouts are ordered, at the command line and in the studio.</summary>
public static class BuildWords
{
    /// <summary>The names of the papers.</summary>
    public static IReadOnlyDictionary<string, Paper> Papers { get; } =
        new Dictionary<string, Paper> { ["a4"] = Paper.A4, ["letter"] = Paper.Letter };

    /// <summary>The names of the orders of twelve keys.</summary>
    public static IReadOnlyDictionary<string, KeyOrder> Orders { get; } =
        new Dictionary<string, KeyOrder>
        {
            ["fourths"] = KeyOrder.Fourths,
            ["half-steps"] = KeyOrder.HalfSteps,
            ["fewest-moves"] = KeyOrder.FewestMoves,
        };

    /// <summary>Reads kinds of files, such as <c>pdf</c> and <c>midi</c>, in large or small letters.</summary>
    /// <param name="words">The kinds.</param>
    /// <returns>Null when there are none, or one is not known.</returns>
    public static ValueList<HandoutFormat>? Formats(IEnumerable<string> words)
    {
        var formats = new List<HandoutFormat>();
        foreach (var word in words)
        {
            if (
                word.Length == 0
                || !char.IsAsciiLetter(word[0])
                || !Enum.TryParse<HandoutFormat>(word, true, out var format)
            )
            {
                return null;
            }

            formats.Add(format);
        }

        return formats.Count == 0 ? null : formats.ToValueList();
    }

    /// <summary>Reads in which keys: a tonic <c>D</c>, a key <c>Bb minor</c>, or <c>all</c>.</summary>
    /// <param name="text">The words; null for the lesson's own key.</param>
    /// <param name="order">The order of all keys.</param>
    /// <returns>Null when it is none of these.</returns>
    public static KeyChoice? Keys(string? text, KeyOrder order) =>
        text switch
        {
            null => KeyChoice.Home,
            "all" => KeyChoice.All(order),
            _ when Key.TryParse(text, out var key) => KeyChoice.One(key),
            _ when Scale.TryParseTonic(text, out var tonic) => KeyChoice.On(tonic),
            _ => null,
        };
}
