using Fretloom.Exercises;
using Fretloom.Hand;

namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom play --json</c> prints: one pass of the exercise. Times are in quarter notes.</summary>
/// <param name="Sentence">The sentence in full, as the program understood it.</param>
/// <param name="Instrument">The instrument.</param>
/// <param name="Hand">The hand that the fingers are for, in millimetres.</param>
/// <param name="Tempo">Quarter notes a minute in the first pass.</param>
/// <param name="Beat">Quarter notes in a beat: 1.5 in 6/8, 9/8 and 12/8.</param>
/// <param name="Metre">The time signature, such as <c>4/4</c>.</param>
/// <param name="Passes">The tempo of each time it is played, in beats a minute.</param>
/// <param name="CountIn">Bars of clicks before the first pass.</param>
/// <param name="Click">Whether the click is asked for, after the count-in too.</param>
/// <param name="Swing">Whether eighths are played long and short; the times of the notes are as written, straight.</param>
/// <param name="Touch"><c>plain</c>, <c>sustained</c> or <c>short</c>.</param>
/// <param name="Key">The key at the beginning.</param>
/// <param name="Bars">Bars of a pass.</param>
/// <param name="Sections">The keys in turn.</param>
/// <param name="Notes">The notes by time, the far string first.</param>
/// <param name="Chords">The chords by time; empty for scales and single notes.</param>
/// <param name="Cautions">What is to be said beside it; left out when there is nothing.</param>
internal sealed record PlayDocument(
    string Sentence,
    InstrumentDocument Instrument,
    double Hand,
    double Tempo,
    double Beat,
    string Metre,
    IReadOnlyList<int> Passes,
    int CountIn,
    bool Click,
    bool Swing,
    string Touch,
    string Key,
    int Bars,
    IReadOnlyList<SectionDocument> Sections,
    IReadOnlyList<PlayedNoteDocument> Notes,
    IReadOnlyList<PlayedChordDocument> Chords,
    IReadOnlyList<string>? Cautions = null
)
{
    /// <summary>The document of an exercise.</summary>
    public static PlayDocument Of(Exercise exercise) =>
        new(
            exercise.Sentence,
            InstrumentDocument.Of(exercise.Instrument),
            exercise.Player.Hand.LengthMm,
            exercise.Passes[0].QuartersPerMinute(exercise.Metre),
            exercise.Metre.Beat.Quarters,
            exercise.Metre.ToString(),
            [.. exercise.Passes.Select(pass => pass.BeatsPerMinute)],
            exercise.CountInBars,
            exercise.HasClick,
            exercise.IsSwung,
            exercise.Touch switch
            {
                Touching.Sustained => "sustained",
                Touching.Short => "short",
                _ => "plain",
            },
            exercise.Key.ToString(),
            exercise.Bars,
            [.. exercise.Sections.Select(section => new SectionDocument(section.At.Quarters, section.Key.ToString()))],
            [.. exercise.Notes.Select(PlayedNoteDocument.Of)],
            [
                .. exercise.Chords.Select(chord => new PlayedChordDocument(
                    chord.At.Quarters,
                    chord.Chord.ToString(),
                    chord.Roman?.ToString()
                )),
            ],
            exercise.Widest is { } widest && Fretloom.Hand.Cautions.Of(widest, exercise.Player.Hand) is { } said
                ? [said, Fretloom.Hand.Cautions.General(exercise.Player.Hand)]
                : null
        );
}

/// <summary>A part of an exercise in one key.</summary>
/// <param name="At">Where it begins, in quarter notes.</param>
/// <param name="Key">The key.</param>
internal sealed record SectionDocument(double At, string Key);

/// <summary>A note of an exercise. Notes with the same <c>at</c> are played together.</summary>
/// <param name="At">When it begins, in quarter notes.</param>
/// <param name="Length">How long it is, in quarter notes.</param>
/// <param name="String">The string, 1 nearest the floor.</param>
/// <param name="Fret">The fret, 0 open; with a capo counted from it.</param>
/// <param name="Pitch">The spelled pitch.</param>
/// <param name="Midi">The MIDI number.</param>
/// <param name="Degree">The place in the scale of the key of its section.</param>
/// <param name="Finger">0 for an open string, 1 to 4 from index to little finger, 5 the thumb.</param>
/// <param name="Picked"><c>down</c>, <c>up</c>, <c>p</c>, <c>i</c>, <c>m</c> or <c>a</c>; left out when the player is free.</param>
internal sealed record PlayedNoteDocument(
    double At,
    double Length,
    int String,
    int Fret,
    string Pitch,
    int Midi,
    string Degree,
    int Finger,
    string? Picked = null
)
{
    public static PlayedNoteDocument Of(ExerciseNote note) =>
        new(
            note.At.Quarters,
            note.Length.Quarters,
            note.Note.Spot.String,
            note.Note.Spot.Fret,
            note.Note.Pitch.ToString(),
            note.Note.Pitch.MidiNumber,
            note.Note.Degree.ToString(),
            (int)note.Finger,
            note.Picked switch
            {
                Exercises.Picked.Down => "down",
                Exercises.Picked.Up => "up",
                Exercises.Picked.Thumb => "p",
                Exercises.Picked.Index => "i",
                Exercises.Picked.Middle => "m",
                Exercises.Picked.Ring => "a",
                _ => null,
            }
        );
}

/// <summary>A chord of an exercise.</summary>
/// <param name="At">Where it begins, in quarter notes.</param>
/// <param name="Chord">The chord symbol.</param>
/// <param name="Roman">The Roman numeral; left out when the chord was named by its symbol.</param>
internal sealed record PlayedChordDocument(double At, string Chord, string? Roman = null);
