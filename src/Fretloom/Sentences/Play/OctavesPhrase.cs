using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Play;

/// <summary><c>two octaves</c>, <c>over two octaves</c>: how far a scale goes from its lowest tonic.</summary>
internal static class OctavesPhrase
{
    public static PlayPhraseKind Kind { get; } =
        new(
            "the number of octaves",
            PlayPhrase.Octaves,
            at =>
                Joined(at.Peek(Article(at))) is not null
                || (
                    Numbers.Cardinal(at.Peek(Lead(at))) is not null && at.Peek(Lead(at) + 1).IsAny("octave", "octaves")
                ),
            Read,
            "two octaves",
            "one octave",
            "in two octaves",
            "over 2 octaves",
            "two-octave"
        );

    /// <summary>The words of the phrase.</summary>
    public static string WordsOf(int octaves) => octaves == 1 ? "one octave" : $"{Numbers.InWords(octaves)} octaves";

    // The two-octave G major scale.
    private static int Article(Cursor at) => at.Current.IsAny("a", "the") ? 1 : 0;

    private static int? Joined(Token token) => Numbers.Joined(token, "octave", "octaves");

    private static int Lead(Cursor at) => at.Current.IsAny("in", "over", "through", "for") ? 1 : 0;

    private static Failure? Read(Cursor at, PlayDraft draft)
    {
        var isJoined = Joined(at.Peek(Article(at))) is not null;
        at.Skip(isJoined ? Article(at) : Lead(at));
        var token = at.Current;
        var octaves = (Joined(token) ?? Numbers.Cardinal(token))!.Value;
        at.Skip(isJoined ? 1 : 2);
        at.Accept("of");
        if (octaves is < 1 or > PlaySentence.MostOctaves)
        {
            return Failure.At(
                token,
                $"expected one to {Numbers.InWords(PlaySentence.MostOctaves)} octaves, found {Failure.Shown(token)}",
                Edit.Of(token, (octaves < 1 ? "one" : "two") + (isJoined ? "-octave" : ""))
            );
        }

        draft.Sentence = draft.Sentence with { Octaves = octaves };
        return null;
    }
}
