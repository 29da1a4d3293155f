using static Fretloom.Neck.CatalogueEntry;
using static Fretloom.Neck.FigureSource;

namespace Fretloom.Neck.Tables;

/// <summary>Lutes, viols, and the small guitars of Iberia, the Canaries and Latin America.</summary>
/// <remarks>
/// What each figure rests on stands in its line; see <see cref="FigureSource"/>. Players of these instruments use several
/// tunings; each stands here in a usual one. Lutes differed in the octaves of their low courses: unisons are assumed.
/// </remarks>
internal static class LutesAndCousins
{
    private static readonly StringSpacing Lute = new(8, 13);
    private static readonly StringSpacing Small = new(8, 11);

    // csharpier-ignore
    public static CatalogueEntry[] Entries { get; } =
    [
        Read("lute in G", "G2/ C3/ F3/ A3/ D4/ G4", 600, 12, Lute, (MeiStringTab, Assumption), "lute", "Renaissance lute"),
        Read("bass viol", "D2 G2 C3 E3 A3 D4", 690, 7, new(9, 15), (CommonPractice, Assumption), "viola da gamba"),
        Read("cavaquinho", "D4 G4 B4 D5", 340, 17, Small, (CommonPractice, Assumption)),
        Read("charango", "G4/ C5/ E5/E4 A4/ E5/", 365, 18, Small, (CommonPractice, Assumption)),
        Read("cuatro", "A3 D4 F#4 B3", 550, 14, new(9, 13), (CommonPractice, Assumption), "Venezuelan cuatro"),
        Read("timple", "G4 C5 E4 A4 D5", 400, 17, Small, (CommonPractice, Assumption)),
        Read("balalaika", "E4 E4 A4", 435, 16, new(9, 11), (CommonPractice, Assumption), "prima balalaika"),
    ];
}
