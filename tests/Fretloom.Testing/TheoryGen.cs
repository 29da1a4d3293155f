using CsCheck;
using Fretloom.Theory;

namespace Fretloom.Testing;

/// <summary>Generators of theory values, each over its whole range unless it says less.</summary>
public static class TheoryGen
{
    /// <summary>The 35 names with up to two accidentals.</summary>
    public static IReadOnlyList<NoteName> WrittenNames { get; } =
    [.. Enumerable.Range(-15, 35).Select(NoteName.FromFifths)];

    public static Gen<NoteName> Name { get; } = Names(NoteName.MaxAlteration);

    public static Gen<NoteName> WrittenName { get; } = OneOf(WrittenNames);

    public static Gen<PitchClass> PitchClass { get; } = Gen.Int[0, 11].Select(number => new PitchClass(number));

    public static Gen<PitchClassSet> Set { get; } = Gen.Int[0, 4095].Select(mask => new PitchClassSet(mask));

    public static Gen<Pitch> Pitch { get; } =
        Gen.Select(Name, Gen.Int[-20, 20], (name, octave) => new Pitch(name, octave));

    /// <summary>Pitches a neck can have, near the middle.</summary>
    public static Gen<Pitch> WrittenPitch { get; } =
        Gen.Select(WrittenName, Gen.Int[0, 8], (name, octave) => new Pitch(name, octave));

    /// <summary>Intervals between written pitches.</summary>
    public static Gen<Interval> Interval { get; } =
        Gen.Select(WrittenPitch, WrittenPitch, (from, to) => from.IntervalTo(to));

    public static Gen<ScaleKind> ScaleKind { get; } = OneOf(Theory.ScaleKind.All);

    public static Gen<Scale> Scale { get; } =
        Gen.Select(Names(Theory.Scale.MaxTonicAlteration), ScaleKind, (tonic, kind) => new Scale(tonic, kind));

    public static Gen<Key> Key { get; } =
        Scale.Where(scale => scale.Kind.IsSevenNote).Select(scale => new Key(scale.Tonic, scale.Kind));

    public static Gen<Degree> Degree { get; } =
        Gen.Select(
            Gen.Int[1, 7],
            Gen.Int[-Theory.Degree.MaxAlteration, Theory.Degree.MaxAlteration],
            (number, alteration) => new Degree(number, alteration)
        );

    public static Gen<ChordQuality> Quality { get; } = OneOf(ChordQuality.All);

    public static Gen<Chord> Chord { get; } =
        Gen.Select(
            Names(Theory.Chord.MaxRootAlteration),
            Quality,
            Names(NoteName.MaxAlteration),
            Gen.Bool,
            (root, quality, bass, isSlash) => new Chord(root, quality, isSlash ? bass : root)
        );

    /// <summary>Numerals without a target.</summary>
    public static Gen<RomanNumeral> PlainNumeral { get; } =
        Gen.Select(
            NumeralDegree(),
            Quality,
            Gen.Int[0, 3],
            (degree, quality, inversion) => new RomanNumeral(degree, quality, Math.Min(inversion, Inversions(quality)))
        );

    public static Gen<RomanNumeral> Numeral { get; } =
        Gen.Select(
            PlainNumeral,
            Gen.Select(
                NumeralDegree(),
                OneOf([.. ChordQuality.All.Where(quality => quality.IsTriad)]),
                (degree, quality) => new RomanNumeral(degree, quality)
            ),
            Gen.Bool,
            (plain, target, isSecondary) =>
                isSecondary ? new RomanNumeral(plain.Degree, plain.Quality, plain.Inversion, target) : plain
        );

    private static Gen<T> OneOf<T>(IReadOnlyList<T> items) => Gen.Int[0, items.Count - 1].Select(index => items[index]);

    private static Gen<NoteName> Names(int most) =>
        Gen.Select(Gen.Int[0, 6], Gen.Int[-most, most], (step, alteration) => new NoteName((Step)step, alteration));

    private static Gen<Degree> NumeralDegree() =>
        Gen.Select(
            Gen.Int[1, 7],
            Gen.Int[-RomanNumeral.MaxAlteration, RomanNumeral.MaxAlteration],
            (number, alteration) => new Degree(number, alteration)
        );

    private static int Inversions(ChordQuality quality) =>
        quality.IsTriad ? 2
        : quality.IsSeventh ? 3
        : 0;
}
