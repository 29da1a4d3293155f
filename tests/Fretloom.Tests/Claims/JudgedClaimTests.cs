using System.Globalization;
using Fretloom.Claims;
using Fretloom.Sentences;

namespace Fretloom.Tests.Claims;

/// <summary>The tables of judged sentences: worked out for this project by a separate program (Data/claims.csv, Data/claims_thirty.csv).</summary>
public class JudgedClaimTests
{
    private static readonly string[] UsualKinds = ["major", "natural minor", "harmonic minor", "melodic minor"];

    public static TheoryData<string> FortyEight => [.. Table.Read("claims.csv").Select(row => row["id"])];

    public static TheoryData<int> Thirty => [.. Enumerable.Range(0, 30)];

    [Theory]
    [MemberData(nameof(FortyEight))]
    public void Every_judged_sentence_gets_its_verdict_and_its_counts(string id)
    {
        var row = Table.Read("claims.csv").Single(row => row["id"] == id);
        var found = Check(row["sentence"]);
        Assert.Equal(
            (row["verdict"], row["cases"], row["failing"], row["untested"]),
            (Word(found.Verdict), Text(found.Cases), Text(found.Failing), Text(found.Untested))
        );
    }

    [Theory]
    [MemberData(nameof(FortyEight))]
    public void Every_judged_sentence_is_true_in_the_kinds_of_key_that_the_table_says(string id)
    {
        var row = Table.Read("claims.csv").Single(row => row["id"] == id);
        if (row["key_kinds_where_it_holds_here"].Length == 0)
        {
            return;
        }

        var kinds = Check(row["sentence"])
            .Elsewhere!.Kinds.Select(kind => kind.Name == "minor" ? "natural minor" : kind.Name)
            .ToList();
        Assert.Equal(row["key_kinds_where_it_holds_here"], kinds.Count == 0 ? "none" : string.Join("; ", kinds));
        Assert.All(kinds, kind => Assert.Contains(kind, UsualKinds));
    }

    [Theory]
    [MemberData(nameof(FortyEight))]
    public void A_judged_sentence_that_fails_tells_as_many_reasons_as_are_asked_and_a_repair_that_holds(string id)
    {
        var found = Check(Table.Read("claims.csv").Single(row => row["id"] == id)["sentence"]);
        Assert.Equal(Math.Min(12, found.Failing), found.Failures.Count);
        Assert.All(
            found.Failures,
            failure => Assert.StartsWith($"In {failure.Key} ", failure.Why, StringComparison.Ordinal)
        );
        if (found.Repair is { } repair)
        {
            Assert.Equal(Verdict.Holds, Check(repair.Sentence.ToString()).Verdict);
            Assert.Contains(repair.Words, repair.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Thirty))]
    public void Every_example_sentence_gets_its_counts(int index)
    {
        var row = Table.Read("claims_thirty.csv")[index];
        var found = Check(row["sentence"]);
        Assert.Equal(
            (row["verdict"], row["cases"], row["failing"], row["untested"]),
            (Word(found.Verdict), Text(found.Cases), Text(found.Failing), Text(found.Untested))
        );
    }

    private static ClaimVerdict Check(string sentence) =>
        ClaimChecker.Check(ClaimParser.Parse(sentence).Value!, null, null, TestContext.Current.CancellationToken);

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Word(Verdict verdict) =>
        verdict switch
        {
            Verdict.Holds => "holds",
            Verdict.Fails => "fails",
            Verdict.NothingToTest => "nothing to test",
            _ => "does not apply",
        };
}
