using Fretloom.Testing;
using Fretloom.Tests.Neck;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class ChordNamerTests
{
    // Common practice, no source.
    [Theory]
    [InlineData("C E G", "C")]
    [InlineData("E C G", "C/E")]
    [InlineData("C E G A", "C6")]
    [InlineData("A C E G", "Am7")]
    [InlineData("G A C E", "Am7/G")]
    [InlineData("B D F A", "Bm7b5")]
    [InlineData("D F A B", "Dm6")]
    [InlineData("C E A", "Am/C")]
    [InlineData("D C E G", "Cadd9/D")]
    [InlineData("D C F A", "Dm7")]
    [InlineData("C E B", "Cmaj7 (no 5)")]
    [InlineData("B G F", "G7/B (no 5)")]
    [InlineData("C E Bb D A", "C13 (no 5)")]
    [InlineData("G# D F B", "G#dim7")]
    [InlineData("Bb C E G", "C7/Bb")]
    [InlineData("F# A C", "F#dim")]
    [InlineData("Gb Bbb Dbb", "Gbdim")]
    [InlineData("C G", "C5")]
    public void The_first_name_is_the_one_a_musician_would_give(string notes, string name) =>
        Assert.Equal(name, Names(notes).First());

    [Theory]
    [InlineData("C E G A", "Am7/C")]
    [InlineData("D C E G", "C/D")]
    [InlineData("D C E G", "D9sus4 (no 5)")]
    [InlineData("E G Bb D", "C9/E (no root)")]
    [InlineData("D G C", "Csus2/D")]
    [InlineData("D G C", "Gsus4/D")]
    [InlineData("D G C", "Dquartal3")]
    [InlineData("F C E G Bb D A", "C13/F")]
    [InlineData("G C E Bb D", "C9/G")]
    public void Other_reasonable_names_are_listed(string notes, string name) => Assert.Contains(name, Names(notes));

    [Fact]
    public void A_key_decides_the_spelling()
    {
        var set = Chord.Parse("F#").PitchClasses;

        Assert.Equal("Gb", ChordNamer.Name(set, new PitchClass(6), Key.Parse("Db major"))[0].ToString());
        Assert.Equal("F#", ChordNamer.Name(set, new PitchClass(6), Key.Parse("B major"))[0].ToString());
    }

    // Common practice, no source: what is sharp or flat in C major is written so that the chord has the fewest odd names.
    [Theory]
    [InlineData("B D G#", "G#dim/B")]
    [InlineData("G# B D", "G#dim")]
    [InlineData("G# C# F", "Db/Ab")]
    [InlineData("F# A# C#", "F#")]
    [InlineData("Eb G Bb", "Eb")]
    [InlineData("G# B D#", "G#m")]
    [InlineData("C# E G#", "C#m")]
    [InlineData("D# F# A#", "Ebm")]
    [InlineData("F G# C", "Fm")]
    public void In_C_major_chromatic_chords_are_spelled_as_musicians_write_them(string notes, string name)
    {
        var names = notes.Split(' ').Select(NoteName.Parse).ToList();

        Assert.Equal(name, ChordNamer.Name(names, names[0], Key.Parse("C major"))[0].ToString());
    }

    /// <summary>In every key, every usual triad and seventh chord on every root, in every inversion.</summary>
    [Fact]
    public void A_chord_in_a_key_has_its_bass_among_its_members_and_the_fewest_odd_names() =>
        Assert.All(
            from key in Necks.Keys.Where(key => key.Kind == ScaleKind.Major || key.Kind == ScaleKind.NaturalMinor)
            from root in Enumerable.Range(0, 12)
            from symbol in new[] { "C", "Cm", "Cdim", "Caug", "C7", "Cmaj7", "Cm7", "Cm7b5", "Cdim7" }
            let quality = Chord.Parse(symbol).Quality
            let set = quality.PitchClasses.Transpose(root)
            from bass in set
            select (key, set, bass),
            one =>
            {
                var (key, set, bass) = one;
                var name = ChordNamer.Name(set, bass, key)[0].Chord;

                Assert.Contains(name.Bass, name.Notes);
                Assert.All(
                    Enumerable
                        .Range(-12, 25)
                        .Select(NoteName.FromFifths)
                        .Where(other => other.PitchClass == name.Root.PitchClass && IsRoot(other)),
                    other => Assert.True(Odd(name, key) <= Odd(new Chord(other, name.Quality), key), $"{name} in {key}")
                );
            }
        );

    // Nobody begins a chord on E sharp where F will do.
    private static bool IsRoot(NoteName name) =>
        Math.Abs(name.Alteration) <= 1 && name.ToString() is not ("Cb" or "Fb" or "E#" or "B#");

    private static int Odd(Chord chord, Key key) =>
        chord.Notes.Count(note =>
            note != key.Spell(note.PitchClass)
            && (Math.Abs(note.Alteration) > 1 || note.ToString() is "Cb" or "Fb" or "E#" or "B#")
        );

    [Fact]
    public void Every_chord_in_every_inversion_is_among_the_names_of_its_own_notes() =>
        Assert.All(
            from root in TheoryGen.WrittenNames.Where(name => Math.Abs(name.Alteration) < 2)
            from quality in ChordQuality.All
            from bass in new Chord(root, quality).Notes
            select new Chord(root, quality, bass),
            chord =>
                Assert.Contains(
                    ChordNamer.Name(chord.Notes, chord.Bass),
                    name =>
                        name.IsComplete
                        && name.Chord.Quality == chord.Quality
                        && name.Chord.Root.PitchClass == chord.Root.PitchClass
                        && name.Chord.Bass.PitchClass == chord.Bass.PitchClass
                )
        );

    [Fact]
    public void A_name_accounts_for_every_note_and_no_other() =>
        Gen.Select(TheoryGen.Set.Where(set => set.Count > 0), Gen.Int[0, 11])
            .Sample(
                (set, index) =>
                {
                    var bass = set.ElementAt(index % set.Count);
                    foreach (var name in ChordNamer.Name(set, bass))
                    {
                        var root = name.Chord.Root;
                        var sounding = name
                            .Chord.Quality.Intervals.Except(name.Omitted)
                            .Concat(name.Added)
                            .Select(interval => root.PitchClass.Plus(interval.Semitones))
                            .Append(bass);
                        Assert.Equal(set, PitchClassSet.Of(sounding));
                        Assert.Equal(bass, name.Chord.Bass.PitchClass);
                    }
                }
            );

    [Fact]
    public void Names_move_with_the_notes() =>
        Gen.Select(TheoryGen.Set.Where(set => set.Count > 0), Gen.Int[1, 11])
            .Sample(
                (set, up) =>
                {
                    var bass = set.First();
                    Assert.Equal(Described(set, bass, 0), Described(set.Transpose(up), bass.Plus(up), up));
                }
            );

    [Fact]
    public void The_bass_must_sound() =>
        Assert.Throws<ArgumentException>(() => ChordNamer.Name(new PitchClassSet(1), new PitchClass(1)));

    private static IEnumerable<string> Names(string notes)
    {
        var names = notes.Split(' ').Select(NoteName.Parse).ToList();
        return ChordNamer.Name(names, names[0]).Select(name => name.ToString());
    }

    private static IEnumerable<(int Root, string Symbol)> Described(PitchClassSet set, PitchClass bass, int up) =>
        ChordNamer
            .Name(set, bass)
            .Select(name => (name.Chord.Root.PitchClass.Plus(-up).Number, name.Chord.Quality.Symbol))
            .Order();
}
