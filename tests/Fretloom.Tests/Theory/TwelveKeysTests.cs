using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class TwelveKeysTests
{
    private static readonly string[] Kinds = ["major", "minor", "harmonic minor", "melodic minor", "dorian", "lydian"];

    public static TheoryData<string, KeyOrder> Every =>
        [
            .. from kind in Kinds
            from tonic in new[] { "C", "F#", "Eb", "G#" }
            from order in Enum.GetValues<KeyOrder>()
            select ($"{tonic} {kind}", order),
        ];

    [Theory]
    [MemberData(nameof(Every))]
    public void Every_key_stands_once_and_the_home_key_first(string home, KeyOrder order)
    {
        var keys = TwelveKeys.From(Key.Parse(home), order);

        Assert.Equal(Key.Parse(home), keys[0]);
        Assert.Equal(12, keys.Select(key => key.Tonic.PitchClass).Distinct().Count());
        Assert.All(keys, key => Assert.Equal(keys[0].Kind, key.Kind));
    }

    // Common practice, no source: the keys as players meet them.
    [Theory]
    [InlineData("C major", KeyOrder.Fourths, "C F Bb Eb Ab Db Gb B E A D G")]
    [InlineData("C major", KeyOrder.HalfSteps, "C Db D Eb E F Gb G Ab A Bb B")]
    [InlineData("A minor", KeyOrder.Fourths, "A D G C F Bb Eb G# C# F# B E")]
    public void Keys_are_spelled_as_players_meet_them(string home, KeyOrder order, string tonics) =>
        Assert.Equal(tonics, string.Join(' ', TwelveKeys.From(Key.Parse(home), order).Select(key => key.Tonic)));

    [Theory]
    [InlineData("C major", "C F Bb Eb Ab Db Gb B E A D G")]
    [InlineData("A melodic minor", "A G F Eb C# B E D C Bb Ab F#")]
    public void The_fewest_moves_are_found(string home, string tonics) =>
        Assert.Equal(
            tonics,
            string.Join(' ', TwelveKeys.From(Key.Parse(home), KeyOrder.FewestMoves).Select(key => key.Tonic))
        );

    [Fact]
    public void Moves_agree_with_every_way_to_pair_the_notes()
    {
        foreach (var kind in Kinds)
        {
            var notes = Key.Parse("C " + kind).PitchClasses;
            var here = Enumerable.Range(0, 12).Where(n => notes.Contains(PitchClass.FromSemitones(n))).ToArray();
            var moves = TwelveKeys.Moves(notes);
            for (var up = 0; up < 12; up++)
            {
                Assert.Equal(Cheapest(here, [.. here.Select(note => (note + up) % 12)]), moves[up]);
            }
        }

        // Slow and obvious: the first note goes to each of the others in turn.
        static int Cheapest(int[] from, int[] to) =>
            from.Length == 0
                ? 0
                : to.Min(note =>
                    Math.Min(Math.Abs(from[0] - note), 12 - Math.Abs(from[0] - note))
                    + Cheapest(from[1..], [.. to.Where(other => other != note)])
                );
    }

    [Fact]
    public void No_other_order_moves_fewer_frets()
    {
        foreach (var kind in Kinds)
        {
            var home = Key.Parse("C " + kind);
            var moves = TwelveKeys.Moves(home.PitchClasses);
            var way = TwelveKeys.From(home, KeyOrder.FewestMoves).Select(key => key.Tonic.PitchClass).ToArray();
            var best = way.Zip(way.Skip(1)).Sum(pair => moves[pair.First.SemitonesUpTo(pair.Second)]);

            Gen.Shuffle(Enumerable.Range(1, 11).ToArray())
                .Sample(order =>
                {
                    int[] other = [0, .. order];
                    var cost = other.Zip(other.Skip(1)).Sum(pair => moves[(pair.Second - pair.First + 12) % 12]);
                    Assert.True(cost >= best);
                });
        }
    }
}
