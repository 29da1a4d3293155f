using System.Globalization;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class ChordEnumerationTests
{
    /// <summary>Guitar and re-entrant ukulele, twelve roots, eleven qualities.</summary>
    [Fact]
    public void Counts_on_frets_0_to_4_are_those_of_the_table()
    {
        var lines = File.ReadAllLines(
            Repository.PathTo("tests", "Fretloom.Tests", "Data", "voicing_counts_frets0to4.csv")
        );
        foreach (var fields in lines.Skip(2).Select(line => line.Split(',')))
        {
            var map = Find.Map(fields[0], frets: "0-4");
            var chord = Chord.Parse(fields[1] + Suffix(fields[2]));
            var found = ChordEnumeration.All(map, chord.PitchClasses).ToList();
            var root = chord.Root.PitchClass.Number;

            var counts = new[]
            {
                found.Count(spots => spots.Count == map.Strings.Count),
                found.Count,
                found.Count(spots => spots.Min(spot => map.Instrument.MidiAt(spot)) % 12 == root),
            };

            Assert.Equal(fields[3..].Select(field => int.Parse(field, CultureInfo.InvariantCulture)), counts);
        }

        Assert.Equal(2 + 264, lines.Length);
    }

    [Fact]
    public void Nothing_is_missing_against_every_assignment_of_frets() =>
        Gen.Select(ShapeGen.ShortMap, ShapeGen.AnyChord)
            .Sample(
                (map, chord) =>
                {
                    var slow = SlowShapes
                        .Assignments(map, map.Strings, muted: true)
                        .Where(spots =>
                            spots
                                .Select(spot => map.Instrument.MidiAt(spot)!.Value % 12)
                                .ToHashSet()
                                .SetEquals(chord.Notes.Select(note => note.PitchClass.Number))
                        );

                    Assert.Equal(
                        slow.Select(spots => Find.Frets(map.Strings, spots)).Order(StringComparer.Ordinal),
                        ChordEnumeration
                            .All(map, chord.PitchClasses)
                            .Select(spots => Find.Frets(map.Strings, spots))
                            .Order(StringComparer.Ordinal)
                    );
                },
                iter: 100
            );

    private static string Suffix(string name) =>
        name switch
        {
            "maj" => "",
            "min" => "m",
            "dom7" => "7",
            _ => name,
        };
}
