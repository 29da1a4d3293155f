using Fretloom.Neck;

namespace Fretloom.Pages.Pictures;

/// <summary>Where the position dots of a neck lie.</summary>
/// <remarks>
/// Common practice, no source: 3, 5, 7, 9, two at 12, and the same an octave up; ukuleles, banjos and the mandolin family
/// have 10 in place of 9, and ukuleles nothing at 3.
/// </remarks>
internal static class Inlays
{
    private static readonly string[] WithTenth = ["ukulele", "banjo", "mandolin", "mandola", "mandocello", "bouzouki"];

    /// <summary>How many dots a fret has, counted from the capo as the picture does.</summary>
    public static int CountAt(Instrument instrument, int fret)
    {
        var onNeck = fret + instrument.Capo;
        var ninth = WithTenth.Any(IsNamed) ? 10 : 9;
        var inOctave = onNeck % 12;
        return onNeck <= 0 || (onNeck == 3 && IsNamed("ukulele")) ? 0
            : inOctave == 0 ? 2
            : inOctave is 3 or 5 or 7 || inOctave == ninth ? 1
            : 0;

        bool IsNamed(string word) => instrument.Name.Contains(word, StringComparison.OrdinalIgnoreCase);
    }
}
