using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

/// <summary>Names: common practice, no source.</summary>
public class NoteNameSystemTests
{
    [Fact]
    public void Every_name_reads_back_in_every_system() =>
        Gen.Select(TheoryGen.Name, TheoryGen.Key, Gen.Bool)
            .Sample(
                (note, key, unicode) =>
                {
                    foreach (var system in NoteNameSystem.All.Append(NoteNameSystem.MovableDo(key)))
                    {
                        var text = system.Format(note, unicode);
                        Assert.Equal(note, system.Parse(text));
                    }
                }
            );

    [Theory]
    [InlineData("C", "C", "Do")]
    [InlineData("B", "H", "Si")]
    [InlineData("Bb", "B", "Sib")]
    [InlineData("Bbb", "Heses", "Sibb")]
    [InlineData("Eb", "Es", "Mib")]
    [InlineData("Ebb", "Eses", "Mibb")]
    [InlineData("Ab", "As", "Lab")]
    [InlineData("Abb", "Ases", "Labb")]
    [InlineData("Gb", "Ges", "Solb")]
    [InlineData("F#", "Fis", "Fa#")]
    [InlineData("F##", "Fisis", "Fa##")]
    [InlineData("E#", "Eis", "Mi#")]
    [InlineData("A#", "Ais", "La#")]
    public void German_and_Latin_names(string english, string german, string latin)
    {
        var note = NoteName.Parse(english);

        Assert.Equal(german, NoteNameSystem.German.Format(note));
        Assert.Equal(latin, NoteNameSystem.FixedDo.Format(note));
    }

    [Theory]
    [InlineData("Hes", "Bb")]
    [InlineData("asas", "Abb")]
    [InlineData("fis", "F#")]
    public void German_names_are_read_in_their_variants(string german, string english) =>
        Assert.Equal(NoteName.Parse(english), NoteNameSystem.German.Parse(german));

    [Theory]
    [InlineData("Bes")]
    [InlineData("Ees")]
    [InlineData("Aes")]
    [InlineData("Esis")]
    [InlineData("F#")]
    [InlineData("")]
    public void What_is_no_German_name_is_refused(string text) =>
        Assert.False(NoteNameSystem.German.TryParse(text, out _));

    [Fact]
    public void Unicode_accidentals_are_written_on_request() =>
        Assert.Equal("Si♭", NoteNameSystem.FixedDo.Format(NoteName.Parse("Bb"), unicode: true));

    [Theory]
    [InlineData("C major", "do re mi fa so la ti")]
    [InlineData("Eb major", "do re mi fa so la ti")]
    [InlineData("A minor", "la ti do re mi fa so")]
    [InlineData("A harmonic minor", "la ti do re mi fa si")]
    [InlineData("A melodic minor", "la ti do re mi fi si")]
    [InlineData("D dorian", "re mi fa so la ti do")]
    [InlineData("E phrygian", "mi fa so la ti do re")]
    [InlineData("F lydian", "fa so la ti do re mi")]
    [InlineData("G mixolydian", "so la ti do re mi fa")]
    [InlineData("B locrian", "ti do re mi fa so la")]
    [InlineData("C harmonic major", "do re mi fa so le ti")]
    public void Movable_do_is_la_based_in_minor(string text, string syllables)
    {
        var key = Key.Parse(text);
        var system = NoteNameSystem.MovableDo(key);

        Assert.Equal(syllables, string.Join(' ', key.Notes.Select(note => system.Format(note))));
    }

    [Fact]
    public void Movable_do_names_the_chromatic_notes()
    {
        var system = NoteNameSystem.MovableDo(Key.Parse("C major"));
        string Names(string notes) =>
            string.Join(' ', notes.Split(' ').Select(note => system.Format(NoteName.Parse(note))));

        Assert.Equal("di ri fi si li", Names("C# D# F# G# A#"));
        Assert.Equal("ra me se le te", Names("Db Eb Gb Ab Bb"));
    }
}
