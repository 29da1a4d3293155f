using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

/// <summary>Necks and chords to try, the usual and the odd.</summary>
internal static class ShapeGen
{
    /// <summary>Any quality on any root with at most one accidental; one in three over another bass.</summary>
    public static readonly Gen<Chord> AnyChord =
        from root in Gen.OneOf("C C# Db D Eb E F F# Gb G Ab A Bb B".Split(' '))
        from quality in Gen.Frequency(
            (3, Gen.OneOf("", "m", "dim", "aug", "7", "maj7", "m7", "m7b5", "dim7", "6", "m6", "sus4", "add9")),
            (1, Gen.OneOf(ChordQuality.All.Select(quality => quality.Symbol).ToArray()))
        )
        from bass in Gen.Frequency((2, Gen.Const("")), (1, Gen.OneOf("/C", "/E", "/F#", "/Bb")))
        select Chord.Parse(root + quality + bass);

    /// <summary>Instruments of the catalogue with at most five strings, also tuned at random, sometimes without one string, on at most six frets.</summary>
    public static readonly Gen<NeckMap> ShortMap =
        from name in Gen.OneOf("ukulele", "low-G ukulele", "mandolin", "bass", "banjo", "five-string bass")
        from tuning in Gen.Int[36, 72].Array[Find.Instrument(name).Strings.Count]
        from isTuned in Gen.Frequency((2, Gen.Const(false)), (1, Gen.Const(true)))
        from first in Gen.OneOf(0, 0, 0, 1, 3, 6)
        from count in Gen.OneOf(2, 5, 5, 6, 6)
        from key in Gen.OneOf("C major", "Eb major", "F# harmonic minor", "A minor")
        from left in Gen.OneOf(0, 0, 0, 1, 2, 3)
        let plain = Find.Instrument(name)
        let instrument = isTuned ? plain.Tuned(tuning.Select(midi => Pitch.FromMidiNumber(midi))) : plain
        select new NeckMap(
            instrument,
            Key.Parse(key),
            Without(left, instrument),
            new FretRange(first, first + count - 1)
        );

    private static StringSet Without(int number, Instrument instrument) =>
        new(instrument.AllStrings.Numbers.Where(one => one != number));
}
