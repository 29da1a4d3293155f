using Fretloom.Neck;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Show;

/// <summary>Reads a show sentence.</summary>
internal static class ShowReader
{
    /// <summary>Reads a sentence.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="unsaid">The instrument meant when the sentence names none; null when that is not known.</param>
    /// <param name="draft">What was read, as far as it went.</param>
    /// <returns>The first thing that is wrong, or null.</returns>
    public static Failure? Read(string text, Instrument? unsaid, out ShowDraft draft)
    {
        var show = draft = new ShowDraft();
        var at = new Cursor(text);
        return PhraseLoop.Read(at, "show", isSeparated => ReadPhrase(at, show, isSeparated))
            ?? ShowChecks.First(show, unsaid, at.Current);
    }

    private static Failure? ReadPhrase(Cursor at, ShowDraft draft, bool isSeparated)
    {
        var first = at.Current;
        foreach (var kind in Phrases.All.AsSpan())
        {
            if (kind.Begins(at))
            {
                return Suggested(kind.Read(at, draft), at.BackTo(first), draft) ?? draft.Note(kind, at.Since(first));
            }
        }

        var place = at.BackTo(first);
        return Suggested(Openings.At(at, isSeparated), place, draft);
    }

    // What is near to a word that was read goes before what a whole wording may mean.
    private static Failure? Suggested(Failure? failure, Cursor at, ShowDraft draft)
    {
        if (failure is null)
        {
            return null;
        }

        var meant = PlainWordings.At(at, hasSubject: draft.Subjects.Count > 0);
        return failure with { Edits = [.. failure.Edits, .. meant] };
    }
}
