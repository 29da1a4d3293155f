using System.Globalization;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences.Rules;

/// <summary>The rule that lies nearest to words that cannot be read.</summary>
internal static class RuleExamples
{
    private static readonly (string[] Words, string Advice, string Rule)[] NotSpokenOf =
    [
        (
            ["shift", "shifts", "shifting", "move", "moving", "jump", "jumps"],
            "name the position the hand stays in",
            "stay in position 5"
        ),
        (["stretch", "stretches", "stretching", "reach"], "name the frets it keeps to", "within frets 5-8"),
        (["slide", "slides", "sliding"], "give the note its finger", "note 2 with finger 1"),
        (["barre", "barres", "barré", "rolls"], "give the note its finger", "note 2 with finger 1"),
        (["thumb"], "lines are played with fingers 1 to 4", "start with finger 1"),
    ];

    /// <summary>A failure with a whole rule as the last change worth trying.</summary>
    public static Failure With(string text, Failure failure)
    {
        var tokens = Tokens.Of(text);
        foreach (var (words, advice, rule) in NotSpokenOf)
        {
            if (tokens.Find(token => token.IsAny(words)) is { Length: > 0 } found)
            {
                var message = $"no rule speaks of '{found.Text}': {advice}, such as '{rule}'";
                return Failure.At(found, message, new Edit(0, text.Length, rule)) with { NamesChange = true };
            }
        }

        return failure with
        {
            Edits = [.. failure.Edits, new Edit(0, text.Length, Nearest(tokens))],
        };
    }

    private static string Nearest(List<Token> tokens)
    {
        var isEnd = Has(tokens, "end", "finish", "last", "ending", "finishing", "ends", "finishes");
        var isForbidden = Has(tokens, "no", "not", "never", "without", "avoid", "don't", "only", "skip");
        return Has(tokens, "position") ? Say($"stay in position {Number(tokens, 99, 5)}")
            : Has(tokens, "open") ? (isForbidden ? "no open strings" : "note 1 open")
            : Has(tokens, "fretted", "stopped") ? "no open strings"
            : Has(tokens, "only") && Has(tokens, "fingers") ? "never finger 4"
            : Has(tokens, "finger", "fingers", "index", "middle", "ring", "little", "pinky", "pinkie")
                ? Say($"{(isEnd ? "end with" : isForbidden ? "never" : "start with")} finger {Number(tokens, 4, 4)}")
            : Has(tokens, "string", "strings") && isForbidden
                ? Say($"start on string {(Number(tokens, 99, 1) == 1 ? 2 : 1)}")
            : Has(tokens, "string", "strings") ? Say($"{(isEnd ? "end" : "start")} on string {Number(tokens, 99, 1)}")
            : Has(tokens, "fret", "frets") ? Say($"within frets 0-{Number(tokens, 99, 5)}")
            : Has(tokens, "note", "notes") ? Say($"note {Number(tokens, 99, 1)} with finger 1")
            : "start with finger 2";
    }

    private static bool Has(List<Token> tokens, params string[] words) => tokens.Exists(token => token.IsAny(words));

    private static int Number(List<Token> tokens, int most, int otherwise) =>
        tokens
            .Select(token => Numbers.Cardinal(token) ?? Numbers.Ordinal(token))
            .FirstOrDefault(number => number >= 1 && number <= most)
        ?? otherwise;

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
