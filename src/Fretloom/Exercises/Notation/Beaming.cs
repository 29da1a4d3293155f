namespace Fretloom.Exercises.Notation;

/// <summary>Joins the flags of a bar's notes.</summary>
/// <remarks>
/// Beams show the beats: notes shorter than a quarter are joined within a beat, eighths alone over two beats that begin or end the
/// bar in 2/4 and 4/4. A rest ends a beam. Common practice (Gould, <i>Behind Bars</i>, 2011; from memory).
/// </remarks>
internal static class Beaming
{
    /// <summary>The figures of a bar with their beams.</summary>
    public static IEnumerable<Figure> Of(ValueList<Figure> bar, Metre metre)
    {
        for (var first = 0; first < bar.Count; )
        {
            var count = 1;
            while (first + count < bar.Count && IsJoined(bar, first, first + count, metre))
            {
                count++;
            }

            for (var at = first; at < first + count; at++)
            {
                yield return bar[at] with
                {
                    Beams = count == 1 ? [] : Beams(bar, first, count, at),
                };
            }

            first += count;
        }
    }

    private static bool IsJoined(ValueList<Figure> bar, int first, int at, Metre metre) =>
        Hangs(bar[first])
        && Hangs(bar[at])
        && bar[first].Value.IsTriplet == bar[at].Value.IsTriplet
        && Group(bar, bar[first], metre) == Group(bar, bar[at], metre);

    private static bool Hangs(Figure figure) => !figure.IsRest && figure.Value.Beams > 0;

    // The number of the group within the bar: a beat, or two of them where nothing shorter than an eighth stands.
    private static Beats Group(ValueList<Figure> bar, Figure figure, Metre metre)
    {
        var pair = metre.Beat * 2;
        var isPaired = !metre.IsCompound && metre.BeatsPerBar % 2 == 0;
        var start = figure.At - figure.At % metre.Bar % pair;
        var isPlain = bar.All(other =>
            other.At < start || other.At >= start + pair || other.Value is { Beams: <= 1, IsTriplet: false }
        );
        return isPaired && isPlain ? start : figure.At - figure.At % metre.Bar % metre.Beat;
    }

    private static ValueList<Beam> Beams(ValueList<Figure> bar, int first, int count, int at)
    {
        var last = first + count - 1;
        return Enumerable.Range(1, bar[at].Value.Beams).Select(Level).ToValueList();

        Beam Level(int level)
        {
            var goesBack = at > first && bar[at - 1].Value.Beams >= level;
            var goesOn = at < last && bar[at + 1].Value.Beams >= level;
            return (goesBack, goesOn) switch
            {
                (true, true) => Beam.Continue,
                (true, false) => Beam.End,
                (false, true) => Beam.Begin,
                _ => at == first ? Beam.ForwardHook : Beam.BackwardHook,
            };
        }
    }
}
