using System.Globalization;
using System.Text;
using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Theory;

namespace Fretloom.Scores.Tab;

/// <summary>One bar of plain-text tablature, all its lines of the same width.</summary>
internal sealed class TabBar
{
    private const int LeastColumn = 2;

    private readonly Exercise _exercise;
    private readonly Beats _begin;
    private readonly Beats _unit;
    private readonly int[] _columns;
    private readonly List<(Beats At, string Text)> _chords;

    /// <summary>Lays a bar out.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="bar">The bar, counted from 0.</param>
    /// <param name="hasFingers">Whether fingers are written.</param>
    public TabBar(Exercise exercise, int bar, bool hasFingers)
    {
        _exercise = exercise;
        _begin = exercise.Metre.Bar * bar;
        var notes = exercise.NotesIn(_begin, _begin + exercise.Metre.Bar).ToList();
        _unit = Unit(notes);
        _chords = exercise
            .Chords.Where(chord => chord.At >= _begin && chord.At < _begin + exercise.Metre.Bar)
            .Select(chord => (chord.At, ChordNames.Of(exercise, chord.Chord)))
            .ToList();
        _columns = Columns(notes, hasFingers);
        Opening = exercise.Sections.FirstOrDefault(section => section.At == _begin)?.Heading;
        Strings = Enumerable
            .Range(1, exercise.Instrument.Strings.Count)
            .Select(number => String(notes, number))
            .ToArray();
        Above = Words(_chords);
        Beats = Words(
            Enumerable
                .Range(0, exercise.Metre.BeatsPerBar)
                .Select(beat =>
                    (_begin + exercise.Metre.Beat * beat, (beat + 1).ToString(CultureInfo.InvariantCulture))
                )
        );
        var chords = notes.GroupBy(note => note.At).Select(chord => chord.ToList()).ToList();
        Picking = Words(chords.Select(chord => (chord[0].At, HandSigns.Picking(chord))));
        Fingers = hasFingers ? Words(chords.Select(chord => (chord[0].At, FingersOf(chord)))) : "";
    }

    /// <summary>Words that stand before the bar on a line of their own, which begins a new system; null for none.</summary>
    public string? Opening { get; }

    /// <summary>Chords.</summary>
    public string Above { get; }

    /// <summary>The strings, string 1 first.</summary>
    public string[] Strings { get; }

    /// <summary>The numbers of the beats.</summary>
    public string Beats { get; }

    /// <summary>Strokes or picking fingers.</summary>
    public string Picking { get; }

    /// <summary>Fretting fingers, the far string's first in a chord.</summary>
    public string Fingers { get; }

    /// <summary>Characters, with the bar line at the end.</summary>
    public int Width => _columns.Sum() + 2;

    private string FingersOf(List<ExerciseNote> chord) =>
        HandSigns.IsStruckAgain(_exercise, chord)
            ? ""
            : string.Concat(chord.Where(note => note.Finger != Finger.None).Select(note => note.Finger.ToLabel()));

    // The longest time that divides every beginning in the bar, at most a beat.
    private Beats Unit(List<ExerciseNote> notes)
    {
        var ticks = notes.Aggregate(
            _exercise.Metre.Beat.Ticks,
            (unit, note) => Divisor(unit, (note.At - _begin).Ticks)
        );
        return Exercises.Beats.FromTicks(ticks);
    }

    private static int Divisor(int one, int other) => other == 0 ? one : Divisor(other, one % other);

    private int[] Columns(List<ExerciseNote> notes, bool hasFingers)
    {
        var columns = new int[_exercise.Metre.Bar / _unit];
        Array.Fill(columns, LeastColumn);
        foreach (var chord in notes.GroupBy(note => note.At))
        {
            var together = chord.ToList();
            var words = Math.Max(HandSigns.Picking(together).Length, hasFingers ? FingersOf(together).Length : 0);
            ref var column = ref columns[(chord.Key - _begin) / _unit];
            column = Math.Max(column, Math.Max(words, chord.Max(note => Fret(note).Length)) + 1);
        }

        WidenForChords(columns);
        return columns;
    }

    // A name ends before the next one, and before the end of the bar.
    private void WidenForChords(int[] columns)
    {
        var chords = _chords.Select(chord => (Column: (chord.At - _begin) / _unit, chord.Text.Length)).ToList();
        for (var at = 0; at < chords.Count; at++)
        {
            var end = at + 1 < chords.Count ? chords[at + 1].Column : columns.Length;
            var room = columns[chords[at].Column..end].Sum();
            columns[chords[at].Column] += Math.Max(0, chords[at].Length + 1 - room);
        }
    }

    private string String(List<ExerciseNote> notes, int number)
    {
        var line = new StringBuilder("-");
        for (var at = 0; at < _columns.Length; at++)
        {
            var place = _begin + _unit * at;
            var note = notes.Find(note => note.At == place && note.Note.Spot.String == number);
            var figure = note.Length.Ticks > 0 ? Fret(note) : "";
            line.Append(figure.PadRight(_columns[at], '-'));
        }

        return line.ToString();
    }

    private string Words(IEnumerable<(Beats At, string Text)> words)
    {
        var line = new StringBuilder(new string(' ', Width - 1));
        foreach (var (at, text) in words)
        {
            if (at < _begin || at >= _begin + _exercise.Metre.Bar)
            {
                continue;
            }

            var start = 1 + _columns.Take((at - _begin) / _unit).Sum();
            var fits = Math.Min(text.Length, line.Length - start);
            line.Remove(start, fits).Insert(start, text[..fits]);
        }

        return line.ToString();
    }

    private string Fret(ExerciseNote note) => TabFigure.Of(_exercise.Instrument, note.Note.Spot);
}
