using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Tests.Hand;

public class ArpeggioFingeringTests
{
    /// <summary>
    /// Common practice, no source. Strings 4 to 1, one finger a note. The first five are given by the task of the model; the rest
    /// were written down before they were tried.
    /// </summary>
    public static TheoryData<string, string> Practice =>
        new()
        {
            { "10 9 8 7", "4321" },
            { "9 7 6 5", "4321" },
            { "5 4 3 1", "4321" },
            { "12 11 10 9", "4321" },
            { "7 5 5 3", "4231" },
            { "7 8 9 10", "1234" },
            { "5 6 7 9", "1234" },
            { "5 7 5 6", "1423" },
            { "7 7 6 5", "3421" },
            { "5 5 5 5", "1234" },
            { "7 6 5 5", "4312" },
            { "5 7 6 5", "1432" },
            { "3 4 3 4", "1324" },
            { "9 8 8 7", "4231" },
            { "10 10 9 8", "3421" },
        };

    [Theory]
    [MemberData(nameof(Practice))]
    public void One_finger_a_note_as_players_do_it_and_nothing_is_as_good(string frets, string fingers)
    {
        foreach (var hand in new[] { 181.0, 189, 193 })
        {
            var answer = ArpeggioFingering.Find(Hands.On("guitar", hand), Hands.Frets(frets), 2);

            Assert.Equal(fingers, answer.Best!.Fingers());
            Assert.True(answer.Fingerings.Count == 1 || answer.Fingerings[1].Cost > answer.Fingerings[0].Cost);
        }
    }

    [Theory]
    [MemberData(nameof(Practice))]
    public void Up_and_down_take_the_same_fingers(string frets, string fingers)
    {
        var down = Hands.Frets(frets).Reverse().ToValueList();

        var answer = ArpeggioFingering.Find(Hands.On("guitar"), down);

        Assert.Equal(fingers, string.Concat((answer.Best?.Fingers() ?? "").Reverse()));
    }

    [Fact]
    public void No_finger_stops_two_notes() =>
        Gen.Int[0, 6]
            .Array[4]
            .Sample(frets =>
            {
                var found = ArpeggioFingering
                    .Find(Hands.On("ukulele"), Hands.Frets(string.Join(' ', frets)), 30)
                    .Fingerings;

                Assert.All(
                    found,
                    fingering =>
                    {
                        var down = fingering.Fingers().Replace("0", "", StringComparison.Ordinal);
                        Assert.Equal(down.Length, down.Distinct().Count());
                    }
                );
            });

    [Fact]
    public void A_stretch_beyond_a_small_hand_is_found_and_marked_very_wide()
    {
        var best = ArpeggioFingering.Find(Hands.On("guitar", 165), Hands.Frets("5 4 3 1")).Best!;

        Assert.Equal(Width.VeryWide, best.Width);
        Assert.InRange(best.StretchMm, 126, 128.1); // 5-4-3-1 on 648 mm: landing points of frets 1 and 5, worked out by hand
    }

    [Theory]
    [InlineData("5:3 4:2 4:5 3:4 3:5")] // two notes on a string
    [InlineData("6:3 5:5 4:5 3:4 2:3 1:3")] // six stopped notes
    [InlineData("6:1 1:15")] // farther apart than a hand
    public void What_is_not_one_grip_is_a_line_in_both_directions(string text)
    {
        var spots = text.Split(' ').Select(Spot.Parse).ToValueList();

        var up = ArpeggioFingering.Find(Hands.On("guitar"), spots).Best!;
        var down = ArpeggioFingering.Find(Hands.On("guitar"), spots.Reverse().ToValueList()).Best!;

        Assert.Equal(up.Fingers(), string.Concat(down.Fingers().Reverse()));
    }

    [Fact]
    public void A_note_off_the_neck_is_named() =>
        Assert.StartsWith(
            "String 7, fret 3",
            Hands.Arpeggio(Hands.On("guitar"), "3 x x x x x x"),
            StringComparison.Ordinal
        );
}
