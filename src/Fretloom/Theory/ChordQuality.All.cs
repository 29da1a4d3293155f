namespace Fretloom.Theory;

public sealed partial class ChordQuality
{
    private static readonly ValueList<ChordQuality> UsualOnes =
    [
        .. Triads(),
        .. Sevenths(),
        .. Sixths(),
        .. Ninths(),
        .. Elevenths(),
        .. Thirteenths(),
    ];

    /// <summary>Every quality, the usual ones first and among these the plainest: the order in which names are preferred.</summary>
    public static ValueList<ChordQuality> All { get; } = [.. UsualOnes, .. Rare()];

    /// <summary>The major triad.</summary>
    public static ChordQuality Major { get; } = All[0];

    /// <summary>The minor triad.</summary>
    public static ChordQuality Minor { get; } = All[1];

    private static IEnumerable<ChordQuality> Triads() =>
        [
            Triad("", "major triad", "1 3 5", "maj M"),
            Triad("m", "minor triad", "1 b3 5", "min mi -"),
            Triad("dim", "diminished triad", "1 b3 b5", "o ° mb5 m(b5)"),
            Triad("aug", "augmented triad", "1 3 #5", "+ (#5) M#5 maj#5"),
            new(ChordFamily.Suspended, "sus4", "suspended fourth", "1 4 5", "sus", "", ""),
            new(ChordFamily.Suspended, "sus2", "suspended second", "1 2 5", "", "", ""),
            new(ChordFamily.Dyad, "5", "power chord", "1 5", "", "", ""),
            Triad("majb5", "major triad with flat fifth", "1 3 b5", "(b5) Mb5 b5"),
        ];

    private static IEnumerable<ChordQuality> Sevenths() =>
        [
            Seventh("7", "dominant seventh", "1 3 5 b7", "dom7", "5"),
            Seventh("maj7", "major seventh", "1 3 5 7", "M7 △7 Δ7 △ Δ ma7 Maj7", "5"),
            Seventh("m7", "minor seventh", "1 b3 5 b7", "min7 mi7 -7", "5"),
            Seventh("m7b5", "half-diminished seventh", "1 b3 b5 b7", "ø7 ø min7b5 -7b5 m7(b5)"),
            Seventh("dim7", "diminished seventh", "1 b3 b5 bb7", "o7 °7"),
            Seventh("mMaj7", "minor-major seventh", "1 b3 5 7", "mM7 m(maj7) minMaj7 -△7 mΔ", "5"),
            Suspended("7sus4", "dominant seventh suspended fourth", "1 4 5 b7", "7sus", "5"),
            Seventh("maj7#5", "augmented major seventh", "1 3 #5 7", "augmaj7 +M7 +maj7 M7#5"),
            Seventh("7#5", "augmented seventh", "1 3 #5 b7", "aug7 +7 7+ 7+5"),
            Seventh("7b5", "dominant seventh flat fifth", "1 3 b5 b7", "7-5 7(b5)"),
            Seventh("maj7b5", "major seventh flat fifth", "1 3 b5 7", "M7b5 M7-5"),
            Seventh("dimMaj7", "diminished major seventh", "1 b3 b5 7", "oM7 dim(maj7) mMaj7b5"),
            Suspended("maj7sus4", "major seventh suspended fourth", "1 4 5 7", "M7sus4 maj7sus", "5"),
            Suspended("7sus2", "dominant seventh suspended second", "1 2 5 b7", "", "5"),
            Suspended("maj7sus2", "major seventh suspended second", "1 2 5 7", "M7sus2", "5"),
            Suspended("sus2sus4", "suspended second and fourth", "1 2 4 5", "sus24 sus4add9", ""),
        ];

