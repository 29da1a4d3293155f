using Fretloom.Neck;
using Fretloom.Sentences.Play;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences;

/// <summary>Reads play sentences.</summary>
/// <remarks>As <see cref="ShowParser"/> does: every text is answered, with a value or with an error that tells where.</remarks>
public static class PlayParser
{
    /// <summary>Reads a sentence. The word <c>play</c> and the full stop may be left out.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="unsaid">
    /// The instrument that is meant when the sentence names none: strings and frets are then checked against it. Null leaves them unchecked.
    /// </param>
    public static SentenceResult<PlaySentence> Parse(string text, Instrument? unsaid = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        Failure? Read(string sentence) => PlayReader.Read(sentence, unsaid, out _);
        return ShowParser.TooLong(text) is { } error ? SentenceResult<PlaySentence>.Wrong(error)
            : PlayReader.Read(text, unsaid, out var draft) is { } failure
                ? SentenceResult<PlaySentence>.Wrong(Repairs.Error(text, failure, Read))
            : SentenceResult<PlaySentence>.Read(draft.Sentence);
    }

    /// <summary>Where a part of a sentence stands, so that an error found later can point at it.</summary>
    /// <returns>The column, counted from 1, and the length; null when the sentence does not say it.</returns>
    public static (int Column, int Length)? PlaceOf(string text, PlayPhrase part) =>
        Place(text, draft => draft.PlaceOf(part));

    /// <summary>Where a part that show sentences have too stands.</summary>
    /// <returns>The column, counted from 1, and the length; null when the sentence does not say it.</returns>
    public static (int Column, int Length)? PlaceOf(string text, ShowPhrase part) =>
        Place(text, draft => draft.Material.PlaceOf(part));

    private static (int Column, int Length)? Place(string text, Func<PlayDraft, Token?> placeOf)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > ShowParser.MaxLength)
        {
            return null;
        }

        PlayReader.Read(text, null, out var draft);
        return placeOf(draft) is { } place ? (place.Start + 1, place.Length) : null;
    }
}
