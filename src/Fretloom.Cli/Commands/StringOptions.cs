using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Fretloom.Scores.Sound;

namespace Fretloom.Cli.Commands;

/// <summary>Options about single strings of a sound file.</summary>
internal static class StringOptions
{
    /// <summary><c>--mute 6,5</c>: strings that are not heard.</summary>
    public static Option<ValueList<int>> Mute() =>
        new("--mute")
        {
            Description = "Strings that are not heard in a .wav file, such as 6,5.",
            HelpName = "STRINGS",
            CustomParser = given => Each(given, "string numbers such as 6,5", Number, number => number),
        };

    /// <summary><c>--pan "6:-0.5 1:0.5"</c>: where strings stand between left and right.</summary>
    public static Option<ValueList<StringPlace>> Pan() =>
        new("--pan")
        {
            Description = "Where strings stand in a .wav file, from -1, left, to 1, right, such as \"6:-0.5 1:0.5\".",
            HelpName = "PLACES",
            CustomParser = given =>
                Each(
                    given,
                    "places from -1 to 1 by string such as \"6:-0.5 1:0.5\", each string once",
                    Place,
                    place => place.String
                ),
        };

    private static ValueList<T> Each<T>(
        ArgumentResult given,
        string wanted,
        Func<string, T?> read,
        Func<T, int> stringOf
    )
        where T : struct
    {
        var text = given.Tokens.Count == 1 ? given.Tokens[0].Value : "";
        var found = text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries).Select(read).ToList();
        if (
            found.Count == 0
            || found.Contains(null)
            || found.DistinctBy(one => stringOf(one!.Value)).Count() < found.Count
        )
        {
            var name = given.Parent is OptionResult option ? option.Option.Name : "This";
            given.AddError($"{name} takes {wanted}, not '{text}'.");
            return [];
        }

        return found.Select(one => one!.Value).ToValueList();
    }

    private static int? Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0
            ? number
            : null;

    private static StringPlace? Place(string text) =>
        text.Split(':') is [var first, var second]
        && Number(first) is { } number
        && double.TryParse(second, NumberStyles.Float, CultureInfo.InvariantCulture, out var place)
        && place is >= -1 and <= 1
            ? new StringPlace(number, place)
            : null;
}
