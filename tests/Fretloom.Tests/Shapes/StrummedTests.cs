using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class StrummedTests
{
    private static readonly Voicing InFirstPosition = new Voicing.Strummed(1, [0]);
    private static readonly Voicing Anywhere = new Voicing.Strummed(null, [0]);

    /// <summary>Common practice, no source: the shapes that teachers show first.</summary>
    [Theory]
    [InlineData("C", "x32010")]
    [InlineData("A", "x02220")]
    [InlineData("G", "320003")]
    [InlineData("E", "022100")]
    [InlineData("D", "xx0232")]
    [InlineData("Am", "x02210")]
    [InlineData("Em", "022000")]
    [InlineData("Dm", "xx0231")]
    [InlineData("F", "133211")]
    [InlineData("Bm", "x24432")]
    [InlineData("F#m", "244222")]
    [InlineData("Bb", "x13331")]
    [InlineData("B", "x24442")]
    [InlineData("G7", "320001")]
    [InlineData("B7", "x21202")]
    [InlineData("E7", "020100")]
    [InlineData("A7", "x02020")]
    [InlineData("D7", "xx0212")]
    [InlineData("C7", "x32310")]
    [InlineData("Am7", "x02010")]
    [InlineData("Em7", "020000")]
    [InlineData("Dm7", "xx0211")]
    [InlineData("Cmaj7", "x32000")]
    [InlineData("Dsus4", "xx0233")]
    [InlineData("Asus2", "x02200")]
    [InlineData("C6", "x32210")]
    public void The_first_shape_on_guitar_is_the_one_that_is_taught_first(string chord, string frets)
    {
        Assert.Equal(frets, Find.Frets(Find.Shapes(Find.Map("guitar"), chord, InFirstPosition)[0]));
        Assert.Equal(frets, Find.Frets(Find.Shapes(Find.Map("guitar"), chord, Anywhere)[0]));
    }

    /// <summary>Common practice, no source; the same on re-entrant and low-G strings.</summary>
    [Theory]
    [InlineData("C", "0003")]
    [InlineData("F", "2010")]
    [InlineData("G", "0232")]
    [InlineData("Am", "2000")]
    [InlineData("G7", "0212")]
    [InlineData("C7", "0001")]
    [InlineData("Dm", "2210")]
    [InlineData("Em", "0432")]
    [InlineData("A", "2100")]
    [InlineData("D", "2220")]
    [InlineData("Bb", "3211")]
    public void The_first_shape_on_ukulele_is_the_one_that_is_taught_first(string chord, string frets)
    {
        Assert.Equal(frets, Find.Frets(Find.Shapes(Find.Map("ukulele"), chord, InFirstPosition)[0]));
        Assert.Equal(frets, Find.Frets(Find.Shapes(Find.Map("low-G ukulele"), chord, InFirstPosition)[0]));
    }

    /// <summary>Common practice, no source.</summary>
    [Theory]
    [InlineData("mandolin", "G", "0023")]
    [InlineData("mandolin", "D", "2002")]
    [InlineData("mandolin", "C", "0230")]
    [InlineData("mandolin", "Am", "2230")]
    [InlineData("baritone ukulele", "G", "0003")]
    [InlineData("banjo", "G", "50000")]
    [InlineData("banjo", "C", "52012")]
    [InlineData("banjo", "D", "x0234")]
    public void Other_instruments_that_leave_the_bass_to_others_sound_all_their_strings(
        string instrument,
        string chord,
        string frets
    ) => Assert.Equal(frets, Find.Frets(Find.Shapes(Find.Map(instrument), chord, InFirstPosition)[0]));

    [Theory]
    [InlineData("bass", "C", "x320")]
    [InlineData("bass", "G", "3200")]
    [InlineData("five-string bass", "C", "13320")]
    public void On_a_bass_the_root_lies_lowest(string instrument, string chord, string frets) =>
        Assert.Equal(frets, Find.Frets(Find.Shapes(Find.Map(instrument), chord, InFirstPosition)[0]));

    /// <summary>Common practice, no source.</summary>
    [Theory]
    [InlineData("C/G", "332010")]
    [InlineData("D/F#", "200232")]
    [InlineData("G/B", "x20003")]
    [InlineData("Am/G", "302210")]
    public void The_bass_of_a_slash_chord_lies_lowest(string chord, string frets) =>
        Assert.Equal(frets, Find.Frets(Find.Shapes(Find.Map("guitar"), chord, InFirstPosition)[0]));

    [Fact]
    public void In_fifth_position_all_notes_lie_at_frets_5_to_8()
    {
        var shapes = Find.Shapes(Find.Map("guitar"), "C", new Voicing.Strummed(5, []));

        Assert.NotEmpty(shapes);
        Assert.All(shapes.SelectMany(shape => shape.Spots), spot => Assert.InRange(spot.Fret, 5, 8));
    }

    [Fact]
    public void A_shape_says_which_member_it_leaves_out()
    {
        Assert.Equal(["5"], Find.Shapes(Find.Map("guitar"), "C7", InFirstPosition)[0].MembersLeftOut);
        Assert.Empty(Find.Shapes(Find.Map("guitar"), "G7", InFirstPosition)[0].MembersLeftOut);
    }

    [Fact]
    public void The_open_short_string_of_a_banjo_counts_as_open() =>
        Assert.Equal(2, Find.Shapes(Find.Map("banjo"), "C", InFirstPosition)[0].Span);

    [Theory]
    [InlineData("guitar", "C9", "3-1", "C9 needs at least 4 strings; the set 3-1 has 3.")]
    [InlineData("guitar", "C/Bb", "3-1", "C/Bb needs at least 4 strings; the set 3-1 has 3.")]
    public void A_chord_that_needs_more_strings_is_refused_with_a_reason(
        string instrument,
        string chord,
        string strings,
        string reason
    ) => Assert.Equal(reason, ShapeFinder.WhyNot(Find.Map(instrument, strings), Chord.Parse(chord), InFirstPosition));

    [Theory]
    [InlineData("0-4")]
    [InlineData("4-8")]
    public void Nothing_is_missing_on_guitar_against_every_assignment_of_frets(string frets)
    {
        foreach (var chord in new[] { "C", "F#m", "E7", "Bbmaj7", "Dm7b5", "G9", "Asus4", "D/F#", "C/Bb" })
        {
            Same(Find.Map("guitar", frets: frets), Chord.Parse(chord), null, [0], anyBass: false);
        }
    }

    [Fact]
    public void Nothing_is_missing_against_every_assignment_of_frets() =>
        Gen.Select(ShapeGen.ShortMap, ShapeGen.AnyChord, Gen.Nullable(Gen.Int[1, 6]), Gen.Int[0, 2].Array[0, 2])
            .Sample(
                (map, chord, position, inversions) =>
                {
                    var opens = map.Instrument.OpenPitches.Select(pitch => pitch.MidiNumber).ToList();
                    var isReentrant = !opens.OrderDescending().SequenceEqual(opens);
                    var isHigh = opens.Count <= 4 && opens.Min() >= Pitch.Parse("C2").MidiNumber;
                    var anyBass = inversions.SequenceEqual([0]) && (isReentrant || isHigh);
                    Same(map, chord, position, [.. inversions], anyBass);
                },
                iter: 300
            );

    private static void Same(NeckMap map, Chord chord, int? position, ValueList<int> inversions, bool anyBass)
    {
        var voicing = new Voicing.Strummed(position, inversions);
        if (ShapeFinder.WhyNot(map, chord, voicing) is null)
        {
            Assert.Equal(
                SlowShapes.Strummed(map, chord, position, inversions, anyBass).Order(StringComparer.Ordinal),
                ShapeFinder
                    .Find(map, new ShapeSource.OfChord(chord, null), voicing)
                    .Select(Find.Frets)
                    .Order(StringComparer.Ordinal)
            );
        }
    }
}
