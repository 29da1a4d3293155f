using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Studio.Client.See;
using Fretloom.Studio.Client.Words;

namespace Fretloom.Studio.Client.Tests.See;

public class SpotWordsTests
{
    private static SpotWords Of(Spot spot, params ValueList<Spot> chosen) =>
        SpotWords.Of(
            ShowQuestion.Answer("show the notes of the key, in C major", ShowDefaults.Standard).Value!,
            spot,
            chosen,
            new Labels()
        );

    /// <summary>Triads and seventh chords of C major that hold F: common practice, no source.</summary>
    [Fact]
    public void A_spot_of_the_key_tells_its_triads_and_then_its_seventh_chords()
    {
        var words = Of(new Spot(4, 3));

        Assert.Equal("String 4, fret 3: F (F3) · degree 4", words.Place);
        Assert.Equal("in ii, IV, vii°; in ii7, IVmaj7, V7, viiø7", words.Chords);
        Assert.Equal(words.Chords, words.Rest);
    }

    [Fact]
    public void A_spot_outside_the_key_belongs_to_none_and_tells_its_distance()
    {
        var words = Of(new Spot(4, 4), new Spot(4, 3));

        Assert.Equal("", words.Chords);
        Assert.StartsWith("String 4, fret 4: F♯ (F♯3) · outside the key · ", words.Place, StringComparison.Ordinal);
        Assert.EndsWith(" mm from 4:3", words.Rest, StringComparison.Ordinal);
    }
}