    private static IEnumerable<ChordQuality> Sixths() =>
        [
            Sixth("6", "added sixth", "1 3 5 6", "M6 maj6 add6 add13", "5"),
            Sixth("m6", "minor added sixth", "1 b3 5 6", "min6 -6 madd6 m(add6)", "5"),
            Added("add9", "added ninth", "1 3 5 9", "2 add2 (add9)", "5"),
            Added("madd9", "minor added ninth", "1 b3 5 9", "m2 madd2 m(add9)", "5"),
            Sixth("69", "added sixth and ninth", "1 3 5 6 9", "6/9 M69 6add9", "5"),
            Sixth("m69", "minor added sixth and ninth", "1 b3 5 6 9", "m6/9 -69 m6add9", "5"),
            Sixth("69#11", "added sixth, ninth and sharp eleventh", "1 3 5 6 9 #11", "6/9#11 6add9#11", "5"),
            Added("add11", "added eleventh", "1 3 5 11", "add4 (add11)"),
            Added("madd11", "minor added eleventh", "1 b3 5 11", "madd4 m(add11)"),
            Added("addb9", "added flat ninth", "1 3 5 b9", "(addb9)"),
            Added("augadd9", "augmented added ninth", "1 3 #5 9", "+add9"),
            Added("add#11", "added sharp eleventh", "1 3 5 #11", "(add#11) add#4"),
        ];

    private static IEnumerable<ChordQuality> Ninths() =>
        [
            Ninth("9", "dominant ninth", "1 3 5 b7 9", "dom9 7add9", "5"),
            Ninth("maj9", "major ninth", "1 3 5 7 9", "M9 △9 Δ9", "5"),
            Ninth("m9", "minor ninth", "1 b3 5 b7 9", "min9 -9", "5"),
            Ninth("7b9", "dominant seventh flat ninth", "1 3 5 b7 b9", "7-9 7(b9)", "5"),
            Ninth("7#9", "dominant seventh sharp ninth", "1 3 5 b7 #9", "7+9 7(#9)", "5"),
            Ninth("mMaj9", "minor-major ninth", "1 b3 5 7 9", "mM9 m(maj9)", "5"),
            Suspended("9sus4", "dominant ninth suspended fourth", "1 4 5 b7 9", "9sus", "5"),
            Suspended("7sus4b9", "dominant seventh suspended fourth flat ninth", "1 4 5 b7 b9", "7b9sus4 7b9sus", "5"),
            Ninth("m9b5", "half-diminished ninth", "1 b3 b5 b7 9", "ø9 -9b5"),
            Ninth("m7b9", "minor seventh flat ninth", "1 b3 5 b7 b9", "-7b9", "5"),
            Ninth("m7b5b9", "half-diminished seventh flat ninth", "1 b3 b5 b7 b9", "ø7b9 øb9 m7b9b5"),
            Ninth("9#5", "augmented ninth", "1 3 #5 b7 9", "aug9 +9 9+"),
            Ninth("9b5", "dominant ninth flat fifth", "1 3 b5 b7 9", "9-5"),
            Ninth("7#5#9", "augmented seventh sharp ninth", "1 3 #5 b7 #9", "7#9#5 7alt alt7 alt +7#9 aug7#9"),
            Ninth("7#5b9", "augmented seventh flat ninth", "1 3 #5 b7 b9", "7b9#5 +7b9 aug7b9"),
            Ninth("7b5b9", "dominant seventh flat fifth flat ninth", "1 3 b5 b7 b9", "7b9b5"),
            Ninth("7b5#9", "dominant seventh flat fifth sharp ninth", "1 3 b5 b7 #9", "7#9b5"),
            Ninth("7b9#9", "dominant seventh flat and sharp ninth", "1 3 5 b7 b9 #9", "7#9b9", "5"),
            Ninth("maj9#5", "augmented major ninth", "1 3 #5 7 9", "augmaj9 +M9 M9#5"),
            Ninth("maj7#9", "major seventh sharp ninth", "1 3 5 7 #9", "M7#9", "5"),
            Ninth("maj7b9", "major seventh flat ninth", "1 3 5 7 b9", "M7b9", "5"),
            Ninth("maj7#5#9", "augmented major seventh sharp ninth", "1 3 #5 7 #9", "+M7#9 augmaj7#9"),
            Ninth("maj9b5", "major ninth flat fifth", "1 3 b5 7 9", "M9b5"),
        ];

