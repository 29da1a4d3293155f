using Fretloom.Claims;
using Fretloom.Sentences;

namespace Fretloom.Tests.Claims;

/// <summary>However a sentence is gone through, the answer is the same.</summary>
public class CheckEngineTests
{
    private static readonly CheckOptions Word = new()
    {
        LooksElsewhere = false,
        Engine = CheckEngine.Plain,
        Threads = 1,
    };

    private static readonly CheckOptions[] Ways =
    [
        Word with
        {
            Engine = CheckEngine.Vectors,
        },
        Word with
        {
            Engine = CheckEngine.Numbers,
        },
        Word with
        {
            Engine = CheckEngine.Vectors,
            Threads = 3,
        },
        Word with
        {
            Engine = CheckEngine.Vectors,
            UsesTransposition = false,
        },
        Word with
        {
            Engine = CheckEngine.Numbers,
            UsesTransposition = false,
            Threads = 2,
        },
    ];

    public static TheoryData<string> Sentences =>
        [.. Table.Read("claims.csv").Concat(Table.Read("claims_thirty.csv")).Select(row => row["sentence"])];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Every_way_to_go_through_a_judged_sentence_gives_the_same_answer(string text)
    {
        var sentence = ClaimParser.Parse(text).Value!;
        var expected = Check(sentence, Word);
        Assert.All(Ways, way => AssertSame(expected, Check(sentence, way)));
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Piece_by_piece_a_judged_sentence_gets_the_same_verdict(string text)
    {
        var sentence = ClaimParser.Parse(text).Value!;
        var check = new ClaimCheck(sentence, Word);
        var shares = new List<double> { check.Share };
        while (!check.IsDone)
        {
            Assert.Throws<InvalidOperationException>(check.Verdict);
            check.GoOn();
            shares.Add(check.Share);
        }

        AssertSame(Check(sentence, Word), check.Verdict());
        Assert.Equal(shares.Order(), shares);
        Assert.Equal(1, shares[^1]);
    }

    [Fact]
    public void A_check_piece_by_piece_keeps_to_its_budget() =>
        Assert.Throws<ClaimTooCostlyException>(() =>
            new ClaimCheck(
                ClaimParser.Parse("In every major key, on guitar strings 4-1, there are exactly 3 full frets.").Value!,
                Word with
                {
                    Budget = 0,
                }
            )
        );

    internal static void AssertSame(ClaimVerdict expected, ClaimVerdict found)
    {
        Assert.Equal(Counts(expected), Counts(found));
        Assert.Equal(
            expected.Failures.Select(failure => $"{failure.Place}: {failure.Why}"),
            found.Failures.Select(failure => $"{failure.Place}: {failure.Why}")
        );
    }

    internal static (Verdict, long, long, long, long, long) Counts(ClaimVerdict found) =>
        (found.Verdict, found.Cases, found.DistinctCases, found.Failing, found.Untested, found.NotApplicable);

    private static ClaimVerdict Check(ClaimSentence sentence, CheckOptions options) =>
        ClaimChecker.Check(sentence, options, null, TestContext.Current.CancellationToken);
}
