namespace Fretloom.Tests;

public class EditDistanceTests
{
    private static readonly Gen<string> AnyWord = Gen.String[Gen.Char["abc"], 0, 5];

    // Worked out by hand.
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("guitar", "guitar", 0)]
    [InlineData("guitr", "guitar", 1)]
    [InlineData("gutiar", "guitar", 1)]
    [InlineData("guittar", "guitar", 1)]
    [InlineData("guiter", "guitar", 1)]
    [InlineData("", "bass", 4)]
    [InlineData("ca", "abc", 3)]
    public void Words_are_as_far_apart_as_the_letters_to_change(string one, string other, int distance) =>
        Assert.Equal(distance, EditDistance.Between(one, other));

    [Fact]
    public void The_distance_is_that_of_trying_every_change() =>
        Gen.Select(AnyWord, AnyWord)
            .Sample((one, other) => Assert.Equal(Slow(one, other), EditDistance.Between(one, other)));

    [Fact]
    public void Short_words_allow_one_change_and_long_ones_two()
    {
        Assert.Equal(1, EditDistance.Tolerated(5));
        Assert.Equal(2, EditDistance.Tolerated(6));
    }

    private static int Slow(string one, string other)
    {
        if (one.Length == 0 || other.Length == 0)
        {
            return one.Length + other.Length;
        }

        var best = Math.Min(
            Slow(one[1..], other[1..]) + (one[0] == other[0] ? 0 : 1),
            1 + Math.Min(Slow(one[1..], other), Slow(one, other[1..]))
        );
        return one.Length > 1 && other.Length > 1 && one[0] == other[1] && one[1] == other[0]
            ? Math.Min(best, 1 + Slow(one[2..], other[2..]))
            : best;
    }
}
