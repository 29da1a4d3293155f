using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>Lays out in time what a play sentence is made of.</summary>
internal static class Arranger
{
    /// <summary>The exercise.</summary>
    public static Exercise Arrange(PlaySentence complete, Player player, ValueList<Part> parts)
    {
        var metre = complete.Metre!.Value;
        var time = new Timeline(metre);
        foreach (var part in parts)
        {
            time.Begin(part.Key, parts.Count > 1 ? Accidentals.Pretty(part.Key.ToString()) : null);
            Write(complete, part, time);
        }

        time.FillTo(metre.Bar);
        var exercise = new Exercise
        {
            Sentence = complete.ToString(),
            Name = ExerciseName.Of(complete),
            Player = player,
            Metre = metre,
            Passes = complete
                .Tempo!.Rungs.SelectMany(rung => Enumerable.Repeat(rung, complete.Times ?? 1))
                .ToValueList(),
            IsSwung = complete.Value == NoteValue.SwingEighths,
            Touch = complete.Touch ?? Touching.Plain,
            CountInBars = complete.CountInBars ?? 0,
            HasClick = complete.HasClick,
            ShowsFingers = complete.Material.IsWithFingers,
            Notes = time.Notes,
            Length = time.At,
            Sections = time.Sections,
            Chords = time.Chords,
            Words = time.Words,
            Widest = parts
                .SelectMany(part => part.Groups)
                .Select(group => group.Widest)
                .OfType<Stretch>()
                .OrderByDescending(stretch => stretch.Effort)
                .Select(stretch => (Stretch?)stretch)
                .FirstOrDefault(),
        };
        return complete.EchoBars is { } bars ? Echo.With(exercise, bars) : exercise;
    }

    private static void Write(PlaySentence complete, Part part, Timeline time)
    {
        if (complete.Strum is { } strum)
        {
            StrummedBars.Write(InTurn(part.Groups, complete.Direction), strum, time);
        }
        else if (complete.IsBlock == true)
        {
            BlockChords.Write(InTurn(part.Groups, complete.Direction), complete, time);
        }
        else if (complete.IsBlock == false)
        {
            Arpeggios.Write(part.Groups, complete, time);
        }
        else
        {
            NoteLine.Write(part.Groups[0], complete, time);
        }
    }

    private static IEnumerable<PlayedGroup> InTurn(ValueList<PlayedGroup> groups, Direction? direction) =>
        Ways.Through(groups.Count, direction ?? Direction.Up, Grouping.Plain).Select(place => groups[place]);
}
