using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class SymmetryFinderTests
{
    // Common practice, no source.
    [Theory]
    [InlineData("guitar")]
    [InlineData("low-G ukulele")]
    [InlineData("baritone ukulele")]
    [InlineData("bass")]
    [InlineData("mandolin")]
    public void The_dominant_and_the_half_diminished_seventh_are_half_turns_of_each_other(string name)
    {
        foreach (var tonic in Necks.Tonics)
        {
            var pairs = SymmetryFinder.Of(Necks.Map(name, $"{tonic} major", "4-1", "0-12")).Pairs;

            Assert.Contains(new ShapePair("V7", "viiø7", "half-turn", StringSet.Run(4, 1)), pairs);
            Assert.Contains(new ShapePair("Imaj7", "Imaj7", "half-turn", StringSet.Run(4, 1)), pairs);
            Assert.Contains(new ShapePair("Imaj7", "IVmaj7", "same form", StringSet.Run(4, 1)), pairs);
            Assert.DoesNotContain(pairs, pair => pair.A == "V7" && pair.Motion == "same form");
        }
    }

    // Worked out by hand: the empty fret of C major on these strings is 11, that of G major 6 (common practice, no source),
    // and a centre lies there and six frets away.
    [Theory]
    [InlineData("C major", "5, 11")]
    [InlineData("G major", "0, 6, 12")]
    [InlineData("D major", "1, 7")]
    [InlineData("A minor", "5, 11")]
    [InlineData("D dorian", "5, 11")]
    [InlineData("A harmonic minor", "")]
    public void Centres_of_the_near_guitar_strings(string key, string centres) =>
        Assert.Equal(centres, SymmetryFinder.Of(Necks.Map("guitar", key, "4-1", "0-12")).HalfTurnCentres.ToString());

    [Fact]
    public void A_guitar_as_a_whole_has_no_centre_but_a_guitar_in_fourths_has()
    {
        Assert.Empty(SymmetryFinder.Of(Necks.Map("guitar", "C major", "6-1", "0-12")).HalfTurnCentres);
        Assert.Equal(
            2,
            SymmetryFinder.Of(Necks.Map("guitar in fourths", "C major", "6-1", "0-11")).HalfTurnCentres.Count
        );
    }

    // Worked out by hand: B and E open; D, about which C major inverts, is 3 frets above B and 10 above E, or 2 below.
    [Fact]
    public void A_centre_can_lie_halfway_between_two_frets()
    {
        var map = Necks.Map("guitar", "C major", "2-1", "0-12");

        Assert.Equal("0.5, 6.5", SymmetryFinder.Of(map).HalfTurnCentres.ToString());
    }

    [Fact]
    public void A_centre_carries_every_note_of_the_key_that_stays_on_the_neck_to_a_note_of_the_key() =>
        Necks.AnyMap.Sample(map =>
        {
            foreach (var centre in SymmetryFinder.Of(map).HalfTurnCentres)
            {
                foreach (var note in map.NotesOfKey)
                {
                    var image = Motions.HalfTurned([note.Spot], map.Strings, centre);
                    if (image is { } spots && map.Instrument.Has(spots[0]))
                    {
                        Assert.True(map.IsInKey(spots[0]));
                    }
                }
            }
        });

    [Fact]
    public void Pairs_are_those_of_the_shapes_found_on_a_long_neck()
    {
        var inRootPosition = new Voicing.OneNotePerString(Arrangement.Close, [0]);
        foreach (
            var name in new[]
            {
                "guitar",
                "DADGAD guitar",
                "ukulele",
                "low-G ukulele",
                "five-string bass",
                "mandolin",
                "cuatro",
                "charango",
            }
        )
        {
            var short24 = Necks.Find(name);
            var instrument = new Instrument(name, short24.Strings, short24.ScaleLengthMm, 40, short24.Spacing);
            foreach (var kind in Necks.SevenNoteKinds)
            {
                var key = new Key(NoteName.Parse("C"), kind);
                foreach (var size in new[] { 3, 4 })
                {
                    foreach (var run in instrument.AllStrings.Neighbours(size))
                    {
                        var map = new NeckMap(instrument, key, run, new FretRange(0, 40));
                        var shapes = (size == 4 ? key.Sevenths() : key.Triads())
                            .Select(chord =>
                                ShapeFinder.Find(
                                    map,
                                    new ShapeSource.OfChord(chord.Chord, chord.Numeral),
                                    inRootPosition
                                )[0]
                            )
                            .ToList();
                        var expected =
                            from a in Enumerable.Range(0, 7)
                            from b in Enumerable.Range(a, 7 - a)
                            from motion in MotionsBetween(shapes[a], shapes[b])
                            where a != b || motion != "same form"
                            select new ShapePair(Roman(shapes[a]), Roman(shapes[b]), motion, run);

                        Assert.Equal(expected, SymmetryFinder.Of(map).Pairs);
                    }
                }
            }
        }
    }

    [Fact]
    public void The_range_of_frets_does_not_change_the_pairs() =>
        Assert.Equal(
            SymmetryFinder.Of(Necks.Map("bass", "E minor", "4-1", "0-0")).Pairs,
            SymmetryFinder.Of(Necks.Map("bass", "E minor", "4-1", "0-20")).Pairs
        );

    [Fact]
    public void Larger_sets_are_compared_run_by_run()
    {
        var six = SymmetryFinder.Of(Necks.Map("guitar", "C major", "6-1", "0-12")).Pairs;
        var runs = new[] { "6-3", "5-2", "4-1" }.SelectMany(run =>
            SymmetryFinder.Of(Necks.Map("guitar", "C major", run, "0-12")).Pairs
        );

        Assert.Equal(runs, six);
    }

    [Fact]
    public void Two_strings_compare_thirds_by_degree_and_one_string_nothing()
    {
        var pairs = SymmetryFinder.Of(Necks.Map("guitar", "C major", "3-2", "0-12")).Pairs;

        Assert.Equal(
            ["1-4", "1-5", "2-3", "2-6", "2-7", "3-6", "3-7", "4-5", "6-7"],
            pairs.Where(pair => pair.Motion == "same form").Select(pair => $"{pair.A}-{pair.B}")
        );
        Assert.Empty(SymmetryFinder.Of(Necks.Map("guitar", "C major", "3", "0-12")).Pairs);
    }

    // Common practice, no source: root-position sevenths on strings 4-1 in C.
    [Theory]
    [InlineData("0 4 7 11", "10 9 8 7")]
    [InlineData("0 3 6 10", "9 7 6 5")]
    [InlineData("0 3 7 10", "7 5 5 3")]
    [InlineData("0 4 7 10", "5 4 3 1")]
    public void Close_forms_of_the_near_guitar_strings(string semitones, string frets) =>
        Assert.Equal(
            ShapeForm.OneNotePerString(Numbers(frets)),
            SymmetryFinder.CloseForm(Catalogue.Default, StringSet.Run(4, 1), Numbers(semitones))
        );

    [Fact]
    public void A_form_needs_a_member_for_every_string() =>
        Assert.Throws<ArgumentException>(() =>
            SymmetryFinder.CloseForm(Catalogue.Default, StringSet.Run(4, 1), [0, 4, 7])
        );

    private static IEnumerable<string> MotionsBetween(Shape a, Shape b) =>
        new[] { ("same form", a.HasTheSameFormAs(b)), ("half-turn", a.IsHalfTurnOf(b)), ("mirror", a.IsMirrorOf(b)) }
            .Where(motion => motion.Item2)
            .Select(motion => motion.Item1);

    private static string Roman(Shape shape) => ((ShapeSource.OfChord)shape.Source).Roman!.ToString();

    private static int[] Numbers(string text) =>
        text.Split(' ')
            .Select(number => int.Parse(number, System.Globalization.CultureInfo.InvariantCulture))
            .ToArray();
}
