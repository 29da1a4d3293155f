using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class DiatonicChordsTests
{
    [Fact]
    public void Every_key_has_a_chord_of_each_kind_on_every_degree_made_of_its_own_notes() =>
        Assert.All(
            KeyTests.Keys,
            key =>
            {
                foreach (var (chords, steps) in Kinds(key))
                {
                    for (var index = 0; index < 7; index++)
                    {
                        var expected = steps.Select(step => key.Notes[(index + step) % 7]);
                        Assert.Equal(expected, chords[index].Chord.Notes);
                        Assert.Equal(chords[index].Chord, chords[index].Numeral.InKey(key));
                        Assert.Equal(chords[index].Numeral, RomanNumeral.Of(chords[index].Chord, key));
                    }
                }
            }
        );

    // Common practice, no source.
    [Theory]
    [InlineData("C major", "I ii iii IV V vi viio", "Imaj7 ii7 iii7 IVmaj7 V7 vi7 viiø7")]
    [InlineData("A minor", "i iio III iv v VI VII", "i7 iiø7 IIImaj7 iv7 v7 VImaj7 VII7")]
    [InlineData("A harmonic minor", "i iio III+ iv V VI viio", "imaj7 iiø7 IIImaj7#5 iv7 V7 VImaj7 viio7")]
    [InlineData("A melodic minor", "i ii III+ IV V vio viio", "imaj7 ii7 IIImaj7#5 IV7 V7 viø7 viiø7")]
    [InlineData("C harmonic major", "I iio iii iv V VI+ viio", "Imaj7 iiø7 iii7 ivmaj7 V7 VImaj7#5 viio7")]
    [InlineData("D dorian", "i ii III IV v vio VII", "i7 ii7 IIImaj7 IV7 v7 viø7 VIImaj7")]
    public void Chords_of_a_key_are_those_of_the_theory_book(string text, string triads, string sevenths)
    {
        var key = Key.Parse(text);

        Assert.Equal(triads, string.Join(' ', key.Triads().Select(chord => chord.Numeral)));
        Assert.Equal(sevenths, string.Join(' ', key.Sevenths().Select(chord => chord.Numeral)));
    }

    [Fact]
    public void Sixth_chords_take_the_keys_own_sixth() =>
        Assert.Equal(
            "C6 Dm6 Emb6 F6 G6 Amb6 Bdimb6",
            string.Join(' ', Key.Parse("C major").Sixths().Select(chord => chord.Chord))
        );

    [Fact]
    public void An_altered_degree_has_no_chord_of_the_key() =>
        Assert.Throws<ArgumentException>(() => Key.Parse("C major").Triad(new Degree(7, -1)));

    private static IEnumerable<(ValueList<DiatonicChord> Chords, int[] Steps)> Kinds(Key key) =>
        [
            (key.Triads(), [0, 2, 4]),
            (key.Sixths(), [0, 2, 4, 5]),
            (key.Sevenths(), [0, 2, 4, 6]),
            (key.Ninths(), [0, 2, 4, 6, 8]),
        ];
}
