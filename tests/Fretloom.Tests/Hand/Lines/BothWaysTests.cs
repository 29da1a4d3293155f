using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Tests.Neck;

namespace Fretloom.Tests.Hand.Lines;

public class BothWaysTests
{
    // Common practice, no source: one finger a note, strings 4 to 1; arpeggios with two notes on a string.
    [Theory]
    [InlineData("4:10 3:9 2:8 1:7", "4 3 2 1")]
    [InlineData("4:9 3:7 2:6 1:5", "4 3 2 1")]
    [InlineData("4:5 3:4 2:3 1:1", "4 3 2 1")]
    [InlineData("4:12 3:11 2:10 1:9", "4 3 2 1")]
    [InlineData("4:7 3:5 2:5 1:3", "4 2 3 1")]
    [InlineData("6:5 5:4 5:7 4:5", "2 1 4 2")]
    [InlineData("6:5 5:4 5:7 4:6", "2 1 4 3")]
    [InlineData("6:5 6:8 5:7 4:5 4:7", "1 4 3 1 3")]
    public void Arpeggios_have_the_same_fingers_up_and_down(string shape, string fingers)
    {
        foreach (var handMm in new[] { 181.0, 193 })
        {
            var player = new Player(Necks.Find("guitar"), new HandSize(handMm));
            var up = shape.Split(' ').Select(Spot.Parse).ToValueList();
            var down = up.Reverse().ToValueList();
            var upAndDown = up.Concat(down.Skip(1)).ToValueList();

            foreach (var spots in new[] { up, down, upAndDown })
            {
                var answer = LineFingering.FindBothWays(player, spots, 2);

                Assert.Equal(fingers, string.Join(' ', up.Select(spot => (int)answer.Best!.FingerAt(spot)!.Value)));
                Assert.True(
                    answer.Fingerings[1].Cost - answer.Fingerings[0].Cost > 0.0005,
                    "There is another as good."
                );
            }
        }
    }

    [Fact]
    public void The_best_of_all_fingerings_with_one_finger_for_each_spot_come_back() =>
        (
            from player in LineGen.AnyPlayer
            from notes in LineGen.Line(player.Instrument, 4, 0)
            from back in Gen.Int[0, 2]
            let spots = notes.Select(note => ((LineNote.At)note).Spot).ToList()
            select (player, spots: spots.Concat(spots.Take(back).Reverse()).ToValueList())
        ).Sample(
            shape =>
            {
                var answer = LineFingering.FindBothWays(shape.player, shape.spots, 4);
                var notes = shape.spots.Select(LineNote (spot) => new LineNote.At(spot)).ToValueList();
                var all = new SlowLines(shape.player)
                    .All(notes, [])
                    .Where(one => one.Notes.Distinct().Count() == shape.spots.Distinct().Count())
                    .ToList();

                Assert.Equal(
                    all.Take(4).Select(one => one.Cost),
                    answer.Fingerings.Select(one => (long)Math.Round(one.Cost * 1000))
                );
                Assert.All(answer.Fingerings, one => Assert.Contains(one.Notes, all.Select(other => other.Notes)));
                Assert.Equal(answer.Fingerings.Count, answer.Fingerings.Select(one => one.Notes).Distinct().Count());
            },
            iter: 300
        );

    [Fact]
    public void A_spot_that_is_not_there_is_refused() =>
        Assert.Equal(
            "Note 1, 7:30: a guitar has 6 strings.",
            LineFingering.FindBothWays(new Player(Necks.Find("guitar")), [new Spot(7, 30)]).Refusal!.Message
        );

    [Fact]
    public void Notes_that_come_again_too_often_are_refused()
    {
        var random = new Random(1);
        var spots = Enumerable.Range(0, 400).Select(_ => new Spot(random.Next(1, 7), random.Next(1, 23)));

        Assert.Equal(
            "Too many notes come again to give each one finger: leave some out, or ask for a line.",
            LineFingering.FindBothWays(new Player(Necks.Find("guitar")), spots.ToValueList()).Refusal!.Message
        );
    }

    [Fact]
    public void A_shape_too_long_is_refused() =>
        Assert.StartsWith(
            "A shape of 1000 notes is too long",
            LineFingering
                .FindBothWays(new Player(Necks.Find("guitar")), Enumerable.Repeat(new Spot(1, 3), 1000).ToValueList())
                .Refusal!.Message,
            StringComparison.Ordinal
        );
}
