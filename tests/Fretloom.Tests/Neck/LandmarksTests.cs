using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Neck;

public class LandmarksTests
{
    // Common practice, no source.
    [Theory]
    [InlineData("C major", "0, 5, 10, 12", "11")]
    [InlineData("G major", "0, 5, 7, 12", "6")]
    public void Full_and_empty_frets_of_the_near_guitar_strings(string key, string full, string empty)
    {
        var landmarks = Landmarks.Of(Necks.Map("guitar", key, "4-1", "0-12"));

        Assert.Equal(full, landmarks.FullFrets.ToString());
        Assert.Equal(empty, landmarks.EmptyFrets.ToString());
    }

    // Common practice, no source.
    [Fact]
    public void A_major_key_has_three_major_and_four_minor_thirds()
    {
        foreach (var tonic in Necks.Tonics)
        {
            var thirds = Landmarks.Of(Necks.Map("bass", $"{tonic} major", "2-1", "0-16")).Thirds;
            var qualityByDegree = thirds.Select(third => (third.Lower.Degree, third.Quality)).Distinct().ToList();

            Assert.Equal(7, qualityByDegree.Count);
            Assert.Equal(
                ["1", "4", "5"],
                qualityByDegree
                    .Where(third => third.Quality == "major")
                    .Select(third => third.Degree.ToString())
                    .Order()
            );
            Assert.Equal(4, qualityByDegree.Count(third => third.Quality == "minor"));
        }
    }

    [Fact]
    public void Thirds_carry_where_they_lie()
    {
        var thirds = Landmarks.Of(Necks.Map("guitar", "C major", "3-2", "0-5")).Thirds;

        Assert.Equal(
            ["G3-B3 0 0 major", "A3-C4 2 1 minor", "B3-D4 4 3 minor", "C4-E4 5 5 major"],
            thirds.Select(third =>
                $"{third.Lower.Pitch}-{third.Upper.Pitch} {third.Lower.Spot.Fret} {third.Upper.Spot.Fret} {third.Quality}"
            )
        );
    }

    [Fact]
    public void Every_landmark_is_that_of_a_slow_and_obvious_count_in_every_key_on_every_instrument()
    {
        foreach (var instrument in Catalogue.All)
        {
            var frets = new FretRange(0, Math.Min(12, instrument.Frets));
            foreach (var key in Necks.Keys)
            {
                var map = new NeckMap(instrument, key, instrument.AllStrings, frets);
                var landmarks = Landmarks.Of(map);

                Assert.Equal(SlowNeck.FretsWhere(map, sounding => sounding.All(isIn => isIn)), landmarks.FullFrets);
                Assert.Equal(SlowNeck.FretsWhere(map, sounding => !sounding.Any(isIn => isIn)), landmarks.EmptyFrets);
                Assert.Equal(
                    SlowNeck.Thirds(map),
                    landmarks.Thirds.Select(third => (third.Lower.Spot, third.Upper.Spot))
                );
            }
        }
    }

    [Fact]
    public void Every_landmark_is_that_of_a_slow_and_obvious_count_on_any_strings_and_frets() =>
        Necks.AnyMap.Sample(map =>
        {
            var landmarks = Landmarks.Of(map);

            Assert.Equal(SlowNeck.FretsWhere(map, sounding => sounding.All(isIn => isIn)), landmarks.FullFrets);
            Assert.Equal(SlowNeck.FretsWhere(map, sounding => !sounding.Any(isIn => isIn)), landmarks.EmptyFrets);
            Assert.Equal(SlowNeck.Thirds(map), landmarks.Thirds.Select(third => (third.Lower.Spot, third.Upper.Spot)));
        });

    [Fact]
    public void Landmarks_move_with_the_key() =>
        Gen.Select(Necks.AnyInstrument, Necks.AnyKey, Gen.Int[1, 6])
            .Sample(
                (instrument, key, up) =>
                {
                    // A short string has no low frets to move from.
                    var strings = new StringSet(
                        instrument.AllStrings.Numbers.Where(number => instrument.String(number).StartsAtFret == 0)
                    );
                    var last = instrument.Frets - up;
                    if (last < 0)
                    {
                        return;
                    }

                    var tonic = new Pitch(key.Tonic, 4).MidiNumber + up;
                    var higher = key.On(Pitch.FromMidiNumber(tonic).Name);
                    var before = Landmarks.Of(new NeckMap(instrument, key, strings, new FretRange(0, last)));
                    var after = Landmarks.Of(new NeckMap(instrument, higher, strings, new FretRange(up, last + up)));

                    Assert.Equal(before.FullFrets.Select(fret => fret + up), after.FullFrets);
                    Assert.Equal(before.EmptyFrets.Select(fret => fret + up), after.EmptyFrets);
                    Assert.Equal(
                        before.Thirds.Select(third => third.Quality),
                        after.Thirds.Select(third => third.Quality)
                    );
                }
            );

    [Theory]
    [InlineData("guitar", "6-1", "3-2")]
    [InlineData("guitar", "4-1", "3-2")]
    [InlineData("guitar", "6-3", null)]
    [InlineData("guitar", "5-3", null)]
    [InlineData("guitar", "3-1", null)]
    [InlineData("guitar", "3-2", null)]
    [InlineData("guitar", "4", null)]
    [InlineData("guitar in lute tuning", "6-1", "4-3")]
    [InlineData("guitar in fourths", "6-1", null)]
    [InlineData("seven-string guitar", "7-1", "3-2")]
    [InlineData("drop D guitar", "6-1", null)]
    [InlineData("low-G ukulele", "4-1", "3-2")]
    [InlineData("ukulele", "4-1", null)]
    [InlineData("mandolin", "4-1", null)]
    [InlineData("bouzouki", "4-1", "2-1")]
    public void The_hinge_is_the_one_pair_tuned_unlike_the_others(string name, string strings, string? hinge)
    {
        var found = Landmarks.HingeOf(Necks.Find(name), StringSet.Parse(strings));

        Assert.Equal(hinge, found is { } pair ? $"{pair.Far}-{pair.Near}" : null);
    }

    [Fact]
    public void The_hinge_is_that_of_the_definition_on_every_string_set_of_every_instrument()
    {
        foreach (var instrument in Catalogue.All)
        {
            for (var bits = 1; bits < 1 << instrument.Strings.Count; bits++)
            {
                var mask = bits;
                var strings = new StringSet(
                    Enumerable.Range(1, instrument.Strings.Count).Where(number => (mask >> (number - 1) & 1) != 0)
                );

                Assert.Equal(SlowNeck.Hinge(instrument, strings), Landmarks.HingeOf(instrument, strings));
            }
        }
    }

    [Fact]
    public void Behind_a_capo_the_key_named_is_the_one_that_sounds()
    {
        var bare = Necks.Map("guitar", "D major", "4-1", "2-12");
        var capoed = new NeckMap(bare.Instrument.WithCapo(2), bare.Key, bare.Strings, new FretRange(0, 10));

        Assert.Equal(Landmarks.Of(bare).FullFrets.Select(fret => fret - 2), Landmarks.Of(capoed).FullFrets);
    }

    [Fact]
    public void No_fret_before_the_short_string_begins_is_full()
    {
        var landmarks = Landmarks.Of(Necks.Map("banjo", "G major", "5-1", "0-17"));

        Assert.Equal("5, 7, 12, 17", landmarks.FullFrets.ToString());
        Assert.DoesNotContain(landmarks.Thirds, third => third.Lower.Spot.String == 5 && third.Lower.Spot.Fret < 5);
    }
}
