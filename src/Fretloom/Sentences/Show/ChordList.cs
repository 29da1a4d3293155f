using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Chords named by symbol or by Roman numeral, between spaces, commas and <c>and</c>.</summary>
/// <remarks>
/// A list goes on behind a comma as long as another chord of its sort follows; a comma before anything else ends the phrase.
/// A note name before a kind of scale is no chord: <c>C and the A minor scale</c>, <c>C, A minor pentatonic</c>; nor is the first
/// stroke of a pattern: <c>C, D DU UDU</c>.
/// </remarks>
internal static class ChordList
{
    /// <summary>Whether a chord symbol stands here.</summary>
    public static bool IsSymbol(Cursor at) => Symbol(at, 0).Count > 0;

    /// <summary>Whether a Roman numeral stands here.</summary>
    public static bool IsNumeral(Cursor at) => Numeral(at, 0).Count > 0 || Joined(at.Current) is not null;

    /// <summary>Reads the symbols from here on; there is at least one.</summary>
    /// <param name="at">The place.</param>
    /// <param name="last">Where the last one begins.</param>
    public static Subject.ChordsBySymbol ReadSymbols(Cursor at, out Token last) => new(Read(at, Symbol, out last));

    /// <summary>Reads the numerals from here on; there is at least one.</summary>
    public static Subject ReadNumerals(Cursor at)
    {
        if (Joined(at.Current) is { } joined)
        {
            at.Skip();
            return new Subject.ChordsByNumeral(joined);
        }

        return new Subject.ChordsByNumeral(Read(at, Numeral, out _));
    }

    // I-IV-V-I.
    private static ValueList<RomanNumeral>? Joined(Token token)
    {
        var words = token.Kind == TokenKind.Word ? token.Text.Split('-') : [];
        var numerals = words
            .Select(word => RomanNumeral.TryParse(word, out var numeral) ? numeral : null)
            .OfType<RomanNumeral>()
            .ToValueList();
        return words.Length > 1 && numerals.Count == words.Length ? numerals : null;
    }

    private static ValueList<T> Read<T>(Cursor at, Func<Cursor, int, (T? Chord, int Count)> chordAt, out Token last)
        where T : class
    {
        var chords = new List<T>();
        last = at.Current;
        for (var skip = 0; chordAt(at, skip) is ({ } chord, var count); skip = Series.Next(at, 0))
        {
            chords.Add(chord);
            last = at.Peek(skip);
            at.Skip(skip + count);
        }

        return chords.ToValueList();
    }

    private static (Chord? Chord, int Count) Symbol(Cursor at, int ahead)
    {
        if (
            at.Peek(ahead).Kind != TokenKind.Word
            || Notes.ReadScale(at, ahead).Scale is not null
            || Strokes.BeginAt(at, ahead)
        )
        {
            return default;
        }

        var isChord = Chord.TryParse(at.Peek(ahead).Text, out var chord);
        return IsSuffix(at.Peek(ahead + 1))
            && Chord.TryParse(at.Peek(ahead).Text + at.Peek(ahead + 1).Text, out var longer)
                ? (longer, 2)
            : isChord ? (chord, 1)
            : default;
    }

    private static (RomanNumeral? Numeral, int Count) Numeral(Cursor at, int ahead)
    {
        if (at.Peek(ahead).Kind != TokenKind.Word)
        {
            return default;
        }

        var isNumeral = RomanNumeral.TryParse(at.Peek(ahead).Text, out var numeral);
        return IsSuffix(at.Peek(ahead + 1)) && RomanNumeral.TryParse(at.Words(ahead, 2), out var longer) ? (longer, 2)
            : isNumeral ? (numeral, 1)
            : default;
    }

    // A suffix may stand apart, vii m7b5, unless it could be something else.
    private static bool IsSuffix(Token token) =>
        token.Kind == TokenKind.Word
        && char.IsAsciiLetterLower(token.Text[0])
        && !RomanNumeral.TryParse(token.Text, out _)
        && !Vocabulary.Knows(token.Text);
}
