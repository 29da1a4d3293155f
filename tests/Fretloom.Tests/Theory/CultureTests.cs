using System.Globalization;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

/// <summary>
/// The program runs with invariant globalization, in which every named culture writes alike; so these tests set a culture of
/// their own that writes numbers like none.
/// </summary>
public class CultureTests
{
    [Fact]
    public void Culture_never_changes_what_is_written_or_read()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = Odd();
        try
        {
            Assert.Equal("~1", string.Create(Thread.CurrentThread.CurrentCulture, $"{-1}"));
            Assert.Equal("C-1", new Pitch(default, -1).ToString());
            Assert.Equal(-1, Pitch.Parse("C-1").Octave);
            Assert.Equal("-M3", new Interval(-2, -4).ToString());
            Assert.Equal("b13", Interval.Parse("m13").ToDegreeText());
            Assert.Equal("{0,4,7}", new PitchClassSet(0b10010001).ToString());
            Assert.Equal("vii\u00f87/III", RomanNumeral.Parse("vii\u00f87/III").ToString());
            Assert.Equal("I", RomanNumeral.Parse("I").ToString());
            Assert.Equal("i", RomanNumeral.Parse("i").ToString());
            Assert.Equal(ScaleKind.MinorPentatonic, ScaleKind.Parse("MINOR PENTATONIC"));
            Assert.Equal("G# harmonic minor", Key.Parse("g-sharp harmonic minor").ToString());
            TheoryGen.Chord.Sample(chord => Assert.Equal(chord, Chord.Parse(chord.ToString())), threads: 1);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    private static CultureInfo Odd()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NegativeSign = "~";
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        return culture;
    }
}
