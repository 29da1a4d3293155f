namespace Fretloom.Sentences.Reading;

/// <summary>Turns a failure into an error whose suggestion was tried.</summary>
internal static class Repairs
{
    /// <summary>The error for a failure, with the first of its changes that mends the words it touches.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="failure">Why it cannot be read.</param>
    /// <param name="read">Reads a sentence without suggestions; null when it reads well.</param>
    /// <param name="mendsAll">
    /// Whether only a misspelled word may be mended where the sentence is wrong further on as well: other words than those that stand there
    /// must make the whole sentence read well.
    /// </param>
    public static SentenceError Error(string text, Failure failure, Func<string, Failure?> read, bool mendsAll = false)
    {
        foreach (var edit in failure.Edits)
        {
            var repair = new SentenceRepair(edit.Start + 1, edit.Length, edit.Text);
            var isEnough = !mendsAll || IsSpelling(text, edit);
            if (read(repair.ApplyTo(text)) is not { } next || (isEnough && IsBeyond(next, edit, failure)))
            {
                return Plain(failure, failure.NamesChange ? "" : $"; did you mean '{edit.Text}'?") with
                {
                    Repair = repair,
                };
            }
        }

        return Plain(failure, "");
    }

    // What is still wrong stands behind the words changed, and behind what was wrong before.
    private static bool IsBeyond(Failure next, Edit edit, Failure failure) =>
        next.Start >= edit.Start + edit.Text.Length
        && (edit.Start >= failure.Start || next.Start > failure.Start + edit.Text.Length - edit.Length);

    private static bool IsSpelling(string text, Edit edit) =>
        EditDistance.Between(text.Substring(edit.Start, edit.Length).ToLowerInvariant(), edit.Text.ToLowerInvariant())
        <= EditDistance.Tolerated(edit.Length);

    private static SentenceError Plain(Failure failure, string suggestion) =>
        new(failure.Start + 1, failure.Length, failure.Message + suggestion);
}
