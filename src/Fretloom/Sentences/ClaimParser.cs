using Fretloom.Claims;
using Fretloom.Sentences.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences;

/// <summary>Reads claims: sentences that speak of every key, or of many places.</summary>
/// <remarks>
/// Every text is answered, in time that grows in proportion to its length: with a value, or with an error that tells where,
/// what was expected and what was found. What can be known to be wrong before a claim is checked is an error here: a string that the
/// instrument lacks, a shape on too many strings. The guide to the language is <c>docs/claims.md</c>.
/// </remarks>
public static class ClaimParser
{
    /// <summary>The most characters that a claim may have.</summary>
    public const int MaxLength = ShowParser.MaxLength;

    /// <summary>Reads a claim.</summary>
    /// <param name="text">The claim, with its full stop.</param>
    /// <param name="defaults">What it may leave unsaid; null for <see cref="ClaimDefaults.Standard"/>.</param>
    public static SentenceResult<ClaimSentence> Parse(string text, ClaimDefaults? defaults = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        var unsaid = defaults ?? ClaimDefaults.Standard;
        Failure? Read(string sentence) => ClaimReader.Read(sentence, unsaid, out _);
        return ShowParser.TooLong(text) is { } error ? SentenceResult<ClaimSentence>.Wrong(error)
            : ClaimReader.Read(text, unsaid, out var claim) is { } failure
                ? SentenceResult<ClaimSentence>.Wrong(Repairs.Error(text, failure, Read, mendsAll: true))
            : SentenceResult<ClaimSentence>.Read(claim!);
    }
}
