namespace Fretloom.Exercises;

/// <summary>Strokes over chords, in the groups in which they were said: <c>down down-up up-down-up</c>.</summary>
/// <remarks>
/// Where a beat has two eighths the arm swings in eighths, toward the floor on the first and away from it on the second, and sounds
/// or passes by: each stroke comes at the next eighth of its kind, and the groups are for the eye. Where a beat has three eighths
/// each group begins on a beat, and its strokes follow each other in eighths; strokes that are all said apart are one for each
/// beat, or one for each eighth of the bar. Common practice, no source.
/// </remarks>
public sealed record StrumPattern
{
    /// <summary>Eighths that a pattern can take: those of a bar of 12/8.</summary>
    public const int MostEighths = 12;

    private const int EighthsOfCompoundBeat = 3;

    /// <summary>Takes strokes in groups.</summary>
    /// <param name="groups">True for a stroke toward the floor; at least one group, none of them empty, and no more than twelve strokes.</param>
    /// <exception cref="ArgumentException">There are no strokes, or too many.</exception>
    public StrumPattern(IEnumerable<ValueList<bool>> groups)
    {
        Groups = groups.ToValueList();
        if (Groups.Count == 0 || Groups.Any(group => group.Count == 0) || Strokes.Count > MostEighths)
        {
            throw new ArgumentException("A strum pattern has 1 to 12 strokes.", nameof(groups));
        }
    }

    /// <summary>The strokes, those that are joined by a hyphen together; true for one toward the floor.</summary>
    public ValueList<ValueList<bool>> Groups { get; }

    /// <summary>All strokes in order.</summary>
    public ValueList<bool> Strokes => Groups.SelectMany(group => group).ToValueList();

    /// <summary>The strokes of a bar, by time; a pattern that fills half of a bar or a smaller whole part of it comes again.</summary>
    /// <returns>Null when the pattern does not fit into a bar of the metre.</returns>
    public ValueList<StrumStroke>? In(Metre metre)
    {
        var eighth = Beats.Of(1, 8);
        var eighthsOfBeat = metre.Beat / eighth;
        var once = metre.IsCompound ? InThrees(metre) : InTwos();
        if (once is not { } strokes)
        {
            return null;
        }

        var beats = strokes[^1].Eighth / eighthsOfBeat + 1;
        if (beats > metre.BeatsPerBar)
        {
            return null;
        }

        var times = metre.BeatsPerBar % beats == 0 ? metre.BeatsPerBar / beats : 1;
        return Enumerable
            .Range(0, times)
            .SelectMany(time =>
                strokes.Select(stroke => stroke with { Eighth = stroke.Eighth + time * beats * eighthsOfBeat })
            )
            .ToValueList();
    }

    /// <summary>Groups apart, strokes joined: <c>down down-up up-down-up</c>.</summary>
    public override string ToString() =>
        string.Join(' ', Groups.Select(group => string.Join('-', group.Select(isDown => isDown ? "down" : "up"))));

    private ValueList<StrumStroke> InTwos()
    {
        var strokes = new List<StrumStroke>();
        var next = 0;
        foreach (var isDown in Strokes)
        {
            next += next % 2 == (isDown ? 0 : 1) ? 0 : 1;
            strokes.Add(new(next++, isDown));
        }

        return strokes.ToValueList();
    }

    private ValueList<StrumStroke>? InThrees(Metre metre)
    {
        if (Groups.All(group => group.Count == 1) && Groups.Count == EighthsOfCompoundBeat * metre.BeatsPerBar)
        {
            return Strokes.Select((isDown, at) => new StrumStroke(at, isDown)).ToValueList();
        }

        return Groups.Any(group => group.Count > EighthsOfCompoundBeat)
            ? null
            : Groups
                .SelectMany(
                    (group, beat) =>
                        group.Select((isDown, at) => new StrumStroke(EighthsOfCompoundBeat * beat + at, isDown))
                )
                .ToValueList();
    }
}
