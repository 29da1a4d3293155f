using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Tests.Exhibits;

public class FingersTests
{
    [Theory]
    [InlineData("the notes of the key, as fingers", 23)]
    [InlineData("every D, with fingers", 10)]
    [InlineData("the landmarks, in G major, as finger numbers", 28)]
    [InlineData("the symmetries, on strings 4-1, with fingering", 33)]
    public void Notes_all_over_the_neck_have_no_fingers(string sentence, int column)
    {
        var error = Assert.Single(ShowQuestion.Answer(sentence, ShowDefaults.Standard).Errors);

        Assert.Equal(
            "Fingers belong to shapes or to notes in one position; add 'in fifth position', or ask for chords.",
            error.Message
        );
        Assert.Equal((column, sentence.Length - column + 1), (error.Column, error.Length));
    }

    [Theory]
    [InlineData("C, F and G7, as fingers", true)]
    [InlineData("C, F and G7, with fingers", true)]
    [InlineData("C, F and G7, as names", false)]
    public void Fingers_are_shown_when_asked_for(string sentence, bool areShown) =>
        Assert.Equal(areShown, Shown(sentence).ShowsFingers);

    // Frets and fingers on strings 6 to 1; open strings and muted ones have no finger. The grips of every beginner's book
    // (common practice, no source).
    [Theory]
    [InlineData("C", "x32010", " 32 1 ")]
    [InlineData("E", "022100", " 231  ")]
    [InlineData("D", "xx0232", "   132")]
    [InlineData("F", "133211", "134211")]
    public void A_chord_has_the_fingers_that_a_teacher_shows(string chord, string frets, string fingers)
    {
        var exhibit = Shown($"{chord}, in first position, one shape each, as fingers");
        var shape = Assert.Single(exhibit.InHand);
        var labels = shape.Shape.Notes.ToDictionary(
            note => note.Spot.String,
            note => exhibit.LabelOf(note.Pitch, note.Degree, note.Member, shape.FingerAt(note.Spot))
        );

        var strings = Enumerable.Range(1, 6).Reverse().ToList();
        Assert.Equal(
            frets,
            string.Concat(
                strings.Select(number =>
                    shape
                        .Shape.Spots.Where(spot => spot.String == number)
                        .Select(spot => $"{spot.Fret}")
                        .DefaultIfEmpty("x")
                        .Single()
                )
            )
        );
        Assert.Equal(
            fingers,
            string.Concat(
                strings.Select(number => labels.GetValueOrDefault(number) is { Length: > 0 } label ? label : " ")
            )
        );
    }

    // The same grip with string 1 farthest from the floor: the fingers come from the other side, the spots stay.
    [Fact]
    public void An_instrument_that_is_turned_over_is_fingered_from_the_other_side()
    {
        var shape = Assert.Single(Shown("D, in first position, one shape each, turned over").InHand);

        Assert.Equal(
            "4:0= 3:2=2 2:3=3 1:2=1",
            string.Join(' ', shape.Shape.Spots.Select(spot => $"{spot}={shape.FingerAt(spot)?.ToLabel()}"))
        );
    }

    // The thumb on string 6 of D/F# is common practice, no source; the index without it is what the model says, a pin.
    [Theory]
    [InlineData("with the thumb", "T")]
    [InlineData("without the thumb", "1")]
    public void The_thumb_stops_a_string_only_where_it_is_allowed(string phrase, string label)
    {
        var shape = Assert.Single(Shown($"D/F#, one shape each, {phrase}").InHand);

        Assert.Equal(label, shape.FingerAt(new Spot(6, 2))?.ToLabel());
    }

