using Fretloom.Claims;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Claims;

/// <summary>What a shape is called: <c>seventh shape</c>, <c>dominant seventh shape</c>, <c>V7 shape</c>.</summary>
internal static class ShapeNouns
{
    private static readonly (string Word, ShapeFamily Family)[] Families =
    [
        ("third", ShapeFamily.Third),
        ("triad", ShapeFamily.Triad),
        ("seventh", ShapeFamily.Seventh),
        ("sixth", ShapeFamily.Sixth),
        ("two-note sixth", ShapeFamily.TwoNoteSixth),
        ("octave", ShapeFamily.Octave),
        ("tenth", ShapeFamily.Tenth),
    ];

    private static readonly NameTable<ShapeQuality> Qualities = new(
        ShapeQuality.All.Select(quality => (quality.Name, quality))
    );

    /// <summary>The words of every name.</summary>
    public static readonly string[] Words =
    [
        .. Families.SelectMany(pair => pair.Word.Split(' ')).Distinct(),
        .. ShapeQuality.All.SelectMany(quality => quality.Name.Split(' ')).Distinct(),
    ];

    /// <summary>Whether the word says that a shape is meant; a chord is meant as its shape.</summary>
    public static bool IsNoun(Token token) => token.IsAny("shape", "shapes", "chord", "chords");

    /// <summary>The name of a family.</summary>
    public static string WordOf(ShapeFamily family) => Families.First(pair => pair.Family == family).Word;

    /// <summary>The family named here, and how many words its name takes; null and 0 when there is none.</summary>
    public static (ShapeFamily? Family, int Count) Family(Cursor at)
    {
        foreach (var (name, family) in Families)
        {
            var words = name.Split(' ');
            var last = at.Peek(words.Length - 1);
            if (
                words[..^1].Index().All(word => at.Peek(word.Index).Is(word.Item))
                && last.IsAny(words[^1], words[^1] + "s")
            )
            {
                return (family, words.Length);
            }
        }

        return (null, 0);
    }

    /// <summary>The quality named here.</summary>
    public static (ShapeQuality? Quality, int Count) Quality(Cursor at) => Qualities.At(at, 0);

    /// <summary>The chord named by its symbol here, as in <c>the G7 shape</c>; null where there is none.</summary>
    public static Chord? Chord(Cursor at) =>
        at.Current.Kind == TokenKind.Word && IsNoun(at.Peek(1)) && Theory.Chord.TryParse(at.Current.Text, out var chord)
            ? chord
            : null;

    /// <summary>The numeral here; its suffix may stand apart, <c>vii m7b5</c>.</summary>
    public static (RomanNumeral? Numeral, int Count) Numeral(Cursor at)
    {
        if (at.Current.Kind != TokenKind.Word)
        {
            return default;
        }

        return IsNoun(at.Peek(2)) && RomanNumeral.TryParse(at.Words(0, 2), out var longer) ? (longer, 2)
            : RomanNumeral.TryParse(at.Current.Text, out var numeral) ? (numeral, 1)
            : default;
    }
}
