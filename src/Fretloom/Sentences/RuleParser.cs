using Fretloom.Hand;
using Fretloom.Sentences.Rules;

namespace Fretloom.Sentences;

/// <summary>Reads what a teacher asks of the fingering of a line: <c>start with finger two</c>, <c>in 5th position</c>, <c>no open strings</c>.</summary>
/// <remarks>The rules are listed in <c>docs/hand.md</c>. Notes are counted from 1 in words.</remarks>
public static class RuleParser
{
    /// <summary>Reads a rule.</summary>
    /// <param name="text">The whole text of one rule.</param>
    /// <returns>The rule, or where it goes wrong, what was expected, and a repair that was tried.</returns>
    public static SentenceResult<LineRule> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return RuleReader.Read(text);
    }
}
