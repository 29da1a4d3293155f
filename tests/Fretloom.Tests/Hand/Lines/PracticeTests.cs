using Fretloom.Hand;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Lines are fingered as teachers finger them (common practice, no source), and nothing else costs as little.</summary>
public class PracticeTests
{
    public static TheoryData<PracticeLine> Set => [.. PracticeLines.Set];

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

    private static string Fingers(Fingering fingering) =>
        string.Join(' ', fingering.Notes.Select(note => (int)note.Finger));
}
