using Fretloom.Exhibits;

namespace Fretloom.Tests.Exhibits;

public class ShapePlaceTests
{
    // Common practice, no source: the seventh chord on G, close position, on guitar strings 4 to 1; the open G chord of a banjo,
    // whose short string begins at fret 5.
    [Theory]
    [InlineData("the chord V7, on strings 4-1, frets 0-8", "frets 5-4-3-1 on strings 4-1")]
    [InlineData("G, on a banjo, in first position, one shape each", "frets 0-0-0-0-0 on strings 5-1")]
    public void A_chord_is_told_fret_by_fret_with_0_for_an_open_string(string sentence, string place)
    {
        var exhibit = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;

        Assert.Equal(place, exhibit.Shapes!.Value[0].FretByFret(exhibit.Map.Instrument));
    }
}
