using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class TwinTests
{
    private static readonly NeckMap Map = Find.Map("guitar", "4-1", "0-15");

    private static IEnumerable<Shape> Sevenths(NeckMap map) =>
        map
            .Key.Sevenths()
            .SelectMany(chord =>
                ShapeFinder.Find(map, new ShapeSource.OfChord(chord.Chord, chord.Numeral), Find.RootPosition)
            );

    // Worked out by hand: G7 turned about fret 5, where a half-turn of C major lies (as in SymmetryFinderTests).
    [Fact]
    public void The_twin_of_the_dominant_seventh_is_the_half_diminished_seventh()
    {
        var dominant = Find.Shapes(Map, "G7", Find.RootPosition)[0];

        Assert.Equal("4:5 3:4 2:3 1:1", string.Join(' ', dominant.Spots));
        Assert.Equal("4:9 3:7 2:6 1:5", string.Join(' ', Twin.Of(dominant, Map)!.Value));
    }

    /// <summary>In every major and minor key.</summary>
    [Fact]
    public void A_twin_lies_in_the_key_and_is_the_half_turn_of_its_shape()
    {
        var found = 0;
        foreach (var key in Necks.Keys.Where(key => key.Kind == ScaleKind.Major || key.Kind == ScaleKind.NaturalMinor))
        {
            var map = Find.Map("guitar", "4-1", "0-22", key.ToString());
            foreach (var shape in Sevenths(map).Where(shape => Twin.Of(shape, map) is not null))
            {
                var twin = Twin.Of(shape, map)!.Value;
                Assert.All(twin, spot => Assert.True(map.IsInKey(spot)));
                var form = ShapeForm.Of(shape.Strings, twin);
                Assert.Equal(shape.Form().HalfTurned(), form);
                found++;
            }
        }

        Assert.InRange(found, 300, int.MaxValue);
    }

    [Fact]
    public void Strings_without_a_half_turn_have_no_twins() =>
        Assert.All(
            Sevenths(Find.Map("guitar", "5-2", "0-12", "A harmonic minor")),
            shape => Assert.Null(Twin.Of(shape, Find.Map("guitar", "5-2", "0-12", "A harmonic minor")))
        );
}
