using Fretloom.Pages.Pictures;

namespace Fretloom.Pages.Tests.Pictures;

/// <summary>What is said beside live cards for the sake of the hand.</summary>
public class LiveCardsTests
{
    private const string General = "Warm up first and do not force it.";

    [Fact]
    public void Nothing_is_said_of_what_every_hand_reaches() =>
        Assert.Empty(LiveCards.Cautions(Shown.By("C and G, on a ukulele, in first position")!));

    [Theory]
    [InlineData(
        "the chord F#dim, on a guitar, with fingers",
        "Very wide for a hand of 189 mm on this instrument: F♯dim"
    )]
    [InlineData(
        "the spots 6:1 5:6 2:1, with fingers",
        "Very wide for a hand of 189 mm on this instrument: 156 mm between"
    )]
    public void What_is_wide_is_named_and_then_spoken_of_in_general(string sentence, string words)
    {
        var said = LiveCards.Cautions(Shown.By(sentence)!);

        Assert.Equal(2, said.Count);
        Assert.StartsWith(words, said[0], StringComparison.Ordinal);
        Assert.StartsWith(General, said[1], StringComparison.Ordinal);
    }

    [Fact]
    public void For_a_named_hand_every_shape_out_of_reach_has_its_line()
    {
        var exhibit = Shown.By("the seventh chords, on a guitar, on strings 4-1, for a small hand")!;

        var said = LiveCards.Cautions(exhibit);

        Assert.Contains("in reach of a hand of 165 mm", said[0], StringComparison.Ordinal);
        Assert.Equal(exhibit.InHand.Count(shape => shape.Width != Fretloom.Hand.Width.InReach), said.Count - 2);
        Assert.StartsWith(General, said[^1], StringComparison.Ordinal);
    }
}
