using System.Text.Json;

namespace Fretloom.Cli.Tests;

/// <summary>What a hand adds to the documents of <c>show</c>.</summary>
public class ShowHandTests
{
    [Fact]
    public void A_shape_out_of_reach_has_its_fingers_its_width_what_to_do_instead_and_cautions()
    {
        var json = Shown("the chord V7, in C major, on strings 4-1, frets 0-8, for a small hand");
        var shape = Assert.Single(json.GetProperty("shapes").EnumerateArray());
        var instead = shape.GetProperty("instead")[0];

        Assert.Equal(165, json.GetProperty("hand").GetDouble());
        Assert.Equal(
            "The shape is very wide for a hand of 165 mm.",
            json.GetProperty("reach").GetProperty("summary").GetString()
        );
        Assert.Single(json.GetProperty("reach").GetProperty("lines").EnumerateArray());
        Assert.Equal("4 3 2 1", Fingers(shape));
        Assert.Equal("very wide", shape.GetProperty("width").GetString());
        Assert.Equal("capo", instead.GetProperty("way").GetString());
        Assert.Equal("with a capo at 1, frets 2-4", instead.GetProperty("words").GetString());
        Assert.Equal(1, instead.GetProperty("capo").GetInt32());
        Assert.Equal("4 3 2 0", Fingers(instead));
        Assert.StartsWith(
            "Very wide for a hand of 165 mm on this instrument:",
            shape.GetProperty("cautions")[0].GetString(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_shape_in_reach_has_fingers_and_no_more()
    {
        var json = Shown("C, in first position, one shape each");
        var shape = Assert.Single(json.GetProperty("shapes").EnumerateArray());

        Assert.Equal(189, json.GetProperty("hand").GetDouble());
        Assert.False(json.TryGetProperty("reach", out _));
        Assert.Equal("3 2 0 1 0", Fingers(shape));
        Assert.Equal("in reach", shape.GetProperty("width").GetString());
        Assert.All(["instead", "cautions", "whyNot"], name => Assert.False(shape.TryGetProperty(name, out _)));
    }

    [Fact]
    public void A_shape_without_a_fingering_says_why()
    {
        var shapes = Shown("Cmaj9, in any order, one note per string").GetProperty("shapes").EnumerateArray().ToList();
        var last = shapes[^1];

        Assert.Equal("very wide", last.GetProperty("width").GetString());
        Assert.NotEmpty(last.GetProperty("whyNot").GetString()!);
        Assert.False(last.GetProperty("spots")[0].TryGetProperty("finger", out _));
    }

    [Theory]
    [InlineData("the notes of the key, in fifth position, as fingers", true)]
    [InlineData("the notes of the key, in fifth position", false)]
    public void Single_notes_have_fingers_when_asked_for(string sentence, bool haveFingers) =>
        Assert.All(
            Shown(sentence).GetProperty("notes").EnumerateArray(),
            note => Assert.Equal(haveFingers, note.TryGetProperty("finger", out _))
        );

    private static JsonElement Shown(string sentence) => Call.Fretloom("show", sentence, "--json").Json;

    private static string Fingers(JsonElement shape) =>
        string.Join(
            ' ',
            shape.GetProperty("spots").EnumerateArray().Select(spot => spot.GetProperty("finger").GetInt32())
        );
}
