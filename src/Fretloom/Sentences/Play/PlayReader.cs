using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Play;

/// <summary>Reads a play sentence.</summary>
internal static class PlayReader
{
    /// <summary>Reads a sentence.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="unsaid">The instrument meant when the sentence names none; null when that is not known.</param>
    /// <param name="draft">What was read, as far as it went.</param>
    /// <returns>The first thing that is wrong, or null.</returns>
    public static Failure? Read(string text, Instrument? unsaid, out PlayDraft draft)
    {
        var play = draft = new PlayDraft();
        var at = new Cursor(text);
        return PhraseLoop.Read(at, "play", isSeparated => ReadPhrase(at, play, isSeparated))
            ?? PlayChecks.First(play, unsaid, at.Current);
    }

    private static Failure? ReadPhrase(Cursor at, PlayDraft draft, bool isSeparated)
    {
        var first = at.Current;
        foreach (var kind in PlayPhrases.All.AsSpan())
        {
            if (kind.Begins(at))
            {
                return kind.Read(at, draft) ?? draft.Note(kind, at.Since(first));
            }
        }

        foreach (var kind in Phrases.All.AsSpan())
        {
            if (kind.Begins(at))
            {
                return Misplaced(kind, at)
                    ?? kind.Read(at, draft.Material)
                    ?? draft.Material.Note(kind, at.Since(first));
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
}
