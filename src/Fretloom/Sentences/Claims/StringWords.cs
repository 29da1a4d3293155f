using Fretloom.Claims;
using Fretloom.Neck;

namespace Fretloom.Sentences.Claims;

/// <summary>Writes string sets: <c>strings 4-1</c>, <c>guitar strings 4-1</c>, <c> of strings 4-2</c>.</summary>
internal static class StringWords
{
    /// <summary>An instrument and its strings; no strings stand for all.</summary>
    public static string On(Instrument instrument, StringSet? strings) =>
        instrument.Name + (strings is { } chosen ? $" {Strings(chosen)}" : "");

    /// <summary>Other strings, with the space before; empty when there are none.</summary>
    public static string Of(OtherStrings? of) =>
        of switch
        {
            { Instrument: { } instrument } => $" of {On(instrument, of.Strings)}",
            { Strings: { } strings } => $" of {Strings(strings)}",
            _ => "",
        };

    private static string Strings(StringSet strings) => $"{(strings.Count == 1 ? "string" : "strings")} {strings}";
}
