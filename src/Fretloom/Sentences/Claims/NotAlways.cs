using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Claims;

/// <summary><c>is not always</c>: some case is false. A claim is said of every case, so it cannot be claimed.</summary>
internal static class NotAlways
{
    /// <summary>The failure for the first <c>not always</c> and the word before it; null when there is none.</summary>
    public static Failure? In(List<Token> tokens)
    {
        for (var not = 1; not + 1 < tokens.Count; not++)
        {
            if (tokens[not].Is("not") && tokens[not + 1].Is("always"))
            {
                return At(tokens[not - 1], tokens[not + 1]);
            }
        }

        return null;
    }

    private static Failure At(Token verb, Token always) =>
        Failure.At(
            verb,
            always,
            "a claim is said of every case: leave 'not always' out and see where it fails",
            Edit.Of(verb, always, verb.Text)
        );
}
