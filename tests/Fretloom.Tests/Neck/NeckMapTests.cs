using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Neck;

public class NeckMapTests
{
    [Fact]
    public void Notes_of_the_key_are_spelled_and_counted_in_it() =>
        Assert.Equal(
            ["4:0 D3 7", "4:1 Eb3 1", "4:3 F3 2", "4:5 G3 3", "3:0 G3 3", "3:1 Ab3 4", "3:3 Bb3 5", "3:5 C4 6"],
            Necks
                .Map("guitar", "Eb major", "4-3", "0-5")
                .NotesOfKey.Select(note => $"{note.Spot} {note.Pitch} {note.Degree}")
        );

    [Fact]
    public void Every_spot_of_the_range_that_sounds_a_note_of_the_key_is_there_once() =>
        Necks.AnyMap.Sample(map =>
        {
            var expected =
                from number in map.Strings.Numbers
                from fret in map.Frets.Frets
                let midi = map.Instrument.MidiAt(new Spot(number, fret))
                where
                    midi is { } sounding
                    && map.Key.Notes.Any(note => note.PitchClass == PitchClass.FromSemitones(sounding))
                select new Spot(number, fret);
            var notes = map.NotesOfKey.ToList();

            Assert.Equal(expected, notes.Select(note => note.Spot));
            Assert.All(notes, note => Assert.Equal(map.Instrument.MidiAt(note.Spot), note.Pitch.MidiNumber));
            Assert.All(notes, note => Assert.Equal(map.Key.NoteOf(note.Degree), note.Pitch.Name));
            Assert.All(notes, note => Assert.Equal(map.NoteAt(note.Spot), note));
            Assert.All(notes, note => Assert.True(map.IsInKey(note.Spot)));
        });

    [Fact]
    public void Notes_outside_the_key_are_spelled_as_alterations() =>
        Assert.Equal(
            "b3",
            Necks.Map("guitar", "C major", "6-1", "0-12").NoteAt(new Spot(4, 1))!.Value.Degree.ToString()
        );

    [Fact]
    public void Named_notes_keep_their_own_spelling()
    {
        var map = Necks.Map("guitar", "C major", "6-1", "0-12");

        Assert.All(map.NotesNamed([NoteName.Parse("D#")]), note => Assert.Equal("D#", note.Pitch.Name.ToString()));
        Assert.Equal(6, map.NotesNamed([NoteName.Parse("D#")]).Count());
    }

    [Fact]
    public void A_spot_that_is_not_on_the_neck_sounds_nothing()
    {
        var banjo = Necks.Map("banjo", "G major", "5-1", "0-12");

        Assert.Null(banjo.NoteAt(new Spot(5, 4)));
        Assert.Null(banjo.NoteAt(new Spot(6, 0)));
        Assert.Null(banjo.NoteAt(new Spot(1, 23)));
        Assert.Equal(5 * 13 - 5, banjo.Spots.Count());
    }

    [Theory]
    [InlineData("7-1", "0-12")]
    [InlineData("6-1", "0-23")]
    public void Strings_and_frets_must_be_on_the_instrument(string strings, string frets) =>
        Assert.Throws<ArgumentException>(() => Necks.Map("guitar", "C major", strings, frets));

    [Fact]
    public void A_map_without_strings_is_refused() =>
        Assert.Throws<ArgumentException>(() => new NeckMap(Catalogue.Default, Key.Parse("C major"), default, default));
}
