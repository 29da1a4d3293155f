using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Studio.Client.Ask;

/// <summary>Changes one phrase of a show sentence, and whatever else must give way for the sentence to make sense.</summary>
public static class SentenceEdit
{
    /// <summary>The sentence with a phrase said, said otherwise, or left unsaid.</summary>
    /// <param name="sentence">A sentence that reads well.</param>
    /// <param name="kind">Which phrase.</param>
    /// <param name="words">What it is to say; empty to leave it unsaid.</param>
    /// <param name="answer">Works a sentence out.</param>
    /// <returns>
    /// A sentence in canonical order. Other phrases are kept unless they contradict the new one: strings that another instrument lacks, frets
    /// beyond its neck. Where nothing helps the sentence holds the new phrase and cannot be read.
    /// </returns>
    public static string With(
        string sentence,
        PhraseKind kind,
        string words,
        Func<string, SentenceResult<Exhibit>> answer
    )
    {
        var phrases = ShowParser
            .PhrasesOf(sentence)
            .Select(phrase => (phrase.Kind, Words: phrase.In(sentence)))
            .ToList();
        phrases.RemoveAll(phrase => phrase.Kind == kind);
        if (words.Length > 0)
        {
            phrases.Add((kind, words));
        }

        phrases = [.. phrases.OrderBy(phrase => Phrases.All.IndexOf(phrase.Kind))];
        var whole = Said(phrases);
        for (var text = whole; ; text = Said(phrases))
        {
            var errors = answer(text).Errors;
            if (errors.Count == 0)
            {
                return text;
            }

            // What is complained of may stand in the new words themselves.
            if (
                InTheWay(text, errors[0], kind) is not { } other
                || phrases.RemoveAll(phrase => phrase.Kind == other) == 0
            )
            {
                return whole;
            }
        }
    }

    private static string Said(IEnumerable<(PhraseKind Kind, string Words)> phrases) =>
        "show " + string.Join(", ", phrases.Select(phrase => phrase.Words));

    // The phrase that is complained of; where that is the new one, or none, the first that an instrument or a key may forbid.
    private static PhraseKind? InTheWay(string text, SentenceError error, PhraseKind kept)
    {
        var said = ShowParser
            .PhrasesOf(text)
            .Where(phrase => phrase.Kind != kept && phrase.Kind.Part != ShowPhrase.Subject);
        var others = said.ToList();
        var at = others.FindIndex(phrase =>
            error.Column >= phrase.Column && error.Column <= phrase.Column + phrase.Length
        );
        return at >= 0 ? others[at].Kind
            : others.Count > 0
                ? others
                    .OrderBy(phrase => phrase.Kind.Part is ShowPhrase.Instrument or ShowPhrase.Key ? 1 : 0)
                    .First()
                    .Kind
            : null;
    }
}
