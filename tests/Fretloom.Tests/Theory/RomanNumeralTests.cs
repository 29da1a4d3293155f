using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class RomanNumeralTests
{
    [Fact]
    public void Every_numeral_reads_back() =>
        TheoryGen.Numeral.Sample(numeral => Assert.Equal(numeral, RomanNumeral.Parse(numeral.ToString())));

    [Fact]
    public void Every_quality_and_inversion_reads_back() =>
        Assert.All(
            from number in Enumerable.Range(1, 7)
            from quality in ChordQuality.All
            from inversion in Enumerable.Range(
                0,
                quality.IsTriad ? 3
                    : quality.IsSeventh ? 4
                    : 1
            )
            select new RomanNumeral(new Degree(number), quality, inversion),
            numeral => Assert.Equal(numeral, RomanNumeral.Parse(numeral.ToString()))
        );

    [Fact]
    public void Any_numeral_names_a_chord_in_any_key() =>
        Gen.Select(TheoryGen.Numeral, TheoryGen.Key)
            .Sample((numeral, key) => Assert.Same(numeral.Quality, numeral.InKey(key).Quality), iter: 20_000);

    [Fact]
    public void The_most_altered_numerals_name_chords_in_the_most_altered_keys()
    {
        var degrees = (
            from number in Enumerable.Range(1, 7)
            from sign in new[] { -1, 1 }
            select new Degree(number, sign * RomanNumeral.MaxAlteration)
        ).ToList();
        var keys =
            from step in Enum.GetValues<Step>()
            from alteration in new[] { -3, 3 }
            from kind in ScaleKind.All.Where(kind => kind.IsSevenNote)
            select new Key(new NoteName(step, alteration), kind);
        foreach (var key in keys)
        {
            foreach (var target in degrees.SelectMany(degree => Triads(degree, inversion: 0)))
            {
                foreach (var numeral in degrees.SelectMany(degree => Triads(degree, inversion: 2)))
                {
                    var secondary = new RomanNumeral(numeral.Degree, numeral.Quality, numeral.Inversion, target);
                    Assert.Equal(numeral.Inversion, secondary.InKey(key).Inversion);
                }
            }
        }

        static IEnumerable<RomanNumeral> Triads(Degree degree, int inversion) =>
            ChordQuality
                .All.Where(quality => quality.IsTriad)
                .Select(quality => new RomanNumeral(degree, quality, inversion));
    }

    [Fact]
    public void The_numeral_of_a_chord_names_that_chord() =>
        Gen.Select(TheoryGen.PlainNumeral, TheoryGen.Key)
            .Sample((numeral, key) => Assert.Equal(numeral, RomanNumeral.Of(numeral.InKey(key), key)));

    [Fact]
    public void Any_text_is_read_or_refused_and_what_is_read_prints_stably() =>
        Gen.String[Gen.Char["IViv#b♭♯o°ø+-majdsu/0123456789 "], 0, 10]
            .Sample(text =>
                !RomanNumeral.TryParse(text, out var numeral) || RomanNumeral.Parse(numeral.ToString()) == numeral
            );

    // Common practice, no source.
    [Theory]
    [InlineData("I", "C", "I")]
    [InlineData("ii", "Dm", "ii")]
    [InlineData("V7", "G7", "V7")]
    [InlineData("ii7", "Dm7", "ii7")]
    [InlineData("viio", "Bdim", "viio")]
    [InlineData("vii°", "Bdim", "viio")]
    [InlineData("viio7", "Bdim7", "viio7")]
    [InlineData("viiø7", "Bm7b5", "viiø7")]
    [InlineData("viiø", "Bm7b5", "viiø7")]
    [InlineData("vii m7b5", "Bm7b5", "viiø7")]
    [InlineData("viim7b5", "Bm7b5", "viiø7")]
    [InlineData("IVmaj7", "Fmaj7", "IVmaj7")]
    [InlineData("IVM7", "Fmaj7", "IVmaj7")]
    [InlineData("IV△7", "Fmaj7", "IVmaj7")]
    [InlineData("imaj7", "CmMaj7", "imaj7")]
    [InlineData("bVII", "Bb", "bVII")]
    [InlineData("♭VII", "Bb", "bVII")]
    [InlineData("#ivø7", "F#m7b5", "#ivø7")]
    [InlineData("III+", "Eaug", "III+")]
    [InlineData("Iadd6", "C6", "Iadd6")]
    [InlineData("iadd6", "Cm6", "iadd6")]
    [InlineData("I6", "C/E", "I6")]
    [InlineData("i6", "Cm/Eb", "i6")]
    [InlineData("I64", "C/G", "I64")]
    [InlineData("V65", "G7/B", "V65")]
    [InlineData("V43", "G7/D", "V43")]
    [InlineData("V42", "G7/F", "V42")]
    [InlineData("V2", "G7/F", "V42")]
    [InlineData("Imaj65", "Cmaj7/E", "Imaj65")]
    [InlineData("viiø65", "Bm7b5/D", "viiø65")]
    [InlineData("V65b5", "G7b5/B", "V65b5")]
    [InlineData("V7/ii", "A7", "V7/ii")]
    [InlineData("V65/V", "D7/F#", "V65/V")]
    [InlineData("viio7/V", "F#dim7", "viio7/V")]
    [InlineData("viio7/ii", "C#dim7", "viio7/ii")]
    [InlineData("VI/vi", "F", "VI/vi")]
    [InlineData("V7/bVII", "F7", "V7/bVII")]
    [InlineData("I6/9", "C69", "I69")]
    public void Numerals_name_chords_of_C_major(string text, string chord, string printed)
    {
        var numeral = RomanNumeral.Parse(text);

        Assert.Equal(chord, numeral.InKey(Key.Parse("C major")).ToString());
        Assert.Equal(printed, numeral.ToString());
    }

    [Theory]
    [InlineData("A minor", "III", "C")]
    [InlineData("A minor", "V7", "E7")]
    [InlineData("A harmonic minor", "bVII", "G")]
    [InlineData("A harmonic minor", "viio7", "G#dim7")]
    [InlineData("Ab major", "ii", "Bbm")]
    public void Numerals_count_the_keys_own_scale(string key, string numeral, string chord) =>
        Assert.Equal(chord, RomanNumeral.Parse(numeral).InKey(Key.Parse(key)).ToString());

    [Theory]
    [InlineData("")]
    [InlineData("iI")]
    [InlineData("IIII")]
    [InlineData("VIIIV")]
    [InlineData("IIm7")]
    [InlineData("iimaj")]
    [InlineData("Vo")]
    [InlineData("V7/V7")]
    [InlineData("V/V/V")]
    [InlineData("V/")]
    [InlineData("bbbVII")]
    [InlineData("8")]
    public void What_is_no_numeral_is_refused(string text) => Assert.False(RomanNumeral.TryParse(text, out _));

    [Theory]
    [InlineData("C/D", "I")]
    [InlineData("C9/E", "I9")]
    [InlineData("Am7/G", "vi42")]
    public void A_bass_that_figures_cannot_tell_is_left_out(string chord, string numeral) =>
        Assert.Equal(numeral, RomanNumeral.Of(Chord.Parse(chord), Key.Parse("C major")).ToString());
}
