using static Fretloom.Neck.CatalogueEntry;
using static Fretloom.Neck.FigureSource;

namespace Fretloom.Neck.Tables;

/// <summary>Ukuleles and basses. What each figure rests on stands in its line; see <see cref="FigureSource"/>.</summary>
/// <remarks>
/// Scale lengths from the table of fret positions: 345, 380, 430 and 510 mm for the four sizes of ukulele; 863.6 mm (34 in)
/// and 762 mm (30 in) for basses. Basses are written an octave higher than they sound; these are the sounding pitches.
/// </remarks>
internal static class UkulelesAndBasses
{
    private static readonly StringSpacing Ukulele = new(9, 13);
    private static readonly StringSpacing Bass = new(9.5, 19);

    // csharpier-ignore
    public static CatalogueEntry[] Entries { get; } =
    [
        Read("ukulele", "G4 C4 E4 A4", 345, 15, Ukulele, (CommonPractice, FretTable), "re-entrant ukulele", "reentrant ukulele", "high-G ukulele", "soprano ukulele"),
        Read("low-G soprano ukulele", "G3 C4 E4 A4", 345, 15, Ukulele, (CommonPractice, FretTable)),
        Read("ukulele in D", "A4 D4 F#4 B4", 345, 15, Ukulele, (CommonPractice, FretTable), "D ukulele"),
        Read("concert ukulele", "G4 C4 E4 A4", 380, 18, Ukulele, (CommonPractice, FretTable)),
        Read("low-G concert ukulele", "G3 C4 E4 A4", 380, 18, Ukulele, (CommonPractice, FretTable)),
        Read("tenor ukulele", "G4 C4 E4 A4", 430, 18, Ukulele, (CommonPractice, FretTable), "high-G tenor ukulele"),
        Read("low-G ukulele", "G3 C4 E4 A4", 430, 18, Ukulele, (CommonPractice, FretTable), "low-G tenor ukulele"),
        Read("baritone ukulele", "D3 G3 B3 E4", 510, 18, Ukulele, (CommonPractice, FretTable)),
        Read("bass", "E1 A1 D2 G2", 863.6, 20, Bass, (CommonPractice, FretTable), "bass guitar", "four-string bass", "electric bass"),
        Read("short-scale bass", "E1 A1 D2 G2", 762, 20, Bass, (CommonPractice, FretTable)),
        Read("drop D bass", "D1 A1 D2 G2", 863.6, 20, Bass, (CommonPractice, FretTable), "dropped D bass"),
        Read("five-string bass", "B0 E1 A1 D2 G2", 863.6, 22, new(8.5, 18), (CommonPractice, FretTable)),
        Read("six-string bass", "B0 E1 A1 D2 G2 C3", 863.6, 24, new(8.5, 17), (CommonPractice, FretTable)),
        Read("tenor bass", "A1 D2 G2 C3", 863.6, 20, Bass, (CommonPractice, FretTable)),
        Read("bass in guitar tuning", "E1 A1 D2 G2 B2 E3", 762, 22, new(7.5, 13), (CommonPractice, FretTable)),
    ];
}
