using Fretloom.Claims;

namespace Fretloom.Lessons;

/// <summary>A claim of a lesson with what came of checking it.</summary>
/// <param name="Line">The line of its block, counted from 1.</param>
/// <param name="Verdict">What came of it.</param>
/// <param name="ExpectsFailure">Whether the lesson says that it fails.</param>
public sealed record LessonClaim(int Line, ClaimVerdict Verdict, bool ExpectsFailure)
{
    /// <summary>Whether it came out as the lesson has it. A claim with nothing to test is not wrong.</summary>
    public bool IsAsExpected =>
        ExpectsFailure
            ? Verdict.Verdict == Claims.Verdict.Fails
            : Verdict.Verdict is Claims.Verdict.Holds or Claims.Verdict.NothingToTest;
}
