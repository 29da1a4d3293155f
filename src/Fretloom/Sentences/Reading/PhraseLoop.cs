namespace Fretloom.Sentences.Reading;

/// <summary>Reads a sentence phrase by phrase, between commas and <c>and</c>; each step moves on, so it always ends.</summary>
internal static class PhraseLoop
{
    /// <summary>Reads every phrase.</summary>
    /// <param name="at">The beginning.</param>
    /// <param name="verb">The word that may stand before the first phrase.</param>
    /// <param name="readPhrase">Reads the phrase here, told whether it stands at the beginning or behind a comma or <c>and</c>.</param>
    /// <returns>The first thing that is wrong, or null.</returns>
    public static Failure? Read(Cursor at, string verb, Func<bool, Failure?> readPhrase)
    {
        at.Accept(verb);
        var isSeparated = true;
        do
        {
            if (readPhrase(isSeparated) is { } failure)
            {
                return failure;
            }

            var hasComma = at.Accept(TokenKind.Comma);
            isSeparated = at.Accept("and") || hasComma;
        } while (isSeparated || !at.IsAtEnd);

        return null;
    }
}
