using Fretloom.Pages.Tests.Pictures;
using Fretloom.Pages.Text;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Text;

public class PlainTextTests
{
    [Theory]
    [InlineData("guitar-d-major", 80, "show the notes of the key, in D major, on strings 4-1, as degrees")]
    [InlineData("guitar-d-major-narrow", 40, "show the notes of the key, in D major, on strings 4-1, as degrees")]
    [InlineData(
        "ukulele-f7-in-b-flat",
        80,
        "show the notes of the key and the chord V7, on a low-G ukulele, in Bb major, frets 0-11"
    )]
    [InlineData("banjo-names", 80, "show the notes of the key, on a banjo, in G major, frets 0-9, as names")]
    [InlineData("left-handed", 80, "show A minor pentatonic, frets 4-9, as intervals, for a left-handed player")]
    [InlineData("sevenths", 80, "show the seventh chords, on a guitar, in C major, on strings 4-1")]
    [InlineData("boxes", 80, "show C, F and G7, in first position, on a guitar")]
    [InlineData("boxes-capo", 80, "show G, with a capo at 3, in first position, on a guitar")]
    [InlineData("boxes-banjo", 80, "show G, C and D7, on a banjo, in first position")]
    [InlineData("three-notes-a-string", 80, "show the scale, 3 notes a string, on a guitar, in C major, frets 0-8")]
    [InlineData("inversions", 80, "show the chord I, in every inversion, on a guitar, in G major, on strings 3-1")]
    [InlineData("fingers-beside", 80, "show A minor pentatonic, in fifth position, with fingers")]
    [InlineData("fingers-inside", 80, "show the notes of the key, in first position, as fingers, in C major")]
    [InlineData(
        "fingers-left-handed",
        80,
        "show D7, in first position, with fingers, for a left-handed player, on a ukulele"
    )]
    [InlineData(
        "fingers-three-notes-a-string",
        80,
        "show the scale, 3 notes a string, with fingers, in G major, frets 2-8"
    )]
    [InlineData("small-hand", 80, "show the seventh chords, on strings 4-1, with fingers, for a small hand")]
    [InlineData("small-hand-narrow", 40, "show the chords V7 I, on strings 4-1, frets 0-9, for a small hand")]
    [InlineData("many-out-of-reach", 80, "show the seventh chords, in drop 3, frets 0-15, for a child's hand")]
    [InlineData("landmarks", 60, "show the landmarks, on a guitar, in G major, on strings 4-1")]
    public void Exhibits_in_characters(string name, int width, string sentence) =>
        Approved.Matches(
            $"> {sentence}\n\n{PlainText.Write(Shown.By(sentence)!, width)}",
            "Fretloom.Pages.Tests",
            "Text",
            "Expectations",
            name + ".txt"
        );

    [Fact]
    public void Too_narrow_a_terminal_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PlainText.Write(Shown.By("show every D")!, 29));
}
