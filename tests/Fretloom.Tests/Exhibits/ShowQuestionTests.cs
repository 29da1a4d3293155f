using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Exhibits;

public class ShowQuestionTests
{
    private static readonly ShowDefaults Lesson = new(
        Catalogue.Default,
        Key.Parse("G major"),
        StringSet.Run(4, 1),
        new FretRange(5, 9),
        HandSize.Small,
        IsLeftHanded: true
    );

    [Theory]
    [InlineData(
        "the thirds",
        "show the thirds, on a guitar, in G major, on strings 4-1, frets 5-9, as degrees, for a small hand, for a left-handed player"
    )]
    [InlineData(
        "the thirds, on a bass, in E minor, frets 0-3, as names, for an adult hand",
        "show the thirds, on a bass, in E minor, on strings 4-1, frets 0-3, as names, for an adult hand, for a left-handed player"
    )]
    [InlineData(
        "the thirds, on all strings",
        "show the thirds, on a guitar, in G major, on strings 6-1, frets 5-9, as degrees, for a small hand, for a left-handed player"
    )]
    public void What_is_unsaid_comes_from_the_lesson(string said, string complete) =>
        Assert.Equal(complete, Answer(said, Lesson).Sentence);

    [Theory]
    [InlineData("the thirds", "show the thirds, on a guitar, in C major, on strings 6-1, frets 0-12, as degrees")]
    [InlineData("A blues", "show the A blues scale, on a guitar, in A minor, on strings 6-1, frets 0-12, as degrees")]
    [InlineData(
        "E dorian",
        "show the E dorian scale, on a guitar, in E dorian, on strings 6-1, frets 0-12, as degrees"
    )]
    [InlineData(
        "the thirds, on a bass viol",
        "show the thirds, on a bass viol, in C major, on strings 6-1, frets 0-7, as degrees"
    )]
    public void Without_a_lesson_the_usual_is_meant(string said, string complete) =>
        Assert.Equal(complete, Answer(said).Sentence);

    [Theory]
    [InlineData("the notes of the key, in fifth position", "5-8")]
    [InlineData("the notes of the key, in first position", "0-4")]
    [InlineData("the notes of the key, in fifth position, frets 0-12", "0-12")]
    [InlineData("the triads, in fifth position", "0-12")]
    [InlineData("the triads, in twelfth position", "0-15")]
    [InlineData("the scale, in twentieth position", "0-22")]
    public void The_frets_reach_as_far_as_the_position_that_is_named(string said, string frets) =>
        Assert.Equal(frets, Answer(said).Map.Frets.ToString());

    [Theory]
    [InlineData("the notes of the key, in fifth position, frets 0-12", 5, 8)]
    [InlineData("every D, in first position, frets 0-12", 0, 4)]
    [InlineData("every D and the triads, in fifth position", 0, 12)]
    public void Single_notes_in_a_position_lie_in_it(string said, int first, int last) =>
        Assert.All(Answer(said).Notes!.Value, note => Assert.InRange(note.Spot.Fret, first, last));

    [Fact]
    public void Shapes_in_a_high_position_use_all_four_of_its_frets() =>
        Assert.Equal(
            [12, 13, 14, 15],
            Answer("the seventh chords, in any order, in twelfth position")
                .Shapes!.Value.SelectMany(shape => shape.Spots)
                .Select(spot => spot.Fret)
                .Distinct()
                .Order()
        );

    [Theory]
    [InlineData(
        "the scale, in ninth position, frets 0-4",
        12,
        "Position 9 is frets 9-12; the frets looked at are 0-4."
    )]
    [InlineData("every D, in ninth position, frets 0-4", 10, "Position 9 is frets 9-12; the frets looked at are 0-4.")]
    [InlineData("C, in ninth position, frets 0-4", 4, "Position 9 is frets 9-12; the frets looked at are 0-4.")]
    [InlineData("C, on a bass viol, in ninth position", 20, "the bass viol has 7 frets; there is no position 9")]
    [InlineData(
        "C, with a capo at 20, in fifth position",
        23,
        "the guitar has 2 frets beyond the capo at 20; there is no position 5"
    )]
    [InlineData(
        "C9, one note per string, on strings 3-1",
        26,
        "C9 has 5 notes and needs a string for each; the set 3-1 has 3."
    )]
    public void What_cannot_be_shown_is_refused_at_its_place(string said, int column, string message)
    {
        var error = Assert.Single(ShowQuestion.Answer(said, ShowDefaults.Standard).Errors);

        Assert.Equal((column, message), (error.Column, error.Message));
    }

    [Theory]
    [InlineData("as degrees", "b3 5", "♭3 5")]
    [InlineData("as members", "b3 5", "R 7")]
    [InlineData("as names", "b3 5", "E♭ G")]
    [InlineData("as intervals", "b3 5", "♭3 5")]
    public void Labels_are_written_for_display(string labels, string degrees, string expected)
    {
        var exhibit = Answer($"the thirds, {labels}");
        var notes = degrees.Split(' ').Select(Degree.Parse).Zip(["1", "7"]);

        var written = notes.Select(note =>
            exhibit.LabelOf(new Pitch(exhibit.Map.Key.NoteOf(note.First), 4), note.First, note.Second)
        );

        Assert.Equal(expected, string.Join(' ', written));
    }

    // Names: common practice, no source; see the tests of the systems themselves.
    [Theory]
    [InlineData(NoteNaming.English, "B♭ B C♯ E♭")]
    [InlineData(NoteNaming.German, "B H Cis Es")]
    [InlineData(NoteNaming.FixedDo, "Si♭ Si Do♯ Mi♭")]
    [InlineData(NoteNaming.MovableDo, "fa fi si le")]
    public void Notes_are_named_as_the_lesson_names_them(NoteNaming naming, string expected)
    {
        var exhibit = Answer("the thirds, in F major, as names", Lesson with { NoteNames = naming });
        var names = "Bb B C# Eb".Split(' ').Select(NoteName.Parse).ToList();
        if (naming == NoteNaming.MovableDo)
        {
            names[3] = NoteName.Parse("Db");
        }

        Assert.Equal(expected, string.Join(' ', names.Select(exhibit.NameOf)));
        Assert.Equal(
            exhibit.NameOf(names[0]),
            exhibit.LabelOf(new Pitch(names[0], 3), exhibit.Map.Key.DegreeOf(names[0]), null)
        );
    }

    [Fact]
    public void Whatever_reads_is_shown_or_refused_and_says_of_itself_what_it_shows() =>
        SentenceGen.Show.Sample(
            sentence =>
            {
                var said = sentence with { Frets = new FretRange(0, 3) };
                var answer = ShowQuestion.Answer(said.ToString(), ShowDefaults.Standard);
                if (answer.IsRead)
                {
                    var again = ShowQuestion.Answer(answer.Value.Sentence, ShowDefaults.Standard);
                    Assert.Equal(answer.Value.Sentence, again.Value?.Sentence);
                    Assert.Equal(answer.Value.Notes, again.Value?.Notes);
                    Assert.Equal(answer.Value.InHand, again.Value?.InHand);
                }
            },
            iter: 1_000
        );

    private static Exhibit Answer(string text, ShowDefaults? defaults = null)
    {
        var answer = ShowQuestion.Answer(text, defaults ?? ShowDefaults.Standard);
        Assert.True(answer.IsRead, $"{text}\n{answer.Errors}");
        return answer.Value;
    }
}
