using Fretloom.Sentences;

namespace Fretloom.Exhibits;

/// <summary>A sentence as text, read and worked out in one step.</summary>
internal static class SentenceAnswer
{
    /// <summary>Works out a sentence that was read.</summary>
    /// <param name="read">The sentence, or why it cannot be read.</param>
    /// <param name="resolve">
    /// Works it out, or tells what stands in the way and where the text says it, in columns counted from 1; no place when it does not.
    /// </param>
    /// <returns>The answer, or the first error with its place; at column 1 when it is about something the sentence does not say.</returns>
    public static SentenceResult<TAnswer> Of<TSentence, TAnswer>(
        SentenceResult<TSentence> read,
        Func<TSentence, (TAnswer? Answer, string? WhyNot, (int Column, int Length)? Place)> resolve
    )
        where TSentence : notnull
        where TAnswer : class
    {
        if (!read.IsRead)
        {
            return SentenceResult<TAnswer>.Wrong(read.Errors[0]);
        }

        var (answer, whyNot, place) = resolve(read.Value);
        var (column, length) = place ?? (1, 0);
        return answer is not null
            ? SentenceResult<TAnswer>.Read(answer)
            : SentenceResult<TAnswer>.Wrong(new SentenceError(column, length, whyNot!));
    }
}
