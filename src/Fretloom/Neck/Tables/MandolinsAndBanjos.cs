using static Fretloom.Neck.CatalogueEntry;
using static Fretloom.Neck.FigureSource;

namespace Fretloom.Neck.Tables;

/// <summary>The mandolin family, bouzoukis and banjos. What each figure rests on stands in its line; see <see cref="FigureSource"/>.</summary>
/// <remarks>
/// Scale lengths from the table of fret positions: 352 mm (13.875 in) for the mandolin, 667 mm (26.25 in) for the banjo.
/// The banjo's fifth string begins at fret 5 of the neck.
/// </remarks>
internal static class MandolinsAndBanjos
{
    private static readonly StringSpacing Mandolin = new(7.6, 13);
    private static readonly StringSpacing Bouzouki = new(9, 15);
    private static readonly StringSpacing Banjo = new(7.5, 12);
    private static readonly StringSpacing FourStringBanjo = new(8, 13);

    // csharpier-ignore
    public static CatalogueEntry[] Entries { get; } =
    [
        Read("mandolin", "G3/ D4/ A4/ E5/", 352, 20, Mandolin, (CommonPractice, FretTable)),
        Read("mandola", "C3/ G3/ D4/ A4/", 420, 20, Mandolin, (CommonPractice, Assumption), "tenor mandola"),
        Read("octave mandolin", "G2/ D3/ A3/ E4/", 559, 20, Bouzouki, (CommonPractice, Assumption)),
        Read("mandocello", "C2/ G2/ D3/ A3/", 635, 20, Bouzouki, (CommonPractice, Assumption)),
        Read("bouzouki", "G2/ D3/ A3/ D4/", 660, 22, Bouzouki, (CommonPractice, Assumption), "Irish bouzouki"),
        Read("Greek bouzouki", "C3/C4 F3/F4 A3/ D4/", 670, 26, Bouzouki, (CommonPractice, Assumption), "four-course bouzouki"),
        Read("banjo", "G4@5 D3 G3 B3 D4", 667, 22, Banjo, (CommonPractice, FretTable), "five-string banjo", "open G banjo"),
        Read("double C banjo", "G4@5 C3 G3 C4 D4", 667, 22, Banjo, (CommonPractice, FretTable)),
        Read("plectrum banjo", "C3 G3 B3 D4", 667, 22, FourStringBanjo, (CommonPractice, FretTable)),
        Read("tenor banjo", "C3 G3 D4 A4", 580, 19, FourStringBanjo, (CommonPractice, Assumption), "four-string banjo"),
        Read("Irish tenor banjo", "G2 D3 A3 E4", 533, 17, FourStringBanjo, (CommonPractice, Assumption)),
    ];
}
