using System.Globalization;
using Fretloom.Claims;
using Fretloom.Sentences;
using Fretloom.Testing;

namespace Fretloom.Tests.Sentences.Claims;

/// <summary>Reading claims that are right, and writing them back.</summary>
public class ClaimParserTests
{
    /// <summary>Source: Judged claims, in <c>tests/SOURCES.md</c>.</summary>
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

    [Fact]
    public void Every_claim_reads_back_as_it_was_written() =>
        ClaimGen.Sentence.Sample(
            sentence =>
            {
                var result = ClaimParser.Parse(sentence.ToString());

                Assert.Empty(result.Errors);
                Assert.Equal(sentence, result.Value);
                Assert.Equal(sentence.ToString(), result.Value?.ToString());
            },
            iter: 20_000
        );
}
