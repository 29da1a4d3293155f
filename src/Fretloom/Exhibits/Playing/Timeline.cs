using Fretloom.Exercises;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>Lays notes out in time.</summary>
internal sealed class Timeline(Metre metre)
{
    private readonly List<ExerciseNote> _notes = [];
    private readonly List<Section> _sections = [];
    private readonly List<ChordMark> _chords = [];
    private readonly List<StaffWords> _words = [];

    /// <summary>The time signature.</summary>
    public Metre Metre => metre;

    /// <summary>Where the next note begins.</summary>
    public Beats At { get; private set; }

    /// <summary>The notes, by time.</summary>
    public ValueList<ExerciseNote> Notes => _notes.ToValueList();

    /// <summary>The parts, by time.</summary>
    public ValueList<Section> Sections => _sections.ToValueList();

    /// <summary>The chords, by time.</summary>
    public ValueList<ChordMark> Chords => _chords.ToValueList();

    /// <summary>The words, by time.</summary>
    public ValueList<StaffWords> Words => _words.ToValueList();

    /// <summary>Begins a part; the last note of the one before rings to its bar line.</summary>
    public void Begin(Key key, string? heading)
    {
        FillTo(metre.Bar);
        _sections.Add(new(At, key, heading));
    }

    /// <summary>Names the chord that begins here.</summary>
    public void Mark(PlayedGroup group, bool isHeld)
    {
        if (group.Chord is { } chord)
        {
            _chords.Add(new(At, chord.Chord, chord.Roman, isHeld ? group.Shape : null));
        }
    }

    /// <summary>Writes words here.</summary>
    public void Say(string text) => _words.Add(new(At, text));

    /// <summary>Adds a note, or several at once.</summary>
    public void Add(IEnumerable<PlayedNote> notes, Beats length, Picked picked = Picked.Unsaid)
    {
        _notes.AddRange(
            notes
                .OrderByDescending(note => note.Note.Spot.String)
                .Select(note => new ExerciseNote(At, length, note.Note, note.Finger, picked))
        );
        At += length;
    }

    /// <summary>Silence.</summary>
    public void Rest(Beats length) => At += length;

    /// <summary>Lets the last notes go on until the next place that is a multiple of a length.</summary>
    public void FillTo(Beats unit) => FillUpTo(At % unit is { Ticks: > 0 } over ? At + (unit - over) : At);

    /// <summary>Lets the last notes go on until a place.</summary>
    /// <param name="end">Not before the place of the next note.</param>
    public void FillUpTo(Beats end)
    {
        var more = end - At;
        if (_notes.Count > 0 && more.Ticks > 0)
        {
            var last = _notes[^1].At;
            for (var at = _notes.Count - 1; at >= 0 && _notes[at].At == last; at--)
            {
                _notes[at] = _notes[at] with { Length = _notes[at].Length + more };
            }
        }

        At = end;
    }
}
