using Fretloom.Hand;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Lines are fingered as teachers finger them (common practice, no source), and nothing else costs as little.</summary>
public class PracticeTests
{
    public static TheoryData<PracticeLine> Set => [.. PracticeLines.Set];

    // Lines that the model was not set by. Those it does not finger as teachers do are listed, and counted in docs/hand.md.
    [Fact]
    public void Fresh_lines_are_fingered_as_teachers_do_but_for_these()
    {
        string[] missed = ["bass: bass, chromatic, low", "bass: bass, walking up in first position"];

        var found = PracticeLines.Fresh.Concat(PracticeLines.Later).Where(line => !IsFingeredAsTaught(line));

        Assert.Equal(68, PracticeLines.Fresh.Concat(PracticeLines.Later).Count());
        Assert.Equal(missed, found.Select(line => line.ToString()));
    }

    [Theory]
    [MemberData(nameof(Set))]
    public void Lines_that_the_weights_were_set_by_are_fingered_as_teachers_do(PracticeLine line)
    {
        foreach (var handMm in new[] { 181.0, 193 })
        {
            var fingerings = LineFingering.Find(line.Player(handMm), line.Notes, [], 2).Fingerings;

            Assert.Equal(line.Fingers, Fingers(fingerings[0]));
            Assert.True(fingerings[1].Cost - fingerings[0].Cost > 0.0005, "There is another as good.");
        }
    }

    [Theory]
    [MemberData(nameof(Set))]
    public void Lines_played_downward_have_the_fingers_of_those_played_upward(PracticeLine line)
    {
        var down = LineFingering.Find(line.Player(189), line.Notes.Reverse().ToValueList(), []).Best!;

        Assert.Equal(line.Fingers, Fingers(down with { Notes = down.Notes.Reverse().ToValueList() }));
    }

    private static bool IsFingeredAsTaught(PracticeLine line) =>
        new[] { 181.0, 193 }.All(handMm =>
            LineFingering.Find(line.Player(handMm), line.Notes, [], 2).Fingerings is var best
            && Fingers(best[0]) == line.Fingers
            && best[1].Cost - best[0].Cost > 0.0005
        );

    private static string Fingers(Fingering fingering) =>
        string.Join(' ', fingering.Notes.Select(note => (int)note.Finger));
}
