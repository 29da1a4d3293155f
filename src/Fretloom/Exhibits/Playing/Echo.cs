using Fretloom.Exercises;

namespace Fretloom.Exhibits.Playing;

/// <summary>Puts as many empty bars behind every few bars, to be answered by the player.</summary>
internal static class Echo
{
    /// <summary>The exercise with its rests. A note that goes over into bars that move stops at the bar line.</summary>
    public static Exercise With(Exercise exercise, int bars)
    {
        var unit = exercise.Metre.Bar * bars;
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
            Directions = exercise.Directions.Select(words => words with { At = Moved(words.At) }).ToValueList(),
            Length = unit * (2 * ((exercise.Length + unit - Beats.FromTicks(1)) / unit)),
        };
    }
}
