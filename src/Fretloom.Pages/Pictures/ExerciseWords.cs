using System.Globalization;
using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Scores;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>An exercise in words, for those who do not see its staff, and what is said beside it.</summary>
internal static class ExerciseWords
{
    /// <summary>The tempo and how often: <c>60 to 96 beats a minute, in steps of 6, swing, after a count-in of 1 bar</c>.</summary>
    public static string Tempo(Exercise exercise)
    {
        var countIn = exercise.CountInBars > 0 ? $"after a count-in of {Bars(exercise.CountInBars)}" : null;
        return string.Join(
            ", ",
            [
                $"{TempoWords.Number(exercise)} beats a minute",
                .. TempoWords.Words(exercise),
                .. new[] { countIn }.OfType<string>(),
            ]
        );
    }

    /// <summary>What is played, in one sentence.</summary>
    public static string Description(Exercise exercise) =>
        $"{exercise.Name}, on {Wording.Name(exercise.Instrument)}, in {exercise.Metre}, {Bars(exercise.Bars)}; {Tempo(exercise)}.";

    /// <summary>The bars of a system, note by note: <c>Bars 1 to 2. Bar 1: string 4 fret 3 (F), 2 (A); ...</c>.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="first">The first bar, counted from 1.</param>
    /// <param name="last">The last bar.</param>
    public static string Bars(Exercise exercise, int first, int last)
    {
        var bars = Enumerable.Range(first, last - first + 1).Select(bar => Bar(exercise, bar));
        var heading = first == last ? "" : $"Bars {Wording.Number(first)} to {Wording.Number(last)}. ";
        return heading + string.Join(" ", bars);
    }

    /// <summary>Every note or chord with its place: a row for each.</summary>
    public static TextTable Table(Exercise exercise)
    {
        var hasFingers = exercise.Notes.Any(note => note.Finger != Finger.None);
        ValueList<string> header = ["bar", "beat", "string and fret", "note"];
        return new TextTable(
            hasFingers ? [.. header, "finger"] : header,
            exercise.Notes.GroupBy(note => note.At).Select(chord => Row(exercise, [.. chord], hasFingers)).ToValueList()
        );
    }

    private static ValueList<string> Row(Exercise exercise, List<ExerciseNote> chord, bool hasFingers)
    {
        ValueList<string> row =
        [
            Wording.Number(chord[0].At / exercise.Metre.Bar + 1),
            Beat(exercise, chord[0].At),
            string.Join(", ", chord.Select(Place)),
            string.Join(", ", chord.Select(note => NameOf(exercise, note))),
        ];
        return hasFingers ? [.. row, string.Join(", ", chord.Select(FingerOf))] : row;
    }

    private static string Bar(Exercise exercise, int bar)
    {
        var begin = exercise.Metre.Bar * (bar - 1);
        var chords = exercise
            .Notes.Where(note => note.At >= begin && note.At < begin + exercise.Metre.Bar)
            .GroupBy(note => note.At)
            .Select(chord => string.Join(" with ", chord.Select(note => $"{Place(note)} {NameOf(exercise, note)}")))
            .ToList();
        return $"Bar {Wording.Number(bar)}: {(chords.Count == 0 ? "rest" : string.Join(", ", chords))}.";
    }

    private static string Place(ExerciseNote note)
    {
        var spot = note.Note.Spot;
        return $"{Wording.Number(spot.String)}:{Wording.Number(spot.Fret)}";
    }

    private static string NameOf(Exercise exercise, ExerciseNote note) =>
        NoteNameSystem.Of(exercise.NoteNames, exercise.Key).Format(note.Note.Pitch.Name, unicode: true);

    private static string FingerOf(ExerciseNote note) => note.Finger == Finger.None ? "open" : note.Finger.ToLabel();

    // The beat counted from 1, with its fraction where a note falls between two beats.
    private static string Beat(Exercise exercise, Beats at)
    {
        var inBar = (at % exercise.Metre.Bar).Quarters / exercise.Metre.Beat.Quarters;
        return (inBar + 1).ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static string Bars(int count) => count == 1 ? "1 bar" : $"{Wording.Number(count)} bars";
}
