using System.Text;
using System.Text.RegularExpressions;
using Fretloom.Claims;
using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Claims;

/// <summary>What is told of claims that fail: true, in good English, and with a repair that mends them.</summary>
public class ExplanationTests
{
    private static readonly CheckOptions FirstOnly = CheckOptions.Default with { MostFailures = 1 };

    // Of random claims those that are checked in no time.
    private const long Quick = 20_000_000;

    /// <summary>
    /// Every construct of the language in a claim that fails, with the sentence that tells why and the repair: read them as a teacher would.
    /// The sentences stand in claims-that-fail.txt.
    /// </summary>
    [Fact]
    public void What_is_told_of_every_construct_is_as_approved()
    {
        var told = new StringBuilder();
        foreach (var text in File.ReadLines(Expectation("claims-that-fail.txt")))
        {
            var verdict = Check(ClaimParser.Parse(text).Value!);
            Assert.Equal((text, Verdict.Fails), (verdict.Sentence.ToString(), verdict.Verdict));
            if (verdict.Repair is { } repair)
            {
                AssertMends(verdict.Sentence, repair);
            }

            told.AppendLine(text)
                .Append("    ")
                .AppendLine(verdict.Failures[0].Why)
                .Append("    ")
                .AppendLine(verdict.Repair?.Message ?? "No repair.");
        }

        Approved.Matches(told.ToString(), "Fretloom.Tests", "Claims", "Expectations", "what-is-told.txt");
    }

    [Fact]
    public void Every_failing_claim_is_explained_in_one_sentence_that_begins_with_the_case() =>
        ClaimGen.Sentence.SampleSame(
            sentence =>
            {
                if (Failing(sentence) is not { Failures: [var failure, ..] })
                {
                    return;
                }

                Assert.StartsWith($"In {failure.Key.Tonic} ", failure.Why, StringComparison.Ordinal);
                Assert.Contains(", on ", failure.Why, StringComparison.Ordinal);
                Assert.EndsWith(".", failure.Why, StringComparison.Ordinal);
                Assert.DoesNotMatch(Clumsy, failure.Why);
            },
            count: 400
        );

    [Fact]
    public void Every_repair_holds_and_differs_by_the_one_phrase_that_it_names() =>
        ClaimGen.Sentence.SampleSame(
            sentence =>
            {
                if (Failing(sentence)?.Repair is { } repair)
                {
                    AssertMends(sentence, repair);
                }
            },
            count: 400
        );

    private static readonly Regex Clumsy = new(
        @"(?<![\d.])1 (frets|full frets|shapes)\b|\b0 shapes|  |\(\)| ,|\.\.|fret \d+ are|frets? ,"
    );

    private static void AssertMends(ClaimSentence sentence, ClaimRepair repair)
    {
        var (before, after) = (sentence.ToString(), repair.Sentence.ToString());
        Assert.Equal(repair.Sentence, ClaimParser.Parse(after).Value);
        Assert.Equal(Verdict.Holds, Check(repair.Sentence).Verdict);
        var parts = repair.Words.Split(" ... ");
        Assert.All(parts, words => Assert.Contains(words, repair.Message, StringComparison.Ordinal));
        Assert.All(parts, words => Assert.Contains(words, after, StringComparison.OrdinalIgnoreCase));
        if (parts is [var keys, var claim])
        {
            var between = after[keys.Length..^(claim.Length + 1)];
            Assert.Equal($"I{keys[1..]}{between}{claim}.", after);
            Assert.Contains(between, before, StringComparison.Ordinal);
            return;
        }

        Assert.Contains(Enumerable.Range(0, after.Length), IsWhatDiffers);

        bool IsWhatDiffers(int at) =>
            after.IndexOf(repair.Words, at, StringComparison.OrdinalIgnoreCase) == at
            && before.StartsWith(after[..at], StringComparison.OrdinalIgnoreCase)
            && before.EndsWith(after[(at + repair.Words.Length)..].TrimStart(), StringComparison.OrdinalIgnoreCase);
    }

    private static ClaimVerdict? Failing(ClaimSentence sentence) =>
        ClaimCost.Of(sentence).WhyNot(Quick) is null
        && ClaimChecker.Check(sentence, FirstOnly with { Budget = Quick }, null, TestContext.Current.CancellationToken)
            is { Verdict: Verdict.Fails } failing
            ? failing
            : null;

    private static ClaimVerdict Check(ClaimSentence sentence) =>
        ClaimChecker.Check(sentence, FirstOnly, null, TestContext.Current.CancellationToken);

    private static string Expectation(string name) =>
        Repository.PathTo("tests", "Fretloom.Tests", "Claims", "Expectations", name);
}
