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
    [InlineData("Fmaj7", "xx3210")]
    [InlineData("Gmaj7", "320002")]
    [InlineData("Amaj7", "x02120")]
    [InlineData("Dmaj7", "xx0222")]
    [InlineData("Emaj7", "021100")]
    [InlineData("Asus4", "x02230")]
    [InlineData("Dsus2", "xx0230")]
    [InlineData("Esus4", "022200")]
    [InlineData("Cadd9", "x32030")]
    [InlineData("E6", "022120")]
    [InlineData("G6", "320000")]
    [InlineData("D6", "xx0202")]
    [InlineData("Bm7", "x20202")]
    [InlineData("F7", "131211")]
    [InlineData("Bb7", "x13131")]
    [InlineData("Fm", "133111")]
    [InlineData("F#", "244322")]
    [InlineData("F#m7", "xx4220")]
    [InlineData("Bbmaj7", "x13231")]
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
    [InlineData("A7", "0100")]
    [InlineData("D7", "2223")]
    [InlineData("E7", "1202")]
    [InlineData("Bm", "4222")]
    [InlineData("Fm", "1013")]
    [InlineData("Gm", "0231")]
    [InlineData("Cmaj7", "0002")]
    [InlineData("Am7", "0000")]
    [InlineData("F7", "2310")]
    [InlineData("Cm", "0333")]
    [InlineData("Eb", "0331")]
    [InlineData("E", "4442")]
    [InlineData("B", "4322")]
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
    [InlineData("mandolin", "Em", "0220")]
    [InlineData("mandolin", "A", "2240")]
    [InlineData("mandolin", "E", "1220")]
    [InlineData("mandolin", "Dm", "2001")]
    [InlineData("mandolin", "D7", "2032")]
    [InlineData("mandolin", "G7", "0021")]
    [InlineData("baritone ukulele", "G", "0003")]
    [InlineData("banjo", "G", "50000")]
    [InlineData("banjo", "C", "52012")]
    [InlineData("banjo", "D", "x0234")]
    [InlineData("banjo", "D7", "x0214")]
    [InlineData("banjo", "Em", "52002")]
    [InlineData("banjo", "Am", "x2212")]
    [InlineData("banjo", "F", "x3213")]
    [InlineData("banjo", "A", "x2222")]
    [InlineData("banjo", "G7", "50003")]
    [InlineData("banjo", "C7", "52312")]
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

    /// <summary>Common practice, no source.</summary>
    [Theory]
    [InlineData("F", "xx3211")]
    [InlineData("Fm", "xx3111")]
    [InlineData("F#", "xx4322")]
    public void An_easier_part_of_a_shape_is_found_after_the_whole(string chord, string frets)
    {
        var shapes = Find.Shapes(Find.Map("guitar"), chord, InFirstPosition).Select(Find.Frets).ToList();

        Assert.Equal(6, shapes[0].Replace("x", "", StringComparison.Ordinal).Length);
        Assert.Contains(frets, shapes);
    }

    /// <summary>Common practice, no source.</summary>
    [Theory]
    [InlineData("Cm7", "x35343", "x31313")]
    public void Without_a_position_barre_shapes_up_to_third_position_are_in_one_class(
        string chord,
        string anywhere,
        string inFirst
    )
    {
        var shapes = Find.Shapes(Find.Map("guitar"), chord, Anywhere).Select(Find.Frets).ToList();

        Assert.Equal(anywhere, shapes[0]);
        Assert.Contains(inFirst, Find.Shapes(Find.Map("guitar"), chord, InFirstPosition).Select(Find.Frets));
    }

    /// <summary>A hand rule of ours: two fingers at one fret, far apart, with another and a ringing string between them.</summary>
    [Theory]
    [InlineData("F", "10321x")]
    [InlineData("Fmaj7", "102210")]
    [InlineData("Bm", "x20432")]
    public void What_no_hand_holds_is_not_found(string chord, string frets) =>
        Assert.DoesNotContain(frets, Find.Shapes(Find.Map("guitar"), chord, Anywhere).Select(Find.Frets));

    [Fact]
    public void The_short_string_of_a_banjo_rings_in_every_position_and_is_never_pressed()
    {
        var shapes = Find.Shapes(Find.Map("banjo"), "C", new Voicing.Strummed(5, [0])).Select(Find.Frets).ToList();

        Assert.Contains("55555", shapes);
        Assert.All(shapes, frets => Assert.Contains(frets[0], "5x"));
    }

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
