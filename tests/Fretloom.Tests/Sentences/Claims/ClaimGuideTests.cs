using Fretloom.Claims;
using Fretloom.Claims.Checking;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Sentences.Reading;

namespace Fretloom.Tests.Sentences.Claims;

/// <summary>Runs the guide to claims: its examples, and its wrong claims with their messages.</summary>
public class ClaimGuideTests
{
    private static readonly Guide Guide = new("claims.md", "claims", "wrong-claims");

    private static readonly ClaimDefaults Lesson = new(stringSets: [new NamedStrings("top", StringSet.Run(3, 1))]);

    private static readonly CheckOptions Short = new() { LooksElsewhere = false };

    public static TheoryData<string> Examples => [.. Guide.Examples];

    public static TheoryData<string> FailingExamples =>
        [.. new Guide("claims.md", "claims-that-fail", "wrong-claims").Examples];

    public static TheoryData<string, string> Forms => [.. Guide.Forms];

    public static TheoryData<string, string> WrongClaims => [.. Guide.Wrong];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_holds(string claim) => Assert.Equal(Verdict.Holds, Check(claim));

    [Theory]
    [MemberData(nameof(FailingExamples))]
    public void An_example_that_is_said_to_fail_fails(string claim) => Assert.Equal(Verdict.Fails, Check(claim));

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_claim_is_written_as_the_guide_says(string typed, string canonical) =>
        Assert.Equal(canonical, ClaimParser.Parse(typed, Lesson).Value?.ToString());

    [Theory]
    [MemberData(nameof(WrongClaims))]
    public void A_wrong_claim_gets_the_message_of_the_guide(string claim, string message) =>
        Assert.Equal(message, Assert.Single(ClaimParser.Parse(claim, Lesson).Errors).ToString());

    [Fact]
    public void Every_wrong_claim_has_a_message() => Assert.Equal(Guide.WrongLines, 2 * WrongClaims.Count);

    [Fact]
    public void The_guide_shows_everything_that_can_be_said()
    {
        Type[] trees =
        [
            typeof(KeyScope),
            typeof(PlaceScope),
            typeof(Claim),
            typeof(FretSet),
            typeof(FretRelation),
            typeof(ShapeSet),
            typeof(ShapePredicate),
        ];
        var shown = Guide
            .Examples.Select(claim => ClaimParser.Parse(claim, Lesson).Value!)
            .SelectMany(sentence => Parts.Of(sentence.Claim).Append(sentence.Keys).Append(sentence.Places))
            .Select(part => part.GetType())
            .ToHashSet();

        Assert.Empty(trees.SelectMany(tree => tree.GetNestedTypes()).Except(shown));
    }

    [Fact]
    public void Every_word_of_the_guide_is_in_the_vocabulary()
    {
        var words = Guide
            .Examples.SelectMany(claim => claim.Split([' ', ',', '.'], StringSplitOptions.RemoveEmptyEntries))
            .Where(word => word.All(letter => char.IsAsciiLetterLower(letter) || letter == '-'))
            .Except(Lesson.StringSets.Select(set => set.Name));

        Assert.All(words, word => Assert.True(Vocabulary.Knows(word), word));
    }

    private static Verdict? Check(string claim) =>
        ClaimParser.Parse(claim, Lesson).Value is { } sentence ? ClaimChecker.Check(sentence, Short).Verdict : null;
}
