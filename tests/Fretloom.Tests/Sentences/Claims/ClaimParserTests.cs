using System.Globalization;
using Fretloom.Sentences;

namespace Fretloom.Tests.Sentences.Claims;

/// <summary>Reading claims that are right, and writing them back.</summary>
public class ClaimParserTests
{
    /// <summary>Sources: Judged claims, in <c>tests/SOURCES.md</c>.</summary>
    public static TheoryData<string> Judged =>
        [.. Table.Read("claims.csv").Concat(Table.Read("claims_thirty.csv")).Select(row => row["sentence"])];

    [Theory]
    [MemberData(nameof(Judged))]
    public void A_judged_claim_reads_and_is_written_as_it_stands(string sentence)
    {
        var result = ClaimParser.Parse(sentence);

        Assert.Empty(result.Errors);
        Assert.Equal(sentence, result.Value?.ToString());
    }

    [Fact]
    public void There_are_48_judged_claims_and_30_more() => Assert.Equal(78, Judged.Count);
}
