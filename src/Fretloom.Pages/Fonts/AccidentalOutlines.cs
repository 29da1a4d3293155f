namespace Fretloom.Pages.Fonts;

/// <summary>
/// Draws the five accidentals for a given weight, on 1000 units to the em. Proportions are fitted by eye to
/// the capitals (670 units) and the stems of Source Serif 4 and Source Sans 3, the faces they stand beside.
/// </summary>
/// <param name="stem">Width of an upright stroke in font units.</param>
/// <param name="beam">Height of a slanted stroke in font units.</param>
internal sealed class AccidentalOutlines(int stem, int beam)
{
    private const int SideBearing = 34;

    /// <summary>Flat, natural, sharp, double flat, double sharp: U+266D to U+266F, U+1D12B, U+1D12A.</summary>
    public IReadOnlyList<Glyph> All => [Flat(), Natural(), Sharp(), DoubleSharp(), DoubleFlat()];

    // Uprights that stand in pairs are finer than a lone one, so that the space between them stays open.
    private int PairedStem => stem * 18 / 25;

    private int BowlWidth => 215 + (stem / 2);

    private Glyph Flat() => new(0x266D, (2 * SideBearing) + stem + BowlWidth - 14, FlatContours());

    private Glyph DoubleFlat()
    {
        var step = stem + BowlWidth - 36;
        return new(
            0x1D12B,
            (2 * SideBearing) + stem + BowlWidth + step - 14,
            [.. FlatContours(), .. FlatContours().Select(contour => contour.MovedBy(step))]
        );
    }

    private Contour[] FlatContours()
    {
        const int left = SideBearing,
            top = 800,
            foot = -24;
        int inner = left + stem,
            right = inner + BowlWidth,
            counterRight = right - (stem * 3 / 2);
        return
        [
            new(
                new(left, top),
                new(inner, top),
                new(inner, 372),
                new(inner + 62, 428, false),
                new(inner + 124, 428),
                new(right, 428, false),
                new(right, 296),
                new(right, 148, false),
                new(left, foot)
            ),
            new(
                new(inner, 296),
                new(inner, 74),
                new(counterRight, 172, false),
                new(counterRight, 290),
                new(counterRight, 428 - beam, false),
                new(inner + 86, 428 - beam),
                new(inner + 40, 428 - beam, false)
            ),
        ];
    }

    private Glyph Natural()
    {
        const int left = SideBearing,
            width = 256;
        int right = left + width;
        return new(
            0x266E,
            width + (2 * SideBearing),
            [
                Upright(left, 92, 790),
                Upright(right - PairedStem, -120, 578),
                SlantedBeam(left, right, 118),
                SlantedBeam(left, right, 500 - beam),
            ]
        );
    }

    private Glyph Sharp()
    {
        const int left = SideBearing,
            width = 424;
        int right = left + width,
            inset = 122 - (PairedStem / 2);
        return new(
            0x266F,
            width + (2 * SideBearing),
            [
                Upright(left + inset, -92, 716),
                Upright(right - inset - PairedStem, -46, 762),
                SlantedBeam(left, right, 148),
                SlantedBeam(left, right, 452 - (beam / 4)),
            ]
        );
    }

    private Glyph DoubleSharp()
    {
        const int left = SideBearing,
            bottom = 150,
            size = 340;
        int square = stem + 46,
            arm = stem * 5 / 8,
            right = left + size,
            top = bottom + size;
        return new(
            0x1D12A,
            size + (2 * SideBearing),
            [
                Rectangle(left, bottom, square),
                Rectangle(right - square, bottom, square),
                Rectangle(left, top - square, square),
                Rectangle(right - square, top - square, square),
                new(
                    new(left, bottom + arm),
                    new(right - arm, top),
                    new(right, top),
                    new(right, top - arm),
                    new(left + arm, bottom),
                    new(left, bottom)
                ),
                new(
                    new(left, top - arm),
                    new(left, top),
                    new(left + arm, top),
                    new(right, bottom + arm),
                    new(right, bottom),
                    new(right - arm, bottom)
                ),
            ]
        );
    }

    private Contour Upright(int x, int from, int to) =>
        new(new(x, from), new(x, to), new(x + PairedStem, to), new(x + PairedStem, from));

    private static Contour Rectangle(int x, int y, int size) =>
        new(new(x, y), new(x, y + size), new(x + size, y + size), new(x + size, y));

    private Contour SlantedBeam(int left, int right, int y)
    {
        var rise = (right - left) / 5;
        return new(new(left, y), new(left, y + beam), new(right, y + rise + beam), new(right, y + rise));
    }
}
