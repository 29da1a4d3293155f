namespace Fretloom.Pages.Fonts;

/// <summary>
/// The faces of everything Fretloom sets: a serif for reading, a sans for labels and data, and accidentals,
/// which neither of them has. The first two come with the program as files; the accidentals are drawn by it.
/// </summary>
/// <remarks>All members are safe to use from several threads; files are read on first use and kept.</remarks>
public static class TextFaces
{
    /// <summary>Family for running text: Source Serif 4.</summary>
    public const string Serif = "Source Serif 4";

    /// <summary>Family for labels and data: Source Sans 3. Its figures are tabular as they come.</summary>
    public const string Sans = "Source Sans 3";

    /// <summary>Family that holds ♭ ♮ ♯ 𝄫 𝄪 and nothing else.</summary>
    public const string Accidentals = "Fretloom Accidentals";

    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "assets", "fonts");

    /// <summary>Every cut. Serif: 400, 400 italic, 600, 600 italic; sans: 400, 600, 700; accidentals: 400, 600.</summary>
    public static IReadOnlyList<FontFace> All { get; } =
    [
        Shipped(Serif, 400, false, "SourceSerif4_400Regular"),
        Shipped(Serif, 400, true, "SourceSerif4_400Regular_Italic"),
        Shipped(Serif, 600, false, "SourceSerif4_600SemiBold"),
        Shipped(Serif, 600, true, "SourceSerif4_600SemiBold_Italic"),
        Shipped(Sans, 400, false, "SourceSans3_400Regular"),
        Shipped(Sans, 600, false, "SourceSans3_600SemiBold"),
        Shipped(Sans, 700, false, "SourceSans3_700Bold"),
        Drawn(400, "Regular", new AccidentalOutlines(stem: 56, beam: 84)),
        Drawn(600, "Bold", new AccidentalOutlines(stem: 88, beam: 116)),
    ];

    /// <summary>
    /// The cut of a family that is nearest to what is asked: of the wanted slant if there is one, then of the
    /// nearest weight (the heavier of two equally near).
    /// </summary>
    /// <param name="family"><see cref="Serif"/>, <see cref="Sans"/> or <see cref="Accidentals"/>.</param>
    /// <param name="weight">CSS weight, 1 to 1000.</param>
    /// <param name="isItalic">Whether an italic is wanted.</param>
    /// <returns>The cut, or null for a family that is not ours.</returns>
    public static FontFace? Find(string family, int weight = 400, bool isItalic = false) =>
        All.Where(face => string.Equals(face.Family, family, StringComparison.OrdinalIgnoreCase))
            .OrderBy(face => face.IsItalic == isItalic ? 0 : 1)
            .ThenBy(face => Math.Abs(face.Weight - weight))
            .ThenByDescending(face => face.Weight)
            .FirstOrDefault();

    private static FontFace Shipped(string family, int weight, bool isItalic, string file) =>
        new(
            family,
            weight,
            isItalic,
            "woff2",
            () => File.ReadAllBytes(Path.Combine(Folder, file + ".ttf")),
            () => File.ReadAllBytes(Path.Combine(Folder, file + ".woff2"))
        );

    private static FontFace Drawn(int weight, string style, AccidentalOutlines outlines)
    {
        var font = new Lazy<byte[]>(() => TrueTypeWriter.Write(Accidentals, style, weight, outlines.All));
        return new(Accidentals, weight, false, "ttf", () => font.Value, () => font.Value);
    }
}
