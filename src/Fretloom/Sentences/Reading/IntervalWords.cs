namespace Fretloom.Sentences.Reading;

/// <summary>Intervals by the names that teachers give to pairs of notes.</summary>
internal static class IntervalWords
{
    /// <summary>All but thirds, which alone are asked for by name.</summary>
    public static bool IsOther(Token token) =>
        token.IsAny("seconds", "fourths", "fifths", "sixths", "sevenths", "octaves", "tenths");
}
