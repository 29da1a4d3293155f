using Fretloom.Exercises;

namespace Fretloom.Exhibits.Playing;

/// <summary>Puts as many empty bars behind every few bars, to be answered by the player.</summary>
internal static class Echo
{
    /// <summary>The exercise with its rests. A note that goes over into bars that move stops at the bar line.</summary>
    public static Exercise With(Exercise played, int bars)
    {
        var unit = played.Metre.Bar * bars;
        var exercise = Filling(played, unit);
        Beats Moved(Beats at) => at + unit * (at / unit);
        return exercise with
        {
            Notes = exercise
                .Notes.Select(note =>
                    note with
                    {
                        At = Moved(note.At),
                        Length =
                            note.At / unit == (note.End - Beats.FromTicks(1)) / unit
                                ? note.Length
                                : unit - note.At % unit,
                    }
                )
                .ToValueList(),
            Sections = exercise.Sections.Select(section => section with { At = Moved(section.At) }).ToValueList(),
            Chords = exercise.Chords.Select(chord => chord with { At = Moved(chord.At) }).ToValueList(),
            Words = exercise.Words.Select(words => words with { At = Moved(words.At) }).ToValueList(),
            Length = unit * (2 * ((exercise.Length + unit - Beats.FromTicks(1)) / unit)),
        };
    }

    // What is shorter than the bars and goes into them comes again until they are full.
    private static Exercise Filling(Exercise exercise, Beats unit)
    {
        if (exercise.Length >= unit || (unit % exercise.Length).Ticks > 0)
        {
            return exercise;
        }

        var times = Enumerable.Range(0, unit / exercise.Length).Select(time => exercise.Length * time).ToList();
        return exercise with
        {
            Notes = times
                .SelectMany(later => exercise.Notes.Select(note => note with { At = note.At + later }))
                .ToValueList(),
            Chords = times
                .SelectMany(later => exercise.Chords.Select(chord => chord with { At = chord.At + later }))
                .ToValueList(),
            Length = unit,
        };
    }
}
