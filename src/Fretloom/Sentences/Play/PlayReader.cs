using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Play;

/// <summary>Reads a play sentence phrase by phrase; each step moves on, so it always ends.</summary>
internal static class PlayReader
{
    /// <summary>Reads a sentence.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="unsaid">The instrument meant when the sentence names none; null when that is not known.</param>
    /// <param name="draft">What was read, as far as it went.</param>
    /// <returns>The first thing that is wrong, or null.</returns>
    public static Failure? Read(string text, Instrument? unsaid, out PlayDraft draft)
    {
        draft = new PlayDraft();
        var at = new Cursor(text);
        at.Accept("play");
        var isSeparated = true;
        do
        {
            if (ReadPhrase(at, draft, isSeparated) is { } failure)
            {
                return failure;
            }

            var hasComma = at.Accept(TokenKind.Comma);
            isSeparated = at.Accept("and") || hasComma;
        } while (isSeparated || !at.IsAtEnd);

        return PlayChecks.First(draft, unsaid, at.Current);
    }

    private static Failure? ReadPhrase(Cursor at, PlayDraft draft, bool isSeparated)
    {
        var first = at.Current;
        foreach (var kind in PlayPhrases.All.AsSpan())
        {
            if (kind.Begins(at))
            {
                return kind.Read(at, draft) ?? draft.Note(kind, Since(first, at));
            }
        }

        foreach (var kind in Phrases.All.AsSpan())
        {
            if (kind.Begins(at))
            {
                return Misplaced(kind, at)
                    ?? kind.Read(at, draft.Material)
                    ?? draft.Material.Note(kind, Since(first, at));
            }
        }

        return PlayOpenings.At(at, isSeparated);
    }

    private static Failure? Misplaced(PhraseKind kind, Cursor at) =>
        kind == LabelsPhrases.Labels ? PlayOpenings.AfterAs(at)
        : kind == OneShapePhrase.Kind
            ? Failure.At(
                at.Current,
                "of each chord one shape is played in any case; 'one shape each' belongs to show sentences"
            )
        : null;

    private static Token Since(Token first, Cursor at) =>
        new(TokenKind.Word, first.Start, at.Previous.End - first.Start, "");
}
