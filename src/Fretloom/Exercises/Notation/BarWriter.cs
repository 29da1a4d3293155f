namespace Fretloom.Exercises.Notation;

/// <summary>Writes an exercise out in bars.</summary>
/// <remarks>
/// One voice: the notes of a chord begin and end together, and a chord is over when the next begins. What crosses a bar line or, begun off the
/// beat, the next beat, is tied, so that every beat can be seen. Rests show the middle of a bar of two equal halves, and have a dot only
/// where beats fall into three; so do notes of such metres. Common practice (Gould, <i>Behind Bars</i>, 2011, on grouping; from memory).
/// </remarks>
public static class BarWriter
{
    /// <summary>Every bar of one pass.</summary>
    /// <exception cref="ArgumentException">The notes overlap, or a length cannot be written.</exception>
    public static ValueList<WrittenBar> Write(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var metre = exercise.Metre;
        return Stretches(exercise)
            .SelectMany(stretch => Figures(stretch, metre))
            .GroupBy(figure => figure.At / metre.Bar)
            .Select(bar => new WrittenBar(
                bar.Key + 1,
                metre.Bar * bar.Key,
                Beaming.Of(Brackets([.. bar], metre).ToValueList(), metre).ToValueList()
            ))
            .ToValueList();
    }

    /// <summary>A chord, note or silence from its beginning to its end.</summary>
    private readonly record struct Stretch(Beats At, Beats End, ValueList<ExerciseNote> Notes);

    private static IEnumerable<Stretch> Stretches(Exercise exercise)
    {
        var at = default(Beats);
        foreach (var chord in exercise.Notes.GroupBy(note => note.At))
        {
            var notes = chord.ToValueList();
            var end = notes[0].End;
            if (chord.Key < at || notes.Any(note => note.End != end))
            {
                throw new ArgumentException("Notes of one voice neither overlap nor end apart.", nameof(exercise));
            }

            if (chord.Key > at)
            {
                yield return new(at, chord.Key, []);
            }

            yield return new(chord.Key, end, notes);
            at = end;
        }

        if (exercise.Length > at)
        {
            yield return new(at, exercise.Length, []);
        }
    }

    private static IEnumerable<Figure> Figures(Stretch stretch, Metre metre)
    {
        var isTied = false;
        for (var at = stretch.At; at < stretch.End; )
        {
            var isRest = stretch.Notes.Count == 0;
            var limit = Limit(at, stretch.End, metre, showsMiddle: isRest || metre.IsCompound);
            var value = Longest(at, limit, metre, canHaveDot: !isRest || metre.IsCompound);
            var end = at + value.Length;
            var goesOn = !isRest && end < stretch.End;
            yield return new(at, value, stretch.Notes, isTied, goesOn);
            (at, isTied) = (end, goesOn);
        }
    }

    /// <summary>How far one sign may reach from a place.</summary>
    private static Beats Limit(Beats at, Beats end, Metre metre, bool showsMiddle)
    {
        var inBar = at % metre.Bar;
        var bar = at - inBar;
        var inBeat = at % metre.Beat;
        if (inBeat.Ticks > 0)
        {
            return Nearer(end, at - inBeat + metre.Beat);
        }

        var half = Beats.FromTicks(metre.Bar.Ticks / 2);
        var hasMiddle = showsMiddle && metre.BeatsPerBar % 2 == 0 && metre.BeatsPerBar > 2;
        var barEnd = Nearer(end, bar + metre.Bar);
        var isWhole = inBar.Ticks == 0 && barEnd - at == metre.Bar;
        return hasMiddle && !isWhole && inBar < half && inBar.Ticks > 0 ? Nearer(barEnd, bar + half) : barEnd;
    }

    /// <summary>The longest value that fits and, when it does not reach the limit, ends on a beat or stays within its beat.</summary>
    private static WrittenValue Longest(Beats at, Beats limit, Metre metre, bool canHaveDot)
    {
        var isInThree = !metre.IsCompound && !(IsInTwo(at) && IsInTwo(limit));
        foreach (var value in WrittenValue.All.Where(value => canHaveDot || !value.IsDotted))
        {
            var end = at + value.Length;
            var staysInBeat = at % metre.Beat + value.Length <= metre.Beat;
            var endsOnBeat = (end % metre.Beat).Ticks == 0;
            if (end <= limit && (endsOnBeat || staysInBeat) && (!value.IsTriplet || isInThree))
            {
                return value;
            }
        }

        throw new ArgumentException($"No note is as long as {limit - at} quarters.", nameof(limit));
    }

    /// <summary>Opens and closes a bracket around the triplets of each beat.</summary>
    private static IEnumerable<Figure> Brackets(ValueList<Figure> bar, Metre metre)
    {
        for (var at = 0; at < bar.Count; at++)
        {
            var isIn = bar[at].Value.IsTriplet;
            var opens = isIn && !(at > 0 && IsSameTriplet(bar[at - 1], bar[at], metre));
            var closes = isIn && !(at + 1 < bar.Count && IsSameTriplet(bar[at], bar[at + 1], metre));
            yield return bar[at] with
            {
                Bracket =
                    !isIn ? Bracket.None
                    : opens ? Bracket.Start
                    : closes ? Bracket.Stop
                    : Bracket.Inside,
            };
        }
    }

    private static bool IsSameTriplet(Figure one, Figure next, Metre metre) =>
        one.Value.IsTriplet && next.Value.IsTriplet && one.At / metre.Beat == next.At / metre.Beat;

    // Whether halving beats leads to a place.
    private static bool IsInTwo(Beats at) => (at % Beats.Of(1, 32)).Ticks == 0;

    private static Beats Nearer(Beats one, Beats other) => one < other ? one : other;
}
