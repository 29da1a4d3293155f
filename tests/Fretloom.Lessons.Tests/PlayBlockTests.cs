using Fretloom.Lessons.Syntax;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Lessons.Tests;

public class PlayBlockTests
{
    private const string Front = "---\ntitle: T\ninstrument: bass\nkey: G major\nhand: small\n---\n";

    private static Lesson WithPlay(string lines) => Lesson.Parse($"{Front}```play\n{lines}\n```\n");

    [Fact]
    public void A_sentence_takes_instrument_key_and_hand_of_the_lesson()
    {
        var played = WithPlay("the scale, 2 notes a string, frets 0-7").Single<Block.Exercise>().Played;

        Assert.Equal(
            ("bass", "G major", 165.0),
            (played.Instrument.Name, played.Key.ToString(), played.Player.Hand.LengthMm)
        );
    }

    [Fact]
    public void A_capo_of_the_lesson_goes_with_its_instrument()
    {
        var lesson = Lesson.Parse("---\ntitle: T\ncapo: 2\n---\n```play\nthe chord I, on strings 3-1\n```\n");

        Assert.Equal(2, lesson.Single<Block.Exercise>().Played.Instrument.Capo);
    }

    [Fact]
    public void Title_and_caption_follow_the_sentence()
    {
        var exercise = WithPlay(
                "the triads,\n  on strings 4-2, frets 0-14\ntitle: Slowly, in {key}\ncaption: \"\\\"Home\\\" is {degree 1}\""
            )
            .Single<Block.Exercise>();

        Assert.Equal(("Slowly, in G major", "“Home” is G"), (exercise.Title, exercise.Options.Caption));
    }

    [Fact]
    public void Without_a_title_it_has_the_name_of_what_is_played() =>
        Assert.StartsWith(
            "The triads in G major",
            WithPlay("the triads, on strings 4-2, frets 0-14").Single<Block.Exercise>().Title,
            StringComparison.Ordinal
        );

    [Fact]
    public void Exercises_stand_in_lists_too_and_are_numbered()
    {
        var lesson = Lesson.Parse(
            Front
                + "1. Slowly.\n\n   ```play\n   the spots 4:3 3:2\n   ```\n\n"
                + "> ```play\n> the open strings\n> ```\n"
        );

        Assert.Equal("", lesson.Found());
        Assert.Equal(
            [(9, 1), (13, 2)],
            Lessons.All(lesson.Blocks).OfType<Block.Exercise>().Select(one => (one.Line, one.Number))
        );
    }

    [Theory]
    [InlineData("the scales of dragons", "8:5: error: ")]
    [InlineData("the triads,\nat 5000", "9:4: error: ")]
    [InlineData("the triads\nwidth: half", "9:1: error: 'width' is not known here; expected one of: caption, title.")]
    [InlineData("the triads\ntitle: In {kee}", "9:11: error: '{kee}' is not known;")]
    [InlineData("the triads, on strings 2-1", "8:13: error: G has 3 notes and needs a string for each;")]
    [InlineData("caption: Slowly", "7:1: error: The block is empty;")]
    public void What_is_wrong_is_said_where_it_stands(string lines, string expected) =>
        Assert.Contains(expected, WithPlay(lines).Found(), StringComparison.Ordinal);

    [Fact]
    public void What_cannot_be_played_stands_as_a_problem_in_its_place()
    {
        var lesson = WithPlay("the triads, on strings 2-1");

        Assert.Equal(Assert.Single(lesson.Diagnostics).Message, lesson.Single<Block.Problem>().Message);
    }

    /// <summary>An exercise carried along the neck is the same exercise, as many half-steps higher or lower as the key.</summary>
    [Theory]
    [InlineData("the chord V, on strings 4-2, frets 7-12", "A major", 2)]
    [InlineData("the spots 4:3 4:5 3:2 3:5", "A major", 2)]
    [InlineData("the spots 4:3 4:5 3:2 3:5", "F major", -2)]
    [InlineData("the scale, in fifth position, up and down", "A major", 2)]
    public void In_another_key_the_notes_move_along_the_neck(string sentence, string key, int semitones)
    {
        var lesson = WithPlay(sentence);
        var home = lesson.Single<Block.Exercise>().Played.Notes;
        var moved = lesson.InKey(Key.Parse(key)).Single<Block.Exercise>().Played.Notes;

        Assert.Equal(
            home.Select(one => new Spot(one.Note.Spot.String, one.Note.Spot.Fret + semitones)),
            moved.Select(one => one.Note.Spot)
        );
        Assert.Equal(
            home.Select(one => one.Note.Pitch.MidiNumber + semitones),
            moved.Select(one => one.Note.Pitch.MidiNumber)
        );
        Assert.Equal(home.Select(one => one.Note.Degree), moved.Select(one => one.Note.Degree));
    }

    [Fact]
    public void Spots_that_fit_no_neck_in_another_key_stay_with_a_warning()
    {
        var moved = WithPlay("the spots 4:0 3:20").InKey(Key.Parse("A major"));

        Assert.StartsWith(
            "8:1: warning: In A major: The spots stay where they are,",
            moved.Found(),
            StringComparison.Ordinal
        );
        Assert.Equal([0, 20], moved.Single<Block.Exercise>().Played.Notes.Select(one => one.Note.Spot.Fret));
    }

    [Fact]
    public void What_cannot_be_played_in_another_key_is_told_with_the_key()
    {
        var lesson = WithPlay("the chord I, on strings 4-2, frets 0-5");

        Assert.Empty(lesson.Diagnostics);
        Assert.StartsWith(
            "8:30: error: In F# major: No shape of I (F#) fits",
            lesson.InKey(Key.Parse("F# major")).Found(),
            StringComparison.Ordinal
        );
    }
}
