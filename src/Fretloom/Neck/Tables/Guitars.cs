using static Fretloom.Neck.CatalogueEntry;
using static Fretloom.Neck.FigureSource;

namespace Fretloom.Neck.Tables;

/// <summary>Guitars in their tunings and sizes. What each figure rests on stands in its line; see <see cref="FigureSource"/>.</summary>
/// <remarks>
/// Scale lengths from the table of fret positions: 648 is 25.5 in, 629 is 24.75 in, 686 is 27 in, and 650, 615, 580 and
/// 530 mm for a full-size classical guitar and its 7/8, 3/4 and 1/2 sizes.
/// </remarks>
internal static class Guitars
{
    private static readonly StringSpacing Steel = new(7.1, 10.4);
    private static readonly StringSpacing Classical = new(8.6, 11.6);
    private static readonly StringSpacing Small = new(8, 10.8);

    // csharpier-ignore
    public static CatalogueEntry[] Entries { get; } =
    [
        Read("guitar", "E2 A2 D3 G3 B3 E4", 648, 22, Steel, (MeiStringTab, FretTable), "standard guitar", "six-string guitar", "steel-string guitar", "acoustic guitar", "electric guitar"),
        Read("guitar in fourths", "E2 A2 D3 G3 C4 F4", 648, 22, Steel, (CommonPractice, FretTable), "guitar in all fourths"),
        Read("guitar in major thirds", "E2 G#2 C3 E3 G#3 C4", 648, 22, Steel, (CommonPractice, FretTable)),
        Read("guitar in lute tuning", "E2 A2 D3 F#3 B3 E4", 648, 22, Steel, (CommonPractice, FretTable)),
        Read("half-step-down guitar", "Eb2 Ab2 Db3 Gb3 Bb3 Eb4", 648, 22, Steel, (CommonPractice, FretTable), "E-flat guitar"),
        Read("drop D guitar", "D2 A2 D3 G3 B3 E4", 648, 22, Steel, (MeiStringTab, FretTable), "dropped D guitar"),
        Read("double drop D guitar", "D2 A2 D3 G3 B3 D4", 648, 22, Steel, (CommonPractice, FretTable)),
        Read("DADGAD guitar", "D2 A2 D3 G3 A3 D4", 648, 22, Steel, (CommonPractice, FretTable)),
        Read("open G guitar", "D2 G2 D3 G3 B3 D4", 648, 22, Steel, (MeiStringTab, FretTable)),
        Read("open D guitar", "D2 A2 D3 F#3 A3 D4", 648, 22, Steel, (MeiStringTab, FretTable)),
        Read("open E guitar", "E2 B2 E3 G#3 B3 E4", 648, 22, Steel, (CommonPractice, FretTable)),
        Read("open A guitar", "E2 A2 E3 A3 C#4 E4", 648, 22, Steel, (MeiStringTab, FretTable)),
        Read("open C guitar", "C2 G2 C3 G3 C4 E4", 648, 22, Steel, (CommonPractice, FretTable)),
        Read("high-strung guitar", "E3 A3 D4 G4 B3 E4", 648, 22, Steel, (CommonPractice, FretTable), "Nashville-tuned guitar"),
        Read("short-scale guitar", "E2 A2 D3 G3 B3 E4", 629, 22, Steel, (MeiStringTab, FretTable)),
        Read("seven-string guitar", "B1 E2 A2 D3 G3 B3 E4", 648, 24, new(7.0, 10.4), (CommonPractice, FretTable)),
        Read("eight-string guitar", "F#1 B1 E2 A2 D3 G3 B3 E4", 686, 24, new(6.9, 10.4), (CommonPractice, FretTable)),
        Read("twelve-string guitar", "E2/E3 A2/A3 D3/D4 G3/G4 B3/ E4/", 648, 20, new(7.6, 10.6), (CommonPractice, FretTable)),
        Read("baritone guitar", "B1 E2 A2 D3 F#3 B3", 686, 22, Steel, (CommonPractice, FretTable), "baritone guitar in B"),
        Read("baritone guitar in A", "A1 D2 G2 C3 E3 A3", 686, 22, Steel, (CommonPractice, FretTable)),
        Read("classical guitar", "E2 A2 D3 G3 B3 E4", 650, 19, Classical, (MeiStringTab, FretTable), "nylon-string guitar", "Spanish guitar", "4/4 guitar", "full-size guitar"),
        Read("7/8 guitar", "E2 A2 D3 G3 B3 E4", 615, 19, Small, (MeiStringTab, FretTable), "seven-eighths guitar", "7/8-size guitar"),
        Read("3/4 guitar", "E2 A2 D3 G3 B3 E4", 580, 19, Small, (MeiStringTab, FretTable), "three-quarter guitar", "3/4-size guitar", "three-quarter-size guitar"),
        Read("1/2 guitar", "E2 A2 D3 G3 B3 E4", 530, 19, Small, (MeiStringTab, FretTable), "half-size guitar", "1/2-size guitar"),
        Read("requinto", "A2 D3 G3 C4 E4 A4", 540, 19, Small, (CommonPractice, Assumption), "requinto guitar"),
        Read("tenor guitar", "C3 G3 D4 A4", 584, 19, new(8, 10.4), (CommonPractice, Assumption)),
    ];
}