    private static IEnumerable<ChordQuality> Elevenths() =>
        [
            Eleventh("11", "dominant eleventh", "1 3 5 b7 9 11", "dom11", "3 5 9"),
            Eleventh("maj11", "major eleventh", "1 3 5 7 9 11", "M11 △11", "3 5 9"),
            Eleventh("m11", "minor eleventh", "1 b3 5 b7 9 11", "min11 -11", "5 9"),
            Eleventh("7#11", "dominant seventh sharp eleventh", "1 3 5 b7 #11", "7#4 7(#11)", "5"),
            Eleventh("maj7#11", "major seventh sharp eleventh", "1 3 5 7 #11", "M7#11 △#11 Δ#11 maj7#4", "5"),
            Eleventh("9#11", "dominant ninth sharp eleventh", "1 3 5 b7 9 #11", "9#4", "5 9"),
            Eleventh("maj9#11", "major ninth sharp eleventh", "1 3 5 7 9 #11", "M9#11 △9#11", "5 9"),
            Eleventh("m7add11", "minor seventh added eleventh", "1 b3 5 b7 11", "m7add4 -7add11", "5"),
            Eleventh("7add11", "dominant seventh added eleventh", "1 3 5 b7 11", "7add4", "5"),
            Eleventh("mMaj11", "minor-major eleventh", "1 b3 5 7 9 11", "mM11 m(maj11)", "5 9"),
            Eleventh("m11b5", "half-diminished eleventh", "1 b3 b5 b7 9 11", "ø11", "9"),
            Eleventh("11b9", "dominant eleventh flat ninth", "1 3 5 b7 b9 11", "7b9add11", "3 5"),
            Eleventh("7b9#11", "dominant seventh flat ninth sharp eleventh", "1 3 5 b7 b9 #11", "7#11b9", "5"),
            Eleventh("7#9#11", "dominant seventh sharp ninth sharp eleventh", "1 3 5 b7 #9 #11", "7#11#9", "5"),
            Eleventh("maj7#9#11", "major seventh sharp ninth sharp eleventh", "1 3 5 7 #9 #11", "M7#9#11", "5"),
            Eleventh("9#5#11", "augmented ninth sharp eleventh", "1 3 #5 b7 9 #11", "+9#11", "9"),
        ];

    // The natural eleventh is left out of thirteenth chords on a major third, and may be played all the same.
    private static IEnumerable<ChordQuality> Thirteenths() =>
        [
            Thirteenth("13", "dominant thirteenth", "1 3 5 b7 9 13", "dom13", "5 9", "11"),
            Thirteenth("maj13", "major thirteenth", "1 3 5 7 9 13", "M13 △13", "5 9", "11"),
            Thirteenth("m13", "minor thirteenth", "1 b3 5 b7 9 13", "min13 -13", "5 9", "11"),
            Suspended("13sus4", "dominant thirteenth suspended fourth", "1 4 5 b7 9 13", "13sus", "5 9"),
            Thirteenth("7b13", "dominant seventh flat thirteenth", "1 3 5 b7 b13", "7(b13)", "5", ""),
            Thirteenth("9b13", "dominant ninth flat thirteenth", "1 3 5 b7 9 b13", "", "5", ""),
            Thirteenth("13b9", "dominant thirteenth flat ninth", "1 3 5 b7 b9 13", "13(b9)", "5", "11"),
            Thirteenth("13#9", "dominant thirteenth sharp ninth", "1 3 5 b7 #9 13", "13(#9)", "5", "11"),
            Thirteenth("13#11", "dominant thirteenth sharp eleventh", "1 3 5 b7 9 #11 13", "13#4 13(#11)", "5 9", ""),
            Thirteenth("maj13#11", "major thirteenth sharp eleventh", "1 3 5 7 9 #11 13", "M13#11 △13#11", "5 9", ""),
            Thirteenth("7b9b13", "dominant seventh flat ninth flat thirteenth", "1 3 5 b7 b9 b13", "7b13b9", "5", "11"),
            Thirteenth("7#9b13", "dominant seventh sharp ninth flat thirteenth", "1 3 5 b7 #9 b13", "7b13#9", "5", ""),
            Thirteenth(
                "7#11b13",
                "dominant seventh sharp eleventh flat thirteenth",
                "1 3 5 b7 #11 b13",
                "7b13#11",
                "5",
                ""
            ),
            Thirteenth("13b5", "dominant thirteenth flat fifth", "1 3 b5 b7 9 13", "", "9", ""),
            Thirteenth("13b5b9", "dominant thirteenth flat fifth flat ninth", "1 3 b5 b7 b9 13", "13b9b5", "", ""),
            Thirteenth("mMaj13", "minor-major thirteenth", "1 b3 5 7 9 13", "mM13 m(maj13)", "5 9", "11"),
        ];

