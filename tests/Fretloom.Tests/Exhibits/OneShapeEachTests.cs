using Fretloom.Exhibits;
using Fretloom.Shapes;

namespace Fretloom.Tests.Exhibits;

public class OneShapeEachTests
{
    [Theory]
    [InlineData("A7, D7 and E7, in first position", 3)]
    [InlineData("the seventh chords, in drop 2", 7)]
    [InlineData("the triads, in every inversion, on strings 3-1", 7)]
    [InlineData("C, F and G7, easy, three strings", 3)]
    [InlineData("C, F and G7, easy, four strings, on a ukulele", 3)]
    [InlineData("C and G7, easy, four strings, on a bass", 2)]
    [InlineData("the chords I IV I", 3)]
    [InlineData("the scale and the triads, 3 notes a string, on strings 3-1", 8)]
    public void Of_each_chord_the_first_of_all_its_shapes_is_kept(string sentence, int count)
    {
        var all = Shapes(sentence);
        var one = Shapes($"{sentence}, one shape each");

        Assert.Equal(count, one.Count);
        Assert.True(all.Count > one.Count);
        Assert.All(one, shape => Assert.Equal(all.First(other => Equals(other.Source, shape.Source)), shape));
    }

    // The grips of every beginner's book (common practice, no source), strings 6 to 1; x is not played.
    [Theory]
    [InlineData("A7", "x02020")]
    [InlineData("D7", "xx0212")]
    [InlineData("E7", "020100")]
    [InlineData("C", "x32010")]
    [InlineData("Am", "x02210")]
    [InlineData("Em", "022000")]
    public void The_one_shape_is_the_one_a_teacher_shows(string chord, string grip)
    {
        var shape = Assert.Single(Shapes($"{chord}, in first position, one shape each"));
        var frets = shape.Notes.ToDictionary(note => note.Spot.String, note => note.Spot.Fret);

        Assert.Equal(
            grip,
            string.Concat(
                Enumerable
                    .Range(1, 6)
                    .Reverse()
                    .Select(number => frets.TryGetValue(number, out var fret) ? $"{fret}" : "x")
            )
        );
    }

    [Fact]
    public void A_chord_without_a_shape_has_none() =>
        Assert.Empty(Shapes("C, strummed, in first position, on strings 6-4, fret 4, one shape each"));

    private static ValueList<Shape> Shapes(string sentence)
    {
        var answer = ShowQuestion.Answer(sentence, ShowDefaults.Standard);
        Assert.True(answer.IsRead, $"{sentence}\n{answer.Errors}");
        return answer.Value.Shapes!.Value;
    }
}
