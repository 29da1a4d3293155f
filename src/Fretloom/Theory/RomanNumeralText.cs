using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>How Roman numerals are written and read; the rules stand at <see cref="RomanNumeral"/>.</summary>
internal static class RomanNumeralText
{
    private static readonly string[] Numerals = ["I", "II", "III", "IV", "V", "VI", "VII"];

    // What stands in place of nothing (a triad) or of 7 (a seventh chord), by inversion.
    private static readonly string[] TriadFigures = ["", "6", "64"];
    private static readonly string[] SeventhFigures = ["7", "65", "43", "42"];

    // Longer figures before those that end them.
    private static readonly (string Figures, int Inversion)[] TriadReadings = [("64", 2), ("6", 1)];
    private static readonly (string Figures, int Inversion)[] SeventhReadings =
    [
        ("65", 1),
        ("43", 2),
        ("42", 3),
        ("2", 3),
    ];

    public static string Write(RomanNumeral numeral)
    {
        var letters = Numerals[numeral.Degree.Number - 1];
        var target = numeral.Target is null ? "" : "/" + Write(numeral.Target);
        return Accidentals.Ascii(numeral.Degree.Alteration)
            + (numeral.Quality.IsMinorThird ? letters.ToLowerInvariant() : letters)
            + Figured(Suffix(numeral.Quality), numeral.Quality, numeral.Inversion)
            + target;
    }

    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out RomanNumeral? numeral)
    {
        numeral = null;
        if (string.IsNullOrEmpty(text))
        {
            return false;
        }

        if (TryParseChord(text, null, out numeral))
        {
            return true;
        }

        var slash = text.LastIndexOf('/');
        return slash > 0
            && TryParseChord(text[(slash + 1)..], null, out var target)
            && target.Quality.IsTriad
            && target.Inversion == 0
            && TryParseChord(text[..slash], target, out numeral);
    }

    private static bool TryParseChord(string text, RomanNumeral? target, [NotNullWhen(true)] out RomanNumeral? numeral)
    {
        numeral = null;
        var at = Accidentals.Read(text, out var alteration);
        var length = ReadLetters(text.AsSpan(at), out var number, out var isSmall);
        if (length == 0 || Math.Abs(alteration) > RomanNumeral.MaxAlteration)
        {
            return false;
        }

        var suffix = text[(at + length)..];
        suffix = suffix.StartsWith(' ') ? suffix[1..] : suffix;
        if (!TryParseSuffix(suffix, isSmall, out var quality, out var inversion))
        {
            return false;
        }

        numeral = new RomanNumeral(new Degree(number, alteration), quality, inversion, target);
        return true;
    }

    // The longest numeral, in one size of letters: VII before VI before V.
    private static int ReadLetters(ReadOnlySpan<char> text, out int number, out bool isSmall)
    {
        number = 0;
        isSmall = text is ['i' or 'v', ..];
        for (var index = 0; index < Numerals.Length; index++)
        {
            var letters = isSmall ? Numerals[index].ToLowerInvariant() : Numerals[index];
            if (
                text.StartsWith(letters, StringComparison.Ordinal)
                && (number == 0 || letters.Length > Numerals[number - 1].Length)
            )
            {
                number = index + 1;
            }
        }

        return number == 0 ? 0 : Numerals[number - 1].Length;
    }

    private static bool TryParseSuffix(
        string suffix,
        bool isSmall,
        [NotNullWhen(true)] out ChordQuality? quality,
        out int inversion
    )
    {
        foreach (var (figures, number) in SeventhReadings)
        {
            // Alterations may follow the figures: V65b5.
            var at = suffix.IndexOf(figures, StringComparison.Ordinal);
            if (
                at >= 0
                && TryParseQuality($"{suffix[..at]}7{suffix[(at + figures.Length)..]}", isSmall, out quality)
                && quality.IsSeventh
            )
            {
                inversion = number;
                return true;
            }
        }

        foreach (var (figures, number) in TriadReadings)
        {
            if (
                suffix.EndsWith(figures, StringComparison.Ordinal)
                && TryParseQuality(suffix[..^figures.Length], isSmall, out quality)
                && quality.IsTriad
            )
            {
                inversion = number;
                return true;
            }
        }

        inversion = 0;
        return TryParseQuality(suffix, isSmall, out quality);
    }

    // Behind small letters the m may be left out: ii7 is a minor seventh.
    private static bool TryParseQuality(string suffix, bool isSmall, [NotNullWhen(true)] out ChordQuality? quality)
    {
        var isFound =
            (isSmall && ChordQuality.TryParse("m" + suffix, out quality)) || ChordQuality.TryParse(suffix, out quality);
        return isFound && quality!.IsMinorThird == isSmall;
    }

    private static string Suffix(ChordQuality quality) =>
        quality.Symbol switch
        {
            "6" or "m6" => "add6",
            "mb6" or "majb6" => "addb6",
            "maj#6" => "add#6",
            "dim6" => "oadd6",
            "aug6" => "+add6",
            "m7b5" => "ø7",
            "aug" => "+",
            "mMaj7" or "mMaj9" or "mMaj11" or "mMaj13" => "maj" + quality.Symbol[4..],
            var symbol when symbol.StartsWith("dim", StringComparison.Ordinal) => "o" + symbol[3..],
            var symbol when quality.IsMinorThird => symbol[1..],
            var symbol => symbol,
        };

    private static string Figured(string suffix, ChordQuality quality, int inversion)
    {
        if (inversion == 0)
        {
            return suffix;
        }

        return quality.IsTriad
            ? suffix + TriadFigures[inversion]
            : suffix.Replace("7", SeventhFigures[inversion], StringComparison.Ordinal);
    }
}
