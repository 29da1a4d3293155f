using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class AccidentalsTests
{
    [Theory]
    [InlineData("Bb", "B♭")]
    [InlineData("Bbm7b5", "B♭m7♭5")]
    [InlineData("C7b9#11", "C7♭9♯11")]
    [InlineData("Ab/Eb", "A♭/E♭")]
    [InlineData("bVII", "♭VII")]
    [InlineData("#ivø7", "♯ivø7")]
    [InlineData("V7/bVII", "V7/♭VII")]
    [InlineData("b3", "♭3")]
    [InlineData("#11", "♯11")]
    [InlineData("(b5)", "(♭5)")]
    [InlineData("F##4", "F𝄪4")]
    [InlineData("Bbb3", "B𝄫3")]
    [InlineData("Bb-D-F", "B♭-D-F")]
    [InlineData("Bb major, F# harmonic minor.", "B♭ major, F♯ harmonic minor.")]
    [InlineData("C7b9 (no 5, with b13)", "C7♭9 (no 5, with ♭13)")]
    public void Music_gets_its_signs(string ascii, string pretty) => Assert.Equal(pretty, Accidentals.Pretty(ascii));

    [Theory]
    [InlineData("The bass bumps along, but Abby grabs a bib.")]
    [InlineData("Add a B-flat blues; Bob's double bass.")]
    [InlineData("# of bars: bbb, bb, b")]
    [InlineData("Beb Bab Cab Dab Fab Gab")]
    public void Words_are_never_touched(string text) => Assert.Equal(text, Accidentals.Pretty(text));

    [Fact]
    public void Every_chord_and_numeral_reads_back_from_its_pretty_form()
    {
        TheoryGen.Chord.Sample(chord => Assert.Equal(chord, Chord.Parse(Accidentals.Pretty(chord.ToString()))));
        TheoryGen.Numeral.Sample(numeral =>
            Assert.Equal(numeral, RomanNumeral.Parse(Accidentals.Pretty(numeral.ToString())))
        );
    }

    [Fact]
    public void No_ASCII_accidental_is_left_in_a_chord_symbol() =>
        TheoryGen.Chord.Sample(chord =>
            Assert.False(Accidentals.Pretty(chord.ToString()).AsSpan().ContainsAny('b', '#'))
        );

    [Fact]
    public void Making_it_pretty_twice_changes_nothing_more() =>
        Gen.String[Gen.Char["ABCDEFGbbb##m7195dimsu /-(),.IViv"], 0, 20]
            .Sample(text => Assert.Equal(Accidentals.Pretty(text), Accidentals.Pretty(Accidentals.Pretty(text))));
}
