namespace Fretloom.Sentences.Reading;

/// <summary>What stands between the things of a list: a space, a comma, <c>and</c>, or a comma and <c>and</c>.</summary>
internal static class Series
{
    /// <summary>Where the next thing of a list begins.</summary>
    /// <param name="at">The place.</param>
    /// <param name="end">How many tokens ahead the thing before it ends.</param>
    /// <returns>Tokens ahead; the same as the end when nothing stands between.</returns>
    public static int Next(Cursor at, int end)
    {
        var next = end + (at.Peek(end).Kind == TokenKind.Comma ? 1 : 0);
        return next + (at.Peek(next).Is("and") ? 1 : 0);
    }
}
