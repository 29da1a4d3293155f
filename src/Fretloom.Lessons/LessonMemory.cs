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
    private readonly Kept<(string, int), SentenceResult<ShowSentence>> _shows = new();
    private readonly Kept<(string, int), SentenceResult<PlaySentence>> _plays = new();
    private readonly Kept<(ShowSentence, int), Resolution> _shown = new();
    private readonly Kept<(PlaySentence, int), PlayResolution> _played = new();
    private readonly Kept<ClaimSentence, (ClaimVerdict? Verdict, string? Refusal)> _checked = new();

    // The same number means the same defaults, which are hashed once for a whole lesson.
    private readonly Kept<ShowDefaults, int> _numbers = new();
    private ShowDefaults? _defaults;
    private int _number;
    private int _last;

    /// <summary>Reads the lesson as it now is.</summary>
    /// <param name="text">Its text.</param>
    /// <exception cref="OperationCanceledException">A check of a claim was stopped.</exception>
    public Lesson Parse(string text)
    {
        _numbers.NextRound();
        _shows.NextRound();
        _plays.NextRound();
        _shown.NextRound();
        _played.NextRound();
        _checked.NextRound();
        return Lesson.Of(ParsedLesson.Read(new SourceText(text), checks ?? ClaimChecks.Default, this));
    }

    internal SentenceResult<ShowSentence> ReadShow(string text, ShowDefaults defaults) =>
        _shows.Of((text, NumberOf(defaults)), asked => ShowParser.Parse(asked.Item1, defaults.Instrument));

    internal SentenceResult<PlaySentence> ReadPlay(string text, ShowDefaults defaults) =>
        _plays.Of((text, NumberOf(defaults)), asked => PlayParser.Parse(asked.Item1, defaults.Instrument));

    internal Resolution Of(ShowSentence sentence, ShowDefaults defaults) =>
        _shown.Of((sentence, NumberOf(defaults)), asked => ShowResolver.Resolve(asked.Item1, defaults));

    internal PlayResolution Of(PlaySentence sentence, ShowDefaults defaults) =>
        _played.Of((sentence, NumberOf(defaults)), asked => PlayResolver.Resolve(asked.Item1, defaults));

    internal (ClaimVerdict? Verdict, string? Refusal) Of(
        ClaimSentence sentence,
        Func<ClaimSentence, (ClaimVerdict? Verdict, string? Refusal)> check
    ) => _checked.Of(sentence, check);

    private int NumberOf(ShowDefaults defaults)
    {
        if (!ReferenceEquals(defaults, _defaults))
        {
            (_defaults, _number) = (defaults, _numbers.Of(defaults, _ => ++_last));
        }

        return _number;
    }
}
