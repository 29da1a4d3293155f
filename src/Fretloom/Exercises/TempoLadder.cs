namespace Fretloom.Exercises;

/// <summary>One tempo, or a row of them from slow to fast: <c>from 60 to 96 in steps of 6</c>.</summary>
public sealed record TempoLadder
{
    /// <summary>The most rungs of a ladder. Ours, without source.</summary>
    public const int MostRungs = 60;

    private const int WidestStep = Tempo.Fastest - Tempo.Slowest;

    /// <summary>A single tempo.</summary>
    public TempoLadder(Tempo only)
        : this(only, only, 1) { }

    /// <summary>A ladder.</summary>
    /// <param name="first">Where it begins.</param>
    /// <param name="last">Where it ends, as fast or faster; the last rung is this even if the step does not fit.</param>
    /// <param name="step">Beats a minute from rung to rung, 1 to 280.</param>
    /// <exception cref="ArgumentException">The last tempo is slower, the step is out of range, or there are more than 60 rungs.</exception>
    public TempoLadder(Tempo first, Tempo last, int step)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(step, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(step, WidestStep);
        ArgumentOutOfRangeException.ThrowIfLessThan(last.BeatsPerMinute, first.BeatsPerMinute, nameof(last));
        (First, Last, Step) = (first, last, first == last ? 1 : step);
        if (Rungs.Count > MostRungs)
        {
            throw new ArgumentException("A ladder has at most 60 rungs.", nameof(step));
        }
    }

    /// <summary>Where it begins.</summary>
    public Tempo First { get; }

    /// <summary>Where it ends.</summary>
    public Tempo Last { get; }

    /// <summary>Beats a minute from rung to rung; 1 for a single tempo.</summary>
    public int Step { get; }

    /// <summary>Every tempo, the slowest first; the last step may be smaller.</summary>
    public ValueList<Tempo> Rungs
    {
        get
        {
            var rungs = new List<Tempo>();
            for (var at = First.BeatsPerMinute; at < Last.BeatsPerMinute; at += Step)
            {
                rungs.Add(new Tempo(at));
            }

            rungs.Add(Last);
            return rungs.ToValueList();
        }
    }
}
