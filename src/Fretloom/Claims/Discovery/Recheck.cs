using Fretloom.Sentences;

namespace Fretloom.Claims.Discovery;

/// <summary>Reads a sentence back and goes through every one of its cases, apart from the search that found it.</summary>
internal static class Recheck
{
    private static readonly CheckOptions Options = new() { LooksElsewhere = false, MostFailures = 0 };

    /// <summary>In how many cases it was found true; null when it is not.</summary>
    public static long? CasesOf(ClaimSentence sentence, CancellationToken cancellation)
    {
        var read = ClaimParser.Parse(sentence.ToString());
        if (!read.IsRead || !read.Value.Equals(sentence))
        {
            return null;
        }

        // On one string set every key is gone through; on every tuning one key of each kind, which decides for twelve.
        var options = sentence.Places is PlaceScope.On ? Options with { UsesTransposition = false } : Options;
        var verdict = ClaimChecker.Check(read.Value, options, null, cancellation);
        return verdict.Verdict == Verdict.Holds ? verdict.Cases : null;
    }
}
