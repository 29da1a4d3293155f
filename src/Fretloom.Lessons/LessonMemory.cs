using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Lessons;

/// <summary>Reads one lesson again and again while it is written, and works out again only what changed.</summary>
/// <remarks>
/// What comes out is what <see cref="Lesson.Parse"/> gives, but for claims that take longer to check than <paramref name="checks"/> allow. A
/// sentence that is as it was, in a lesson with the same instrument, key and hand, gives the very same exhibit, exercise or verdict, so that
/// whoever draws them can tell by reference what to draw again. For one thread at a time.
/// </remarks>
/// <param name="checks">How claims are checked; null for the default.</param>
public sealed class LessonMemory(ClaimChecks? checks = null)
{
    private readonly Kept<(ShowSentence, ShowDefaults), Resolution> _shown = new();
    private readonly Kept<(PlaySentence, ShowDefaults), PlayResolution> _played = new();
    private readonly Kept<ClaimSentence, (ClaimVerdict? Verdict, string? Refusal)> _checked = new();

    /// <summary>Reads the lesson as it now is.</summary>
    /// <param name="text">Its text.</param>
    /// <exception cref="OperationCanceledException">A check of a claim was stopped.</exception>
    public Lesson Parse(string text)
    {
        _shown.NextRound();
        _played.NextRound();
        _checked.NextRound();
        return Lesson.Of(ParsedLesson.Read(new SourceText(text), checks ?? ClaimChecks.Default, this));
    }

    internal Resolution Of(ShowSentence sentence, ShowDefaults defaults) =>
        _shown.Of((sentence, defaults), asked => ShowResolver.Resolve(asked.Item1, asked.Item2));

    internal PlayResolution Of(PlaySentence sentence, ShowDefaults defaults) =>
        _played.Of((sentence, defaults), asked => PlayResolver.Resolve(asked.Item1, asked.Item2));

    internal (ClaimVerdict? Verdict, string? Refusal) Of(
        ClaimSentence sentence,
        Func<ClaimSentence, (ClaimVerdict? Verdict, string? Refusal)> check
    ) => _checked.Of(sentence, check);
}
