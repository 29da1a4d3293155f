using BenchmarkDotNet.Attributes;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Tests.Shapes;
using Fretloom.Theory;

namespace Fretloom.Bench;

/// <summary>
/// All one-note-per-string shapes of every triad and seventh chord of a key on the six strings of a guitar, frets 0 to 12,
/// against two ways through every assignment of frets. Compare the ratios, not the times; at least 50 is wanted.
/// </summary>
public class ShapeBenchmarks
{
    private readonly NeckMap map = new(
        Catalogue.Default,
        Key.Parse("C major"),
        Catalogue.Default.AllStrings,
        new FretRange(0, 12)
    );

    private ShapeSource.OfChord[] chords = [];

    /// <summary>The order of the members.</summary>
    [Params(Arrangement.Close, Arrangement.AnyOrder)]
    public Arrangement Arrangement { get; set; }

    private Voicing.OneNotePerString Voicing => new(Arrangement, []);

    [GlobalSetup]
    public void Name() =>
        chords = [
            .. map
                .Key.Triads()
                .Concat(map.Key.Sevenths())
                .Select(chord => new ShapeSource.OfChord(chord.Chord, chord.Numeral)),
        ];

    [Benchmark(Baseline = true)]
    public int Find() => chords.Sum(chord => ShapeFinder.Find(map, chord, Voicing).Count);

    /// <summary>The enumeration that the tests compare with: lists of spots, one by one.</summary>
    [Benchmark]
    public int EveryAssignmentAsTheTestsDo() =>
        chords.Sum(chord => SlowShapes.OneNotePerString(map, chord.Chord, Voicing).Count());

    /// <summary>The strummed shapes of the seven triads, everywhere on the neck.</summary>
    [Benchmark]
    public int FindStrummed() =>
        chords.Take(7).Sum(chord => ShapeFinder.Find(map, chord, new Voicing.Strummed(null, [0])).Count);

    /// <summary>The same enumeration in plain loops over pitches; it counts the assignments that sound each member once, arranged or not.</summary>
    [Benchmark]
    public int EveryAssignmentInPlainLoops()
    {
        var found = 0;
        foreach (var chord in chords)
        {
            foreach (var run in map.Strings.Neighbours(chord.Chord.Notes.Count))
            {
                var open = run.Numbers.Select(number => map.Instrument.String(number).Open.MidiNumber).ToArray();
                found += CountFrom(open, chord.Chord.PitchClasses.Mask, 0, 0);
            }
        }

        return found;
    }

    private int CountFrom(int[] open, int wanted, int at, int sounding)
    {
        if (at == open.Length)
        {
            return sounding == wanted ? 1 : 0;
        }

        var found = 0;
        for (var fret = map.Frets.First; fret <= map.Frets.Last; fret++)
        {
            found += CountFrom(open, wanted, at + 1, sounding | 1 << (open[at] + fret) % 12);
        }

        return found;
    }
}
