using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Neck;

public class InstrumentTests
{
    // Row of tunings.csv -> catalogue name. See tests/SOURCES.md, "tunings".
    public static TheoryData<string, string> Tunings =>
        new()
        {
            { "guitar_std", "guitar" },
            { "guitar_std", "twelve-string guitar" },
            { "guitar_7", "seven-string guitar" },
            { "drop_D", "drop D guitar" },
            { "DADGAD", "DADGAD guitar" },
            { "open_G", "open G guitar" },
            { "open_D", "open D guitar" },
            { "open_E", "open E guitar" },
            { "open_C", "open C guitar" },
            { "double_drop_D", "double drop D guitar" },
            { "half_step_down", "half-step-down guitar" },
            { "all_fourths", "guitar in fourths" },
            { "major_thirds", "guitar in major thirds" },
            { "nashville_high_strung", "high-strung guitar" },
            { "renaissance_lute_guitar", "guitar in lute tuning" },
            { "baritone_B", "baritone guitar" },
            { "baritone_A", "baritone guitar in A" },
            { "bass4", "bass" },
            { "bass5", "five-string bass" },
            { "bass6", "six-string bass" },
            { "bassVI", "bass in guitar tuning" },
            { "uke_reentrant_C6", "ukulele" },
            { "uke_reentrant_C6", "tenor ukulele" },
            { "uke_lowG", "low-G ukulele" },
            { "uke_D6", "ukulele in D" },
            { "uke_baritone", "baritone ukulele" },
            { "mandolin", "mandolin" },
            { "mandola", "mandola" },
            { "octave_mandolin", "octave mandolin" },
            { "mandocello", "mandocello" },
            { "banjo5_openG", "banjo" },
            { "banjo5_doubleC", "double C banjo" },
            { "banjo_tenor_CGDA", "tenor banjo" },
            { "banjo_plectrum", "plectrum banjo" },
            { "tenor_guitar", "tenor guitar" },
            { "cavaquinho_DGBD", "cavaquinho" },
            { "charango_main", "charango" },
            { "bouzouki_GDAD", "bouzouki" },
            { "viol_bass", "bass viol" },
            { "requinto_A", "requinto" },
            { "timple", "timple" },
            { "cuatro_ven", "cuatro" },
        };

    [Theory]
    [MemberData(nameof(Tunings))]
    public void Open_strings_sound_what_the_table_says(string row, string name)
    {
        var midi = Table
            .Read("tunings.csv")
            .Single(one => one["name"] == row)
            .Integers("midi(the string farthest from the floor first)");

        Assert.Equal(midi, Necks.Find(name).OpenPitches.Reverse().Select(pitch => pitch.MidiNumber));
    }

    // MEI.stringtab, data.COURSETUNING: the pitches as they stand there.
    [Theory]
    [InlineData("guitar", "E2 A2 D3 G3 B3 E4")]
    [InlineData("drop D guitar", "D2 A2 D3 G3 B3 E4")]
    [InlineData("open D guitar", "D2 A2 D3 F#3 A3 D4")]
    [InlineData("open G guitar", "D2 G2 D3 G3 B3 D4")]
    [InlineData("open A guitar", "E2 A2 E3 A3 C#4 E4")]
    [InlineData("lute in G", "G2 C3 F3 A3 D4 G4")]
    public void Tunings_that_the_Music_Encoding_Initiative_lists_are_spelled_as_there(string name, string tuning) =>
        Assert.Equal(tuning, string.Join(' ', Necks.Find(name).OpenPitches.Reverse()));

    // Radicioni and Lombardo 2005, figure 1: E4 at 1/0 2/5 3/9 4/14, extended here to 24 frets.
    [Fact]
    public void E4_is_found_on_every_string_of_a_guitar_with_24_frets()
    {
        var guitar = Necks.Find("guitar");
        var long24 = new Instrument("guitar", guitar.Strings, 648, 24, guitar.Spacing);

        Assert.Equal("1:0 2:5 3:9 4:14 5:19 6:24", string.Join(' ', long24.SpotsOf(Pitch.Parse("E4").MidiNumber)));
        Assert.Equal("1:0 2:5 3:9 4:14 5:19", string.Join(' ', guitar.SpotsOf(64)));
    }

    [Fact]
    public void Spots_of_a_note_are_all_the_spots_that_sound_it()
    {
        foreach (var instrument in Catalogue.All)
        {
            var spots =
                from number in Enumerable.Range(1, instrument.Strings.Count)
                from fret in Enumerable.Range(0, instrument.Frets + 1)
                select new Spot(number, fret);
            foreach (var group in spots.Where(instrument.Has).GroupBy(spot => instrument.MidiAt(spot)!.Value))
            {
                Assert.Equal(group, instrument.SpotsOf(group.Key));
            }

            Assert.Empty(instrument.SpotsOf(-30));
            Assert.Empty(instrument.SpotsOf(300));
        }
    }

    [Fact]
    public void A_capo_raises_every_string_and_shortens_the_neck()
    {
        foreach (var instrument in Catalogue.All)
        {
            for (var capo = 1; capo < Math.Min(8, instrument.Frets); capo++)
            {
                var capoed = instrument.WithCapo(capo);

                Assert.Equal(capo, capoed.Capo);
                Assert.Equal(instrument.Frets - capo, capoed.LastFret);
                Assert.Equal(
                    instrument.OpenPitches.Select(pitch => pitch.MidiNumber + capo),
                    capoed.OpenPitches.Select(pitch => pitch.MidiNumber)
                );
                Assert.Equal(capoed, instrument.WithCapo(1).WithCapo(capo));
                Assert.False(capoed.Has(new Spot(1, capoed.LastFret + 1)));
            }

            Assert.Equal(instrument, instrument.WithCapo(0));
        }
    }

