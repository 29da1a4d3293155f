using Fretloom.Theory;

namespace Fretloom.Lessons.Syntax;

/// <summary>Words in prose that follow the key: <c>{key}</c>, <c>{degree 5}</c>, <c>{chord V7}</c>.</summary>
public abstract record KeyWords
{
    private const string Forms = "{key}, {degree 5} or {chord V7}";

    private KeyWords() { }

    /// <summary>The words in a key, with Unicode accidentals.</summary>
    public abstract string In(Key key);

    /// <summary>The name of the key: <c>B♭ major</c>.</summary>
    public sealed record NameOfKey : KeyWords
    {
        /// <inheritdoc/>
        public override string In(Key key) => Accidentals.Pretty(key.ToString());

        /// <inheritdoc/>
        public override string ToString() => "{key}";
    }

    /// <summary>The note on a degree: <c>E♭</c>.</summary>
    public sealed record NoteOn(Degree Degree) : KeyWords
    {
        /// <inheritdoc/>
        public override string In(Key key) => Accidentals.Pretty(key.NoteOf(Degree).ToString());

        /// <inheritdoc/>
        public override string ToString() => $"{{degree {Degree}}}";
    }

    /// <summary>The chord of a Roman numeral: <c>F7</c>.</summary>
    public sealed record ChordOn(RomanNumeral Numeral) : KeyWords
    {
        /// <inheritdoc/>
        public override string In(Key key) => Accidentals.Pretty(Numeral.InKey(key).ToString());

        /// <inheritdoc/>
        public override string ToString() => $"{{chord {Numeral}}}";
    }

    /// <summary>Reads the words at the start of a text.</summary>
    /// <param name="text">Begins with a brace.</param>
    /// <param name="length">How many characters they take, both braces included; 0 when the brace is only a brace.</param>
    /// <param name="words">The words, or null.</param>
    /// <returns>What is wrong with them, or null.</returns>
    internal static string? Read(ReadOnlySpan<char> text, out int length, out KeyWords? words)
    {
        words = null;
        length = text.IndexOf('}') + 1;
        if (length == 0 || !char.IsAsciiLetter(text[1]) || text[..length].Contains('\n'))
        {
            length = 0;
            return null;
        }

        var inside = text[1..(length - 1)].Trim().ToString();
        var parts = inside.Split(' ', 2, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var argument = parts.Length == 2 ? parts[1] : "";
        words = parts[0] switch
        {
            "key" when argument.Length == 0 => new NameOfKey(),
            "degree" when Degree.TryParse(argument, out var degree) && IsWritable(degree) => new NoteOn(degree),
            "chord" when RomanNumeral.TryParse(argument, out var numeral) => new ChordOn(numeral),
            _ => null,
        };
        return words is not null ? null
            : parts[0] == "degree" ? $"'{argument}' is not a degree such as 5 or b3."
            : parts[0] == "chord" ? $"'{argument}' is not a Roman numeral such as V7."
            : $"'{{{inside}}}' is not known; expected {Forms}. For a plain brace write \\{{.";
    }

    // Further from the scale some notes of some keys have no name.
    private static bool IsWritable(Degree degree) => Math.Abs(degree.Alteration) <= RomanNumeral.MaxAlteration;

    /// <summary>Fills in every word of a plain text; what is not one of ours stays as it is.</summary>
    internal static string Fill(string text, Key key)
    {
        var filled = new System.Text.StringBuilder(text.Length);
        for (var at = 0; at < text.Length; )
        {
            if (text[at] == '{' && Read(text.AsSpan(at), out var length, out var words) is null && words is not null)
            {
                filled.Append(words.In(key));
                at += length;
            }
            else
            {
                filled.Append(text[at++]);
            }
        }

        return filled.ToString();
    }

    /// <summary>Reports what is wrong with the words of a plain text.</summary>
    internal static void Check(string text, int offset, DiagnosticList found)
    {
        for (var at = text.IndexOf('{'); at >= 0; at = text.IndexOf('{', at + 1))
        {
            if (Read(text.AsSpan(at), out _, out _) is { } problem)
            {
                found.Error(offset + at, problem);
            }
        }
    }
}
