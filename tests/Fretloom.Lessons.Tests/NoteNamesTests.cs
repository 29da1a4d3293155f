using Fretloom.Lessons.Syntax;
using Fretloom.Theory;

namespace Fretloom.Lessons.Tests;

/// <summary>Notes named as the teacher names them. Names: common practice, no source.</summary>
public class NoteNamesTests
{
    [Theory]
    [InlineData("", "F G A B♭ C D E")]
    [InlineData("note-names: english", "F G A B♭ C D E")]
    [InlineData("note-names: german", "F G A B C D E")]
    [InlineData("note-names: fixed-do", "Fa Sol La Si♭ Do Re Mi")]
    [InlineData("note-names: movable-do", "do re mi fa so la ti")]
    public void Pictures_name_notes_as_the_front_matter_says(string line, string names)
    {
        var exhibit = Figure(line, "F major").Exhibit;

        Assert.Equal(names, string.Join(' ', exhibit.Map.Key.Notes.Select(exhibit.NameOf)));
        Assert.Equal(
            names.Split(' ').Order(StringComparer.Ordinal),
            exhibit
                .Notes!.Value.Select(note => exhibit.LabelOf(note.Pitch, note.Degree, null))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Movable_do_moves_with_the_key_and_sentences_stay_English()
    {
        var inD = Figure("note-names: movable-do", "F major", "D major").Exhibit;

        Assert.Equal("do re mi fa so la ti", string.Join(' ', inD.Map.Key.Notes.Select(inD.NameOf)));
        Assert.Contains("in D major", inD.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_of_the_lines_does_not_matter() =>
        Assert.Equal(
            NoteNaming.German,
            Lessons.WithFront("note-names: german\ntitle: T\nkey: F major\nhand: small").Front.Defaults.NoteNames
        );

    [Fact]
    public void A_way_that_is_not_known_is_an_error_with_its_place() =>
        Assert.Equal(
            "3:13: error: 'French' is no way to name notes; expected english, german, fixed-do or movable-do.",
            Lessons.WithFront("title: T\nnote-names: French").Found()
        );

    private static Block.Figure Figure(string line, string key, string? other = null)
    {
        var lesson = Lesson.Parse(
            $"---\ntitle: T\nkey: {key}\n{line}\n---\n\n```show\nthe notes of the key, as names\n```\n"
        );
        return (other is null ? lesson : lesson.InKey(Key.Parse(other))).Single<Block.Figure>();
    }
}
