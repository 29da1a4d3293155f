using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Exhibits;

public class ShapeByHandTests
{
    private static readonly Player Guitarist = new(Catalogue.Default);
    private static readonly Key CMajor = Key.Parse("C major");

    private static ShapeByHand Of(string spots, string key = "C major") =>
        new(Guitarist, Key.Parse(key), spots.Split(' ').Select(Spot.Parse));

    // Chords of first position and their fingers, string by string from the far side: common practice, no source.
    [Theory]
    [InlineData("5:3 4:2 3:0 2:1 1:0", "C", "3 2 0 1 0")]
    [InlineData("6:3 5:2 4:0 3:0 2:0 1:3", "G", "2 1 0 0 0 3")]
    [InlineData("4:0 3:2 2:3 1:2", "D", "0 1 3 2")]
    [InlineData("6:0 5:2 4:2 3:0 2:0 1:0", "Em", "0 2 3 0 0 0")]
    public void Chords_of_first_position_are_named_and_fingered_as_taught(string spots, string name, string fingers)
    {
        var shape = Of(spots);

        Assert.Equal(name, shape.Names[0].ToString());
        Assert.Equal(
            fingers,
            string.Join(
                ' ',
                shape.Fingering.Best!.Notes.Select(note => FormattableString.Invariant($"{(int)note.Finger}"))
            )
        );
    }

    [Fact]
    public void One_note_has_no_name_and_two_on_a_string_are_played_one_after_another()
    {
        Assert.Empty(Of("4:5").Names);
        Assert.False(Of("4:5 4:7").IsChord);
        Assert.True(Of("4:5 4:7").Fingering.IsFound);
    }

    [Fact]
    public void Nothing_and_spots_beyond_the_neck_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new ShapeByHand(Guitarist, CMajor, []));
        Assert.Throws<ArgumentException>(() => Of("4:23"));
    }

    /// <summary>Two half-turns, two mirrors, and a move there and back are nothing; a half-turn is a mirror with the strings read backwards.</summary>
    [Fact]
    public void What_is_carried_there_and_back_is_as_it_was() =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[0, 22])
            .Select((number, fret) => new Spot(number, fret))
            .HashSet[1, 6]
            .Sample(spots =>
            {
                var shape = new ShapeByHand(Guitarist, CMajor, spots);

                ShapeByHand? Again(ValueList<Spot>? moved) =>
                    moved is { } there ? new ShapeByHand(Guitarist, CMajor, there) : null;

                Assert.Equal(shape.Spots.ToHashSet(), Again(shape.Mirrored())?.Mirrored()?.ToHashSet());
                Assert.Equal(shape.Spots.ToHashSet(), Again(shape.HalfTurned())?.HalfTurned()?.ToHashSet());
                Assert.All(
                    [Again(shape.MovedAlong(3))?.MovedAlong(-3), Again(shape.MovedAcross(1))?.MovedAcross(-1)],
                    back => Assert.True(back is null || back.Value.ToHashSet().SetEquals(shape.Spots))
                );
            });

    /// <summary>The sentence says the shape: read and worked out it shows the same spots.</summary>
    [Theory]
    [InlineData("5:3 4:2 3:0 2:1 1:0", "C major")]
    [InlineData("4:9 3:7 2:7 1:5", "D major")]
    [InlineData("6:1", "Eb minor")]
    public void Its_sentence_shows_it(string spots, string key)
    {
        var shape = Of(spots, key);

        var exhibit = ShowQuestion.Answer(shape.SentenceIn(ShowDefaults.Standard), ShowDefaults.Standard).Value!;

        Assert.Equal(shape.Spots, exhibit.Notes!.Value.Select(note => note.Spot).ToValueList());
        Assert.Equal(shape.Key, exhibit.Map.Key);
        Assert.All(shape.Fingering.Best!.Notes, note => Assert.Equal(note.Finger, exhibit.FingerAt(note.Spot)));
    }

    /// <summary>A hand that is not the lesson's is said with the shape, so that its fingers are the same there.</summary>
    [Fact]
    public void Its_sentence_keeps_its_fingers_in_a_lesson_for_another_hand()
    {
        Player[] players =
        [
            Guitarist,
            Guitarist with
            {
                Hand = HandSize.Small,
            },
            Guitarist with
            {
                Hand = HandSize.Large,
            },
            Guitarist with
            {
                UsesThumb = true,
            },
            Guitarist with
            {
                IsTurnedOver = true,
            },
        ];
        ShowDefaults[] lessons =
        [
            ShowDefaults.Standard,
            ShowDefaults.Standard with
            {
                Hand = HandSize.Small,
            },
            ShowDefaults.Standard with
            {
                UsesThumb = true,
            },
        ];
        var found = 0;
        foreach (var lesson in lessons)
        {
            foreach (var player in players)
            {
                foreach (var spots in Grips)
                {
                    var shape = new ShapeByHand(player, CMajor, spots.Split(' ').Select(Spot.Parse));
                    var exhibit = ShowQuestion.Answer(shape.SentenceIn(lesson), lesson).Value!;
                    foreach (var note in shape.Fingering.Best?.Notes ?? [])
                    {
                        Assert.Equal((spots, note.Finger), (spots, exhibit.FingerAt(note.Spot)));
                        found++;
                    }
                }
            }
        }

        Assert.True(found > 200);
    }

    private static readonly string[] Grips =
    [
        "6:3 5:12 1:1",
        "6:1 5:3 4:3 3:2 2:1 1:1",
        "6:2 4:0 3:2 2:3",
        "6:3 5:2 4:0 3:0 2:0 1:3",
        "4:9 3:7 2:7 1:5",
        "5:3 4:5 3:4",
    ];
}
