using System.Globalization;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;
using Fretloom.Theory;

namespace Fretloom.Sentences;

/// <summary>Reads show sentences, and the phrases that stand alone in the front matter of a lesson.</summary>
/// <remarks>
/// Every text is answered, in time that grows in proportion to its length: with a value, or with an error that tells where,
/// what was expected and what was found. The guide to the sentences is <c>docs/sentences.md</c>.
/// </remarks>
public static class ShowParser
{
    /// <summary>The most characters that a sentence may have.</summary>
    public const int MaxLength = 2000;

    /// <summary>Reads a sentence. The word <c>show</c> and the full stop may be left out.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="unsaid">
    /// The instrument that is meant when the sentence names none: strings and frets are then checked against it. Null leaves them unchecked.
    /// </param>
    public static SentenceResult<ShowSentence> Parse(string text, Instrument? unsaid = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        Failure? Read(string sentence) => ShowReader.Read(sentence, unsaid, out _);
        return TooLong(text) is { } error ? SentenceResult<ShowSentence>.Wrong(error)
            : ShowReader.Read(text, unsaid, out var draft) is { } failure
                ? SentenceResult<ShowSentence>.Wrong(Repairs.Error(text, failure, Read))
            : SentenceResult<ShowSentence>.Read(draft.Sentence);
    }

    /// <summary>Where a part of a sentence stands, so that an error found later can point at it.</summary>
    /// <param name="text">The sentence; it need not be right.</param>
    /// <param name="part">The part; the first phrase of it counts.</param>
    /// <returns>The column, counted from 1, and the length; null when the sentence does not say it.</returns>
    public static (int Column, int Length)? PlaceOf(string text, ShowPhrase part)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MaxLength)
        {
            return null;
        }

        ShowReader.Read(text, null, out var draft);
        return draft.PlaceOf(part) is { } place ? (place.Start + 1, place.Length) : null;
    }

    /// <summary>The phrases of a sentence, so that each can be changed where it stands.</summary>
    /// <param name="text">The sentence; it need not be right.</param>
    /// <returns>In reading order, as far as the sentence reads well. Phrases of one kind that follow each other count as one.</returns>
    public static ValueList<PlacedPhrase> PhrasesOf(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > MaxLength)
        {
            return [];
        }

        ShowReader.Read(text, null, out var draft);
        var phrases = new List<PlacedPhrase>();
        foreach (var (kind, place) in draft.Phrases)
        {
            if (phrases is [.., var last] && last.Kind == kind)
            {
                phrases[^1] = last with { Length = place.Start + place.Length + 1 - last.Column };
            }
            else
            {
                phrases.Add(new PlacedPhrase(kind, place.Start + 1, place.Length));
            }
        }

        return phrases.ToValueList();
    }

    /// <summary>Reads an instrument with or without article, perhaps with its tuning: <c>low-G ukulele</c>, <c>guitar tuned D2 A2 D3 G3 A3 D4</c>.</summary>
    public static SentenceResult<Instrument> ParseInstrument(string text) =>
        ParseAlone(text, at => (InstrumentPhrase.Read(at, out var instrument), instrument!));

    /// <summary>Reads a key: <c>F major</c>, <c>B-flat minor</c>.</summary>
    public static SentenceResult<Key> ParseKey(string text) =>
        ParseAlone(text, at => (KeyPhrase.Read(at, out var key), key!));

    /// <summary>Reads a hand: <c>small</c>, <c>a child's hand</c>, <c>176 mm</c>.</summary>
    public static SentenceResult<HandSize> ParseHand(string text) =>
        ParseAlone(text, at => (HandPhrases.Read(at, out var hand), hand));

    private static SentenceResult<T> ParseAlone<T>(string text, Func<Cursor, (Failure? Failure, T Value)> read)
        where T : notnull
    {
        ArgumentNullException.ThrowIfNull(text);
        (Failure? Failure, T Value) ReadAll(string phrase)
        {
            var at = new Cursor(phrase);
            var (failure, value) = read(at);
            return (failure ?? (at.IsAtEnd ? null : Failure.Expected("nothing more", at.Current)), value);
        }

        if (TooLong(text) is { } error)
        {
            return SentenceResult<T>.Wrong(error);
        }

        var (wrong, result) = ReadAll(text);
        return wrong is null
            ? SentenceResult<T>.Read(result)
            : SentenceResult<T>.Wrong(Repairs.Error(text, wrong, phrase => ReadAll(phrase).Failure));
    }

    /// <summary>The error for a text that is too long; null for any other.</summary>
    internal static SentenceError? TooLong(string text) =>
        text.Length <= MaxLength
            ? null
            : new SentenceError(
                MaxLength + 1,
                text.Length - MaxLength,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"expected the end of the sentence: a sentence has at most {MaxLength:N0} characters, found {text.Length:N0}"
                )
            );
}
