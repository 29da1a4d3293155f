using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Notes with or without their octave, between spaces, commas and <c>and</c>: <c>C D E</c>, <c>C4, Bb3 and A3</c>.</summary>
internal static class NoteList
{
    /// <summary>Whether a note stands here; a small a is an article.</summary>
    public static bool Begins(Cursor at) => NoteAt(at, 0, out _) > 0;

    /// <summary>Reads the notes from here on; there is at least one.</summary>
    public static Subject.GivenNotes Read(Cursor at, ShowDraft draft)
    {
        var notes = new List<GivenNote>();
        for (var skip = 0; NoteAt(at, skip, out var note) is > 0 and var count; skip = Series.Next(at, 0))
        {
            notes.Add(note);
            if (note.Pitch is { } pitch)
            {
                draft.Pitches.Add((pitch, at.Peek(skip)));
            }

            at.Skip(skip + count);
        }

        return new(notes.ToValueList());
    }

    // A note before a kind of scale belongs to it: C and the A minor scale.
    private static int NoteAt(Cursor at, int ahead, out GivenNote note)
    {
        var token = at.Peek(ahead);
        if (token.Kind == TokenKind.Word && Pitch.TryParse(token.Text, out var pitch))
        {
            note = new(pitch.Name, pitch.Octave);
            return 1;
        }

        NoteName name = default;
        var count =
            token.Text == "a" || Notes.ReadScale(at, ahead).Scale is not null ? 0 : Notes.Read(at, ahead, out name);
        note = new(name, null);
        return count;
    }
}
