using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>Reads a show sentence phrase by phrase; each step moves on, so it always ends.</summary>
internal static class ShowReader
{
    /// <summary>Reads a sentence.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="unsaid">The instrument meant when the sentence names none; null when that is not known.</param>
    /// <param name="draft">What was read, as far as it went.</param>
    /// <returns>The first thing that is wrong, or null.</returns>
    public static Failure? Read(string text, Instrument? unsaid, out ShowDraft draft)
    {
        draft = new ShowDraft();
        var at = new Cursor(text);
        at.Accept("show");
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

        return ShowChecks.First(draft, unsaid, at.Current);
    }

    private static Failure? ReadPhrase(Cursor at, ShowDraft draft, bool isSeparated)
    {
        var first = at.Current;
        foreach (var kind in Phrases.All.AsSpan())
        {
            if (kind.Begins(at))
            {
                return kind.Read(at, draft)
                    ?? draft.Note(kind, new Token(TokenKind.Word, first.Start, at.Previous.End - first.Start, ""));
            }
        }

        return Openings.At(at, isSeparated);
    }
}
