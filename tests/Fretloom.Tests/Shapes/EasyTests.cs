using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class EasyTests
{
    /// <summary>Common practice, no source.</summary>
    [Theory]
    [InlineData("C", "xxx010")]
    [InlineData("F", "xxx211")]
    [InlineData("G", "xxx433")]
    [InlineData("Am", "xxx210")]
    [InlineData("D", "xxx232")]
    public void Three_easy_strings_on_guitar_include_the_shapes_of_beginners(string chord, string frets)
    {
        var shapes = Find.Shapes(Find.Map("guitar"), chord, new Voicing.Easy(3, null));

        Assert.Contains(frets, shapes.Select(Find.Frets));
        Assert.All(shapes, shape => Assert.Equal(3, shape.MutedStrings.Count()));
    }

    [Fact]
    public void The_strings_nearest_the_floor_come_first() =>
        Assert.Equal(
            ["xxx433", "xx000x", "x200xx", "320xxx"],
            Find.Shapes(Find.Map("guitar"), "G", new Voicing.Easy(3, null)).Select(Find.Frets)
        );

    [Fact]
    public void A_seventh_chord_on_three_strings_leaves_out_its_fifth()
    {
        var shapes = Find.Shapes(Find.Map("guitar", "3-1"), "C7", new Voicing.Easy(3, null));

        Assert.Equal("310", Find.Frets(shapes[0]));
        Assert.Equal(["5"], shapes[0].MembersLeftOut);
    }

    [Theory]
    [InlineData("Bm7b5", 3, "Bm7b5 needs at least 4 strings.")]
    [InlineData("C", 5, "The set 4-1 has 4 strings; 5 cannot be chosen from it.")]
    [InlineData("C", 0, "The set 4-1 has 4 strings; 0 cannot be chosen from it.")]
    public void A_chord_that_does_not_fit_is_refused_with_a_reason(string chord, int count, string reason) =>
        Assert.Equal(
            reason,
            ShapeFinder.WhyNot(Find.Map("guitar", "4-1"), Chord.Parse(chord), new Voicing.Easy(count, null))
        );

    [Fact]
    public void Nothing_is_missing_against_every_assignment_of_frets() =>
        Gen.Select(ShapeGen.ShortMap, ShapeGen.AnyChord, Gen.Int[1, 5], Gen.Nullable(Gen.Int[1, 6]))
            .Sample(
                (map, chord, count, position) =>
                {
                    var voicing = new Voicing.Easy(count, position);
                    if (ShapeFinder.WhyNot(map, chord, voicing) is null)
                    {
                        Assert.Equal(
                            SlowShapes.Easy(map, chord, count, position).Order(StringComparer.Ordinal),
                            ShapeFinder
                                .Find(map, new ShapeSource.OfChord(chord, null), voicing)
                                .Select(Find.Frets)
                                .Order(StringComparer.Ordinal)
                        );
                    }
                },
                iter: 300
            );
}
