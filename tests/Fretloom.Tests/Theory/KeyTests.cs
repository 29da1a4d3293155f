using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class KeyTests
{
    public static IEnumerable<Key> Keys { get; } =
    [
        .. from tonic in TheoryGen.WrittenNames
        from kind in ScaleKind.All
        where kind.IsSevenNote
        select new Key(tonic, kind),
    ];

    [Fact]
    public void Every_key_and_scale_reads_back()
    {
        TheoryGen.Key.Sample(key => Assert.Equal(key, Key.Parse(key.ToString())));
        TheoryGen.Scale.Sample(scale => Assert.Equal(scale, Scale.Parse(scale.ToString())));
    }

    [Fact]
    public void Every_key_uses_each_letter_once() =>
        Assert.All(Keys, key => Assert.Equal(7, key.Notes.Select(note => note.Step).Distinct().Count()));

    // Spellings: common practice, no source; every other scale is compared with tonal.
    [Theory]
    [InlineData("G# major", "G# A# B# C# D# E# F##")]
    [InlineData("Fb major", "Fb Gb Ab Bbb Cb Db Eb")]
    [InlineData("Ab minor", "Ab Bb Cb Db Eb Fb Gb")]
    [InlineData("D# harmonic minor", "D# E# F# G# A# B C##")]
    [InlineData("B-flat major", "Bb C D Eb F G A")]
    [InlineData("b-double-flat major", "Bbb Cb Db Ebb Fb Gb Ab")]
    [InlineData("E dorian", "E F# G A B C# D")]
    [InlineData("C double harmonic", "C Db E F G Ab B")]
    [InlineData("F harmonic major", "F G A Bb C Db E")]
    public void Keys_are_spelled_with_double_accidentals_where_theory_wants_them(string key, string notes) =>
        Assert.Equal(notes, string.Join(' ', Key.Parse(key).Notes));

    // The harmonic chromatic scale: b2 b3 3 #4 b6 6 b7 7. Common practice, no source.
    [Theory]
    [InlineData("C major", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("A minor", "A Bb B C C# D D# E F F# G G#")]
    [InlineData("E major", "E F F# G G# A A# B C C# D D#")]
    [InlineData("Db major", "Db Ebb Eb Fb F Gb G Ab Bbb Bb Cb C")]
    [InlineData("C lydian", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("B locrian", "B C C# D D# E F F# G G# A A#")]
    public void Notes_outside_a_key_are_spelled_by_the_harmonic_chromatic_scale(string text, string notes)
    {
        var key = Key.Parse(text);
        var spelled = Enumerable.Range(0, 12).Select(semitones => key.Spell(key.Tonic.PitchClass.Plus(semitones)));

        Assert.Equal(notes, string.Join(' ', spelled));
    }

    [Fact]
    public void Every_key_spells_every_pitch_class_as_what_sounds() =>
        Assert.All(
            Keys,
            key =>
            {
                for (var number = 0; number < 12; number++)
                {
                    Assert.Equal(number, key.Spell(new PitchClass(number)).PitchClass.Number);
                }
            }
        );

    [Fact]
    public void The_degree_of_a_note_leads_back_to_the_note() =>
        Gen.Select(TheoryGen.Key, TheoryGen.Name)
            .Sample((key, note) => Assert.Equal(note, key.NoteOf(key.DegreeOf(note))));

    [Fact]
    public void Degrees_count_the_keys_own_scale() =>
        Assert.Equal("3", Key.Parse("A minor").DegreeOf(NoteName.Parse("C")).ToString());

    [Fact]
    public void Every_degree_reads_back() =>
        TheoryGen.Degree.Sample(degree => Assert.Equal(degree, Degree.Parse(degree.ToString())));

    [Theory]
    [InlineData("H major")]
    [InlineData("D")]
    [InlineData("D minor pentatonic")]
    [InlineData("D majorr")]
    [InlineData("Dbbbb major")]
    [InlineData("")]
    public void What_is_no_key_is_refused(string text) => Assert.False(Key.TryParse(text, out _));

    [Fact]
    public void A_pentatonic_scale_is_no_key() =>
        Assert.Throws<ArgumentException>(() => new Key(default, ScaleKind.MinorPentatonic));
}