    [Fact]
    public void A_spot_behind_a_capo_sounds_as_it_does_on_the_bare_neck()
    {
        var guitar = Necks.Find("guitar");

        Assert.Equal(guitar.MidiAt(new Spot(3, 7)), guitar.WithCapo(4).MidiAt(new Spot(3, 3)));
    }

    [Fact]
    public void The_short_string_of_a_banjo_begins_at_fret_five()
    {
        var banjo = Necks.Find("banjo");

        Assert.Equal([67, 50, 55, 59, 62], banjo.OpenPitches.Reverse().Select(pitch => pitch.MidiNumber));
        Assert.Null(banjo.MidiAt(new Spot(5, 4)));
        Assert.Equal(67, banjo.MidiAt(new Spot(5, 5)));
        Assert.Equal(69, banjo.MidiAt(new Spot(5, 7)));
        Assert.Equal(69, banjo.WithCapo(2).MidiAt(new Spot(5, 5)));
    }

    [Fact]
    public void Re_entrant_strings_need_not_rise_toward_the_floor()
    {
        var ukulele = Necks.Find("ukulele");

        Assert.True(ukulele.String(4).Open.MidiNumber > ukulele.String(3).Open.MidiNumber);
        Assert.Equal("1:0 2:5 3:9 4:2", string.Join(' ', ukulele.SpotsOf(69)));
    }

    [Fact]
    public void Pairs_have_a_second_string_in_unison_or_an_octave_away()
    {
        foreach (
            var name in new[]
            {
                "mandolin",
                "mandola",
                "octave mandolin",
                "mandocello",
                "bouzouki",
                "charango",
                "twelve-string guitar",
            }
        )
        {
            Assert.All(
                Necks.Find(name).Strings,
                course => Assert.True(Math.Abs(course.Partner!.Value.MidiNumber - course.Open.MidiNumber) is 0 or 12)
            );
        }
    }

    [Fact]
    public void Retuning_names_the_new_pitches_and_keeps_the_neck()
    {
        var guitar = Necks.Find("guitar");
        var retuned = guitar.Tuned("D4 A3 G3 D3 A2 D2".Split(' ').Select(Pitch.Parse));

        Assert.Equal("guitar tuned D2 A2 D3 G3 A3 D4", retuned.Name);
        Assert.Equal(Necks.Find("DADGAD guitar").Strings, retuned.Strings);
        Assert.Equal(
            (guitar.ScaleLengthMm, guitar.Frets, guitar.Spacing),
            (retuned.ScaleLengthMm, retuned.Frets, retuned.Spacing)
        );
        Assert.Equal("guitar tuned E2 A2 D3 G3 B3 E4", retuned.Tuned(guitar.OpenPitches).Name);
    }

    [Fact]
    public void Retuning_to_its_own_pitches_changes_the_name_alone()
    {
        foreach (var instrument in Catalogue.All)
        {
            Assert.Equal(instrument.Strings, instrument.Tuned(instrument.OpenPitches).Strings);
        }
    }

    [Fact]
    public void The_second_string_of_a_pair_follows_the_first_when_retuned()
    {
        var twelve = Necks.Find("twelve-string guitar");
        var dropped = twelve.Tuned("E4 B3 G3 D3 A2 D2".Split(' ').Select(Pitch.Parse));

        Assert.Equal(Pitch.Parse("D3"), dropped.String(6).Partner);
        Assert.Equal(Pitch.Parse("E4"), dropped.String(1).Partner);
    }

    [Fact]
    public void Bad_measures_are_refused()
    {
        var course = new Course(Pitch.Parse("E4"));
        Instrument Make(string name = "box", int strings = 1, double scale = 600, int frets = 12) =>
            new(name, Enumerable.Repeat(course, strings), scale, frets, default);

        Assert.Equal("box", Make().Name);
        Assert.ThrowsAny<ArgumentException>(() => Make(name: " "));
        Assert.ThrowsAny<ArgumentException>(() => Make(strings: 0));
        Assert.ThrowsAny<ArgumentException>(() => Make(strings: 21));
        Assert.ThrowsAny<ArgumentException>(() => Make(scale: 99));
        Assert.ThrowsAny<ArgumentException>(() => Make(scale: 2001));
        Assert.ThrowsAny<ArgumentException>(() => Make(scale: double.NaN));
        Assert.ThrowsAny<ArgumentException>(() => Make(frets: 0));
        Assert.ThrowsAny<ArgumentException>(() => Make(frets: 41));
        Assert.Throws<ArgumentOutOfRangeException>(() => new StringSpacing(-1, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => new StringSpacing(7, double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Course(Pitch.Parse("G4"), null, 13));
        Assert.Throws<ArgumentOutOfRangeException>(() => Make().WithCapo(12));
        Assert.Throws<ArgumentOutOfRangeException>(() => Make().WithCapo(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Make().String(2));
        Assert.Throws<ArgumentOutOfRangeException>(() => Make().String(0));
        Assert.Throws<ArgumentException>(() => Make().Tuned([]));
    }
}
