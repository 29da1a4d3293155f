using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class ChordTests
{
    [Fact]
    public void Every_chord_reads_back() =>
        TheoryGen.Chord.Sample(chord => Assert.Equal(chord, Chord.Parse(chord.ToString())));

    [Fact]
    public void Every_quality_on_every_root_reads_back() =>
        Assert.All(
            from root in TheoryGen.WrittenNames
            from quality in ChordQuality.All
            select new Chord(root, quality),
            chord => Assert.Equal(chord, Chord.Parse(chord.ToString()))
        );

    [Fact]
    public void Any_text_is_read_or_refused_and_what_is_read_prints_stably() =>
        Gen.String[Gen.Char["ABCDEFGHabdgijlmosu#b♭♯x△Δø°+-/()0123456789 "], 0, 12]
            .Sample(text => !Chord.TryParse(text, out var chord) || Chord.Parse(chord.ToString()) == chord);

    // Common practice, no source.
    [Theory]
    [InlineData("Cmaj7", "C E G B")]
    [InlineData("Bm7b5", "B D F A")]
    [InlineData("F#m7", "F# A C# E")]
    [InlineData("Abdim7", "Ab Cb Ebb Gbb")]
    [InlineData("G#7", "G# B# D# F#")]
    [InlineData("Eb13", "Eb G Bb Db F C")]
    [InlineData("C/E", "C E G")]
    [InlineData("C/D", "C E G")]
    [InlineData("Gsus4", "G C D")]
    [InlineData("Dquartal4", "D G C F")]
    public void Members_are_spelled_from_the_root(string symbol, string notes) =>
        Assert.Equal(notes, string.Join(' ', Chord.Parse(symbol).Notes));

    [Theory]
    [InlineData("Bb5", "Bb", "5")]
    [InlineData("C#5", "C#", "5")]
    [InlineData("Cb9", "Cb", "9")]
    [InlineData("C(#5)", "C", "aug")]
    [InlineData("Bbb5", "Bbb", "5")]
    [InlineData("B(b5)", "B", "majb5")]
    public void The_root_takes_the_longest_run_of_accidentals(string text, string root, string symbol)
    {
        var chord = Chord.Parse(text);

        Assert.Equal(NoteName.Parse(root), chord.Root);
        Assert.Equal(symbol, chord.Quality.Symbol);
    }

    [Theory]
    [InlineData("C/E", 1, "C/E")]
    [InlineData("Am7/G", 3, "Am7/G")]
    [InlineData("Am/F#", -1, "Am/F#")]
    [InlineData("C6/9/E", 1, "C69/E")]
    [InlineData("C/C", 0, "C")]
    public void The_bass_stands_behind_a_slash(string text, int inversion, string printed)
    {
        Assert.Equal(inversion, Chord.Parse(text).Inversion);
        Assert.Equal(printed, Chord.Parse(text).ToString());
    }

    [Theory]
    [InlineData("C7b9#9", "1 3 5 7 b9 #9")]
    [InlineData("Cm7b5", "1 3 5 7")]
    [InlineData("C13", "1 3 5 7 9 13")]
    [InlineData("Csus4", "1 4 5")]
    public void Members_are_numbered_with_an_accidental_only_where_two_share_a_number(string symbol, string members)
    {
        var chord = Chord.Parse(symbol);

        Assert.Equal(members, string.Join(' ', Enumerable.Range(0, chord.Notes.Count).Select(chord.MemberText)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("c7")]
    [InlineData("H7")]
    [InlineData("C/")]
    [InlineData("C/e")]
    [InlineData("C/H")]
    [InlineData("Cmaj7 ")]
    [InlineData("Add")]
    [InlineData("Be")]
    [InlineData("Cbbbbbbbbbb")]
    public void What_is_no_chord_is_refused(string text) => Assert.False(Chord.TryParse(text, out _));

    [Fact]
    public void A_chord_moved_up_and_down_is_the_same() =>
        Gen.Select(TheoryGen.WrittenName, TheoryGen.Quality, Gen.Int[0, 14])
            .Sample(
                (root, quality, index) =>
                {
                    var chord = new Chord(root, quality);
                    var interval = ScaleKind.All[index].Intervals[^1];
                    Assert.Equal(chord, chord.Transpose(interval).Transpose(interval.Negated()));
                }
            );
}
