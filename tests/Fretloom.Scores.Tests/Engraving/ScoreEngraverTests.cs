using Fretloom.Scores.Engraving;
using Fretloom.Scores.Scripting;

namespace Fretloom.Scores.Tests.Engraving;

/// <summary>An engine that somebody else runs sets the same systems as the program's own.</summary>
public sealed class ScoreEngraverTests(WarmEngraver warm) : IClassFixture<WarmEngraver>
{
    public static TheoryData<string> Sentences => [.. Repertoire.Others];

    [Theory]
    [MemberData(nameof(Sentences))]
    public async Task The_systems_are_those_of_the_engraver(string sentence)
    {
        var exercise = Played.Of(sentence);
        var expected = warm.Engraver.Engrave(exercise, 170);

        Task<EngravedExercise> engraved;
        lock (ScriptRuntime.Gate)
        {
            using var engine = new EngraverEngine(EngraverEngine.Library);
            engraved = new ScoreEngraver(engine).EngraveAsync(exercise, 170);
        }

        Assert.Equal(expected.Systems, (await engraved).Systems);
    }
}
