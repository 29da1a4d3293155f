using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exercises;

/// <summary>Notes in order with rhythm and fingering, to be played: a play sentence worked out, with no music left to compute.</summary>
public sealed record Exercise
{
    /// <summary>The longest that all passes together may take, in seconds: an hour. Ours, without source.</summary>
    public const int MostSeconds = 3600;

    /// <summary>The most bars of a count-in. Ours, without source.</summary>
    public const int MostCountInBars = 4;

    /// <summary>The sentence with every default filled in that concerns it, printed canonically.</summary>
    public required string Sentence { get; init; }

    /// <summary>What is played, in words for a heading: <c>The seventh chords of D major, up and down</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The hand and the instrument with its capo.</summary>
    public required Player Player { get; init; }

    /// <summary>The time signature, the same throughout.</summary>
    public required Metre Metre { get; init; }

    /// <summary>The tempo of each time the exercise is played through; at least one. A ladder has a pass for each of its rungs.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public required ValueList<Tempo> Passes
    {
        get;
        init => field = value.Count > 0 ? value : throw new ArgumentException("An exercise is played at least once.");
    }

    /// <summary>Whether each pair of eighths is played long and short, two thirds of a beat and one third.</summary>
    public bool IsSwung { get; init; }

    /// <summary>Whether notes are to ring into each other, or stop short of their length, or neither.</summary>
    public Touching Touch { get; init; }

    /// <summary>Bars of clicks before the first pass, 0 to 4.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 4.</exception>
    public int CountInBars
    {
        get;
        init
        {
            ArgumentOutOfRangeException.ThrowIfNegative(value);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, MostCountInBars);
            field = value;
        }
    }

    /// <summary>Whether the click is asked for, after the count-in too.</summary>
    public bool HasClick { get; init; }

    /// <summary>One pass: by time, then the far string first. Never empty.</summary>
    /// <exception cref="ArgumentException">There is no note.</exception>
    public required ValueList<ExerciseNote> Notes
    {
        get;
        init => field = value.Count > 0 ? value : throw new ArgumentException("An exercise has notes.");
    }

    /// <summary>The length of one pass: whole bars, as long as the last note and the rests after it.</summary>
    public required Beats Length { get; init; }

    /// <summary>Its parts by time; the first begins at 0 and gives the key. An exercise through the keys has one for each.</summary>
    /// <exception cref="ArgumentException">There is none, or the first begins later.</exception>
    public required ValueList<Section> Sections
    {
        get;
        init =>
            field =
                value.Count > 0 && value[0].At.Ticks == 0
                    ? value
                    : throw new ArgumentException("The first section begins where the exercise does.");
    }

    /// <summary>The chords over the notes, by time; empty for scales and single notes.</summary>
    public ValueList<ChordMark> Chords { get; init; }

    /// <summary>Words over the staff, by time, such as the counting under a strum pattern.</summary>
    public ValueList<StaffWords> Words { get; init; }

    /// <summary>The pair of fingers that works hardest; null when no two fingers are down at one time.</summary>
    public Stretch? Widest { get; init; }

    /// <summary>Whether fingers were asked for where they are not always printed, as in plain text.</summary>
    public bool ShowsFingers { get; init; }

    /// <summary>Whether pictures of the neck are mirrored for a left-handed player; tablature never is.</summary>
    public bool IsLeftHanded { get; init; }

    /// <summary>How notes are named where they are named.</summary>
    public NoteNaming NoteNames { get; init; }

    /// <summary>The instrument.</summary>
    public Instrument Instrument => Player.Instrument;

    /// <summary>The key of the first section.</summary>
    public Key Key => Sections[0].Key;

    /// <summary>Bars in one pass.</summary>
    public int Bars => Length / Metre.Bar;

    /// <summary>How long the count-in and all passes take, in seconds.</summary>
    public double Seconds =>
        Passes[0].Seconds(Metre.Bar * CountInBars, Metre) + Passes.Sum(tempo => tempo.Seconds(Length, Metre));

    /// <summary>The part that a place belongs to.</summary>
    public Section SectionAt(Beats at) => Sections.Last(section => section.At <= at);

    /// <summary>How many notes begin before a place, which is where those at or after it begin in <see cref="Notes"/>.</summary>
    public int NotesBefore(Beats at)
    {
        var (from, to) = (0, Notes.Count);
        while (from < to)
        {
            var middle = (from + to) / 2;
            (from, to) = Notes[middle].At < at ? (middle + 1, to) : (from, middle);
        }

        return from;
    }

    /// <summary>The notes that begin at or after a place and before another.</summary>
    public IEnumerable<ExerciseNote> NotesIn(Beats begin, Beats end)
    {
        var last = NotesBefore(end);
        for (var at = NotesBefore(begin); at < last; at++)
        {
            yield return Notes[at];
        }
    }

    /// <summary>When a written place sounds, in quarter notes from the beginning of a pass: swing moves the second eighth of a beat.</summary>
    public double SoundsAt(Beats written)
    {
        var inBeat = (written % Metre.Beat).Quarters;
        var beat = written.Quarters - inBeat;
        var isMoved = IsSwung && !Metre.IsCompound;
        return beat
            + (
                !isMoved ? inBeat
                : inBeat <= 0.5 ? inBeat * 4 / 3
                : 2.0 / 3 + (inBeat - 0.5) * 2 / 3
            );
    }
}