    // Pentatonic box and first position: common practice, no source.
    [Theory]
    [InlineData("A minor pentatonic, in fifth position, as fingers", "14 13 13 13 14 14")]
    [InlineData("the notes of the key, in first position, with fingers", "13 23 23 24 13 13")]
    [InlineData("the notes of the key, in fifth position, as fingers", "134 134 13 13 124 134")]
    public void Scales_and_notes_in_a_position_have_one_finger_a_fret(string sentence, string fingers)
    {
        var exhibit = Shown(sentence);
        var stopped = exhibit
            .InHand.SelectMany(shape => shape.Fingering!.Notes)
            .Concat(exhibit.NoteFingers)
            .Where(note => note.Finger != Finger.None)
            .GroupBy(note => note.Spot.String, note => note.Finger.ToLabel());

        Assert.True(exhibit.ShowsFingers);
        Assert.Equal(fingers, string.Join(' ', stopped.Select(labels => string.Concat(labels))));
        Assert.All(exhibit.Notes ?? [], note => Assert.NotNull(exhibit.FingerAt(note.Spot)));
    }

    [Theory]
    [InlineData("bass")]
    [InlineData("ukulele")]
    [InlineData("mandolin")]
    [InlineData("guitar")]
    public void Notes_in_every_position_have_fingers(string instrument)
    {
        Catalogue.TryFind(instrument, out var found);
        for (var position = 1; position + 3 <= found!.Frets; position++)
        {
            var exhibit = Shown($"the notes of the key, on a {instrument}, in position {position}, as fingers");

            Assert.Equal(exhibit.Notes!.Value.Select(note => note.Spot), exhibit.NoteFingers.Select(note => note.Spot));
        }
    }

    /// <summary>Spots that are named are taken as one shape: the grips of every beginner's book (common practice, no source).</summary>
    [Theory]
    [InlineData("the spots 5:3 4:2 2:1", "3 2 1")]
    [InlineData("the spots 4:0 3:2 2:3 1:2", "0 1 3 2")]
    [InlineData("the spots 6:1 5:3 4:3 3:2 2:1 1:1", "1 3 4 2 1 1")]
    public void Spots_have_the_fingers_of_the_shape_they_make(string sentence, string fingers)
    {
        var exhibit = Shown($"{sentence}, with fingers");

        Assert.Equal(
            fingers,
            string.Join(
                ' ',
                exhibit.Notes!.Value.Select(note =>
                    exhibit.FingerAt(note.Spot) is { } finger and not Finger.None ? finger.ToLabel() : "0"
                )
            )
        );
        Assert.Equal(Width.InReach, exhibit.NoteStretch?.Width);
    }

    [Fact]
    public void Spots_that_lie_far_apart_tell_how_far() =>
        Assert.Equal(Width.VeryWide, Shown("the spots 6:1 5:6 2:1, with fingers").NoteStretch?.Width);

    [Fact]
    public void Spots_that_no_hand_takes_are_refused() =>
        Assert.StartsWith(
            "No hand of 189 mm reaches from string 6, fret 1 to string 5, fret 14",
            Assert.Single(ShowQuestion.Answer("the spots 6:1 5:14, as fingers", ShowDefaults.Standard).Errors).Message,
            StringComparison.Ordinal
        );

    [Fact]
    public void Shapes_and_their_fingers_stand_in_one_order()
    {
        var exhibit = Shown("the triads and the scale, 3 notes a string, in every inversion, for a small hand");

        Assert.Equal(exhibit.Shapes!.Value, exhibit.InHand.Select(shape => shape.Shape).ToValueList());
        Assert.All(
            exhibit.InHand.Where(shape => shape.Fingering is not null),
            shape => Assert.All(shape.Shape.Spots, spot => Assert.NotNull(shape.FingerAt(spot)))
        );
    }

    [Fact]
    public void The_thumb_is_a_letter_and_an_open_string_nothing() =>
        Assert.Equal("1234T", string.Concat(Enum.GetValues<Finger>().Select(finger => finger.ToLabel())));

    private static Exhibit Shown(string sentence)
    {
        var answer = ShowQuestion.Answer(sentence, ShowDefaults.Standard);
        Assert.True(answer.IsRead, $"{sentence}\n{answer.Errors}");
        return answer.Value;
    }
}
