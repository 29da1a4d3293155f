using BenchmarkDotNet.Attributes;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Bench;

/// <summary>
/// Fingers for chords. The published shapes are those of the package chords-db, for guitar; divide by their number, 1,957: a chord
/// shall take less than 0.2 ms. The seventh chords of a key, found and fingered, shall take less than 30 ms.
/// </summary>
[MemoryDiagnoser]
public class HandBenchmarks
{
    private readonly Player player = new(Catalogue.Default);
    private ValueList<Spot>[] published = [];

    [GlobalSetup]
    public void Read() => published = [.. PublishedFingerings.Of("guitar").Select(shape => shape.Spots)];

    /// <summary>The best fingers of every published shape.</summary>
    [Benchmark]
    public double PublishedShapes() => published.Sum(spots => ChordFingering.Find(player, spots).Best!.Cost);

    /// <summary>The seven seventh chords of C major, one note per string, close position, on every four neighbouring strings or not, frets 0 to 15.</summary>
    [Benchmark]
    public double SeventhChordsOfAKey()
    {
        var cost = 0.0;
        foreach (var strings in StringSets())
        {
            var map = new NeckMap(player.Instrument, Key.Parse("C major"), strings, new FretRange(0, 15));
            foreach (var chord in map.Key.Sevenths())
            {
                var source = new ShapeSource.OfChord(chord.Chord, chord.Numeral);
                foreach (
                    var shape in ShapeFinder.Find(map, source, new Voicing.OneNotePerString(Arrangement.Close, []))
                )
                {
                    var answer = ArpeggioFingering.Find(player, shape.Spots.ToValueList());
                    cost += answer.Best?.Cost ?? 0;
                }
            }
        }

        return cost;
    }

    private static IEnumerable<StringSet> StringSets() =>
        from set in Enumerable.Range(0, 1 << 6)
        let numbers = Enumerable.Range(1, 6).Where(number => (set >> (number - 1) & 1) == 1).Reverse().ToList()
        where numbers.Count == 4
        select new StringSet(numbers);
}