    // Stacks of odd scales, and of sixths that are better known as inversions of seventh chords. For stacks of fourths no usual
    // symbol exists; the names say what is stacked.
    private static IEnumerable<ChordQuality> Rare() =>
        [
            Triad("dimbb3", "diminished triad with diminished third", "1 bb3 b5", "obb3 dim(bb3)"),
            Seventh("m7#5", "minor seventh sharp fifth", "1 b3 #5 b7", "-7#5 min7#5"),
            Sixth("mb6", "minor added flat sixth", "1 b3 5 b6", "maddb6 m(addb6) m(b6)"),
            Sixth("majb6", "added flat sixth", "1 3 5 b6", "addb6 (addb6) Mb6"),
            Sixth("aug6", "augmented added sixth", "1 3 #5 6", "+6 6#5 augadd6"),
            Sixth("dimb6", "diminished added flat sixth", "1 b3 b5 b6", "ob6 dimaddb6"),
            Sixth("dim6", "diminished added sixth", "1 b3 b5 6", "o6 dimadd6 m6b5"),
            Sixth("maj#6", "added augmented sixth", "1 3 5 #6", "add#6 (add#6) M#6"),
            Sixth("6b5", "added sixth with flat fifth", "1 3 b5 6", "M6b5 maj6b5"),
            Sixth("dimb6bb3", "diminished added flat sixth with diminished third", "1 bb3 b5 b6", "ob6bb3"),
            Seventh("mbb7", "minor diminished seventh", "1 b3 5 bb7", "m(bb7) minbb7"),
            Seventh("dim7bb3", "diminished seventh with diminished third", "1 bb3 b5 bb7", "o7bb3"),
            Ninth("dim9", "diminished ninth", "1 b3 b5 bb7 9", "o9"),
            Ninth("dim7b9", "diminished seventh flat ninth", "1 b3 b5 bb7 b9", "o7b9"),
            Ninth("mbb7b9", "minor diminished seventh flat ninth", "1 b3 5 bb7 b9", "m(bb7b9)"),
            Ninth("dim7bb3b9", "diminished seventh flat ninth with diminished third", "1 bb3 b5 bb7 b9", "o7bb3b9"),
            new(ChordFamily.Quartal, "quartal3", "quartal stack of three", "1 4 b7", "", "", ""),
            new(ChordFamily.Quartal, "quartal4", "quartal stack of four", "1 4 b7 b10", "quartal", "", ""),
            new(ChordFamily.Quartal, "quartal5", "quartal stack of five", "1 4 b7 b10 b13", "", "", ""),
        ];

    private static ChordQuality Triad(string symbol, string name, string members, string others) =>
        new(ChordFamily.Triad, symbol, name, members, others, "", "");

    private static ChordQuality Sixth(
        string symbol,
        string name,
        string members,
        string others,
        string omissible = ""
    ) => new(ChordFamily.Sixth, symbol, name, members, others, omissible, "");

    private static ChordQuality Added(
        string symbol,
        string name,
        string members,
        string others,
        string omissible = ""
    ) => new(ChordFamily.Added, symbol, name, members, others, omissible, "");

    private static ChordQuality Suspended(
        string symbol,
        string name,
        string members,
        string others,
        string omissible
    ) => new(ChordFamily.Suspended, symbol, name, members, others, omissible, "");

    private static ChordQuality Seventh(
        string symbol,
        string name,
        string members,
        string others,
        string omissible = ""
    ) => new(ChordFamily.Seventh, symbol, name, members, others, omissible, "");

    private static ChordQuality Ninth(
        string symbol,
        string name,
        string members,
        string others,
        string omissible = ""
    ) => new(ChordFamily.Ninth, symbol, name, members, others, omissible, "");

    private static ChordQuality Eleventh(string symbol, string name, string members, string others, string omissible) =>
        new(ChordFamily.Eleventh, symbol, name, members, others, omissible, "");

    private static ChordQuality Thirteenth(
        string symbol,
        string name,
        string members,
        string others,
        string omissible,
        string addable
    ) => new(ChordFamily.Thirteenth, symbol, name, members, others, omissible, addable);
}
