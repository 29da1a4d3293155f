using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class OneNotePerStringTests
{
    /// <summary>Common practice, no source.</summary>
    [Theory]
    [InlineData("Cmaj7", "10-9-8-7")]
    [InlineData("Bm7b5", "9765")]
    [InlineData("Am7", "7553")]
    [InlineData("G7", "5431")]
    [InlineData("Fmaj7", "3210")]
    public void Sevenths_in_root_position_on_guitar_strings_4_to_1_lie_where_players_know_them(
        string chord,
        string frets
    ) => Assert.Contains(frets, Find.Shapes(Find.Map("guitar", "4-1"), chord, Find.RootPosition).Select(Find.Frets));

    [Fact]
    public void In_every_other_key_the_sevenths_lie_as_far_along_as_the_key_is()
    {
        var inC = Sevenths("C major");
        foreach (var (semitones, tonic) in "C Db D Eb E F F# G Ab A Bb B".Split(' ').Index())
        {
            Assert.Equal(
                inC.Select(frets => frets.Select(fret => fret + semitones)),
                Sevenths($"{tonic} major", semitones)
            );
        }

        static IEnumerable<int[]> Sevenths(string key, int up = 0) =>
            Key.Parse(key)
                .Sevenths()
                .SelectMany(chord =>
                    ShapeFinder.Find(
                        Find.Map("guitar", "4-1", $"{up}-{up + 11}", key),
                        new ShapeSource.OfChord(chord.Chord, chord.Numeral),
                        Find.RootPosition
                    )
                )
                .Select(shape => shape.Spots.Select(spot => spot.Fret).ToArray());
    }

    /// <summary>Common practice, no source: three shapes for beginners on the three strings nearest the floor.</summary>
    [Theory]
    [InlineData("C", "010")]
    [InlineData("F", "211")]
    [InlineData("G", "433")]
    public void Triads_in_every_inversion_include_the_three_string_shapes_of_beginners(string chord, string frets) =>
        Assert.Contains(
            frets,
            Find.Shapes(Find.Map("guitar", "3-1"), chord, Find.EveryClosePosition).Select(Find.Frets)
        );

    [Fact]
    public void Octave_repeats_are_listed_too() =>
        Assert.Equal(
            ["010", "12-13-12"],
            Find.Shapes(Find.Map("guitar", "3-1", "0-13"), "C", new Voicing.OneNotePerString(Arrangement.Close, [2]))
                .Select(Find.Frets)
        );

    [Fact]
    public void A_triad_is_placed_on_every_run_of_three_strings()
    {
        var shapes = Find.Shapes(Find.Map("guitar"), "C", Find.EveryClosePosition);

        Assert.Equal(["3-1", "4-2", "5-3", "6-4"], shapes.Select(shape => shape.Strings.ToString()).Distinct().Order());
        Assert.All(shapes, shape => Assert.Equal(shape.Strings.Numbers, shape.Spots.Select(spot => spot.String)));
    }

    /// <summary>Common practice, no source: root, fifth, seventh, third; and root, seventh, third, fifth.</summary>
    [Theory]
    [InlineData(Arrangement.DropTwo, "4-1", "5767", "1 5 7 3")]
    [InlineData(Arrangement.DropThree, "6, 4, 3 and 2", "3343", "1 7 3 5")]
    public void Dropped_voicings_of_G7_in_root_position_are_those_of_the_trade(
        Arrangement arrangement,
        string strings,
        string frets,
        string members
    )
    {
        var map = Find.Map("guitar", strings);

        var shape = Assert.Single(Find.Shapes(map, "G7", new Voicing.OneNotePerString(arrangement, [0])));

        Assert.Equal(frets, Find.Frets(shape));
        Assert.Equal(members, string.Join(' ', shape.Notes.Select(note => note.Member)));
    }

    /// <summary>Common practice, no source: the string above the bass is left out.</summary>
    [Fact]
    public void Drop_3_on_six_strings_finds_the_shapes_that_leave_a_string_out() =>
        Assert.Equal(
            ["6, 4, 3 and 2: 8998", "5, 3, 2 and 1: 3453"],
            Find.Shapes(Find.Map("guitar"), "Cmaj7", new Voicing.OneNotePerString(Arrangement.DropThree, [0]))
                .Where(shape => !shape.Strings.IsRun)
                .Select(shape => $"{shape.Strings}: {Find.Frets(shape)}")
                .OrderDescending()
        );

    [Fact]
    public void On_a_re_entrant_instrument_the_voices_rise_by_sound()
    {
        var shapes = Find.Shapes(Find.Map("ukulele"), "Cmaj7", Find.RootPosition);

        Assert.Equal(["0002"], shapes.Select(Find.Frets));
    }

    [Fact]
    public void The_bass_of_a_slash_chord_lies_lowest()
    {
        Assert.All(
            Find.Shapes(Find.Map("guitar"), "C/E", Find.RootPosition),
            shape => Assert.Equal("3", shape.Notes.MinBy(note => note.Pitch.MidiNumber).Member)
        );
        Assert.All(
            Find.Shapes(Find.Map("guitar"), "C/Bb", new Voicing.OneNotePerString(Arrangement.AnyOrder, [])),
            shape => Assert.Equal("b7", shape.Notes.MinBy(note => note.Pitch.MidiNumber).Member)
        );
    }

    [Fact]
    public void A_position_has_four_frets_and_only_the_first_has_open_strings()
    {
        var first = Find.Shapes(Find.Map("guitar"), "Cmaj7", new Voicing.OneNotePerString(Arrangement.AnyOrder, [], 1));
        var fifth = Find.Shapes(Find.Map("guitar"), "Cmaj7", new Voicing.OneNotePerString(Arrangement.AnyOrder, [], 5));

        Assert.Contains(first, shape => shape.Spots.Any(spot => spot.Fret == 0));
        Assert.All(first.SelectMany(shape => shape.Spots), spot => Assert.InRange(spot.Fret, 0, 4));
        Assert.NotEmpty(fifth);
        Assert.All(fifth.SelectMany(shape => shape.Spots), spot => Assert.InRange(spot.Fret, 5, 8));
    }

    [Fact]
    public void Shapes_come_from_the_nut_on()
    {
        var lowest = Find.Shapes(Find.Map("guitar"), "Am7", Find.EveryClosePosition)
            .Select(shape => shape.Spots.Min(spot => spot.Fret))
            .ToList();

        Assert.Equal(lowest.Order(), lowest);
    }

    [Theory]
    [InlineData("C9", "3-1", Arrangement.Close, 0, "C9 has 5 notes and needs a string for each; the set 3-1 has 3.")]
    [InlineData(
        "C/Bb",
        "3-1",
        Arrangement.Close,
        0,
        "C/Bb has 4 notes and needs a string for each; the set 3-1 has 3."
    )]
    [InlineData("C", "6-1", Arrangement.DropTwo, 0, "Drop 2 spreads the members of a four-note chord; C has 3 notes.")]
    [InlineData("C", "6-1", Arrangement.Close, 3, "C has 3 members, so its inversions go up to 2.")]
    public void A_chord_that_does_not_fit_is_refused_with_a_reason(
        string chord,
        string strings,
        Arrangement arrangement,
        int inversion,
        string reason
    )
    {
        var map = Find.Map("guitar", strings);
        var voicing = new Voicing.OneNotePerString(arrangement, [inversion]);

        Assert.Equal(reason, ShapeFinder.WhyNot(map, Chord.Parse(chord), voicing));
        Assert.Throws<ArgumentException>(() => Find.Shapes(map, chord, voicing));
    }

    [Fact]
    public void A_position_beyond_the_frets_is_refused_with_a_reason() =>
        Assert.Equal(
            "Position 9 is frets 9-12; the frets looked at are 0-4.",
            ShapeFinder.WhyNot(
                Find.Map("guitar", frets: "0-4"),
                Chord.Parse("C"),
                new Voicing.OneNotePerString(Arrangement.Close, [], 9)
            )
        );

    [Theory]
    [InlineData(0, "Positions are counted from the first, at fret 1.")]
    [InlineData(98, "Position 98 is frets 98-101; the frets looked at are 0-12.")]
    public void A_position_that_no_neck_has_is_refused_with_a_reason(int position, string reason) =>
        Assert.Equal(
            reason,
            ShapeFinder.WhyNot(Find.Map("guitar"), Chord.Parse("C"), new Voicing.Strummed(position, [0]))
        );

    [Fact]
    public void Every_chord_of_a_key_on_guitar_is_found_as_the_slow_way_finds_it()
    {
        var everyClose = new Voicing.OneNotePerString(Arrangement.Close, []);
        var map = Find.Map("guitar");
        var rows = new[] { 3, 4 }
            .SelectMany(map.Strings.Neighbours)
            .ToDictionary(run => run, run => SlowShapes.Assignments(map, run, muted: false).ToList());
        foreach (var key in new[] { "C major", "F# harmonic minor" }.Select(Key.Parse))
        {
            foreach (var chord in key.Triads().Concat(key.Sevenths()).Select(diatonic => diatonic.Chord))
            {
                var slow = map
                    .Strings.Neighbours(chord.Notes.Count)
                    .SelectMany(run => SlowShapes.OneNotePerString(map, run, rows[run], chord, everyClose));

                AssertSame(slow, map, chord, everyClose);
            }
        }
    }

    [Fact]
    public void Nothing_is_missing_against_every_assignment_of_frets() =>
        Gen.Select(
                ShapeGen.ShortMap,
                ShapeGen.AnyChord,
                Gen.Enum<Arrangement>(),
                Gen.Int[0, 2].Array[0, 2],
                Gen.Nullable(Gen.Int[1, 6])
            )
            .Sample(
                (map, chord, arrangement, inversions, position) =>
                    Same(map, chord, new Voicing.OneNotePerString(arrangement, [.. inversions], position)),
                iter: 1000
            );

    private static void Same(NeckMap map, Chord chord, Voicing.OneNotePerString voicing)
    {
        if (ShapeFinder.WhyNot(map, chord, voicing) is null)
        {
            AssertSame(SlowShapes.OneNotePerString(map, chord, voicing), map, chord, voicing);
        }
    }

    private static void AssertSame(IEnumerable<string> slow, NeckMap map, Chord chord, Voicing voicing) =>
        Assert.Equal(
            slow.Order(StringComparer.Ordinal),
            ShapeFinder
                .Find(map, new ShapeSource.OfChord(chord, null), voicing)
                .Select(shape => $"{shape.Strings}: {Find.Frets(shape)}")
                .Order(StringComparer.Ordinal)
        );
}
