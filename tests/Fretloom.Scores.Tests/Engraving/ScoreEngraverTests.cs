using Fretloom.Scores.Engraving;
using Fretloom.Scores.Scripting;

namespace Fretloom.Scores.Tests.Engraving;

/// <summary>An engine that somebody else runs sets the same systems as the program's own.</summary>
public sealed class ScoreEngraverTests(WarmEngraver warm, ScoreEngraverTests.Elsewhere elsewhere)
    : IClassFixture<WarmEngraver>,
        IClassFixture<ScoreEngraverTests.Elsewhere>
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
            engraved = new ScoreEngraver(elsewhere.Engine).EngraveAsync(exercise, 170);
        }

        Assert.Equal(expected.Systems, (await engraved).Systems);
    }

    /// <summary>The engine of somebody else, started once.</summary>
    public sealed class Elsewhere : IDisposable
    {
        internal EngraverEngine Engine { get; } = Start();

        /// <inheritdoc/>
        public void Dispose()
        {
            lock (ScriptRuntime.Gate)
            {
                Engine.Dispose();
            }
        }

        private static EngraverEngine Start()
        {
            lock (ScriptRuntime.Gate)
            {
                return new EngraverEngine(EngraverEngine.Library);
            }
        }
    }
}
