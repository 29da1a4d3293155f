namespace Fretloom.Exercises;

/// <summary>The strokes of one bar over chords.</summary>
/// <remarks>
/// The arm swings in eighths, toward the floor on the first of each two and away from it on the second, and sounds or passes by.
/// Text: strokes that follow each other at once are joined, where the arm passes by stands a space: <c>down down-up up-down-up</c>
/// is 1, 2 &amp;, &amp; 4 &amp;. Common practice, no source.
/// </remarks>
public sealed record StrumPattern
{
    /// <summary>Strokes that a pattern can have: those of a bar of 12/8.</summary>
    public const int MostEighths = 12;

    /// <summary>Puts every stroke at the next eighth of its kind.</summary>
    /// <param name="strokes">True for a stroke toward the floor; at least one, and none beyond the twelfth eighth.</param>
    /// <exception cref="ArgumentException">There is no stroke, or they take more than twelve eighths.</exception>
    public StrumPattern(IEnumerable<bool> strokes)
    {
        var eighths = new List<int>();
        var next = 0;
        foreach (var isDown in strokes)
        {
            next += next % 2 == (isDown ? 0 : 1) ? 0 : 1;
            eighths.Add(next++);
        }

        Eighths = eighths.ToValueList();
        if (eighths.Count == 0 || Length > MostEighths)
        {
            throw new ArgumentException("A strum pattern has 1 to 12 eighths.", nameof(strokes));
        }
    }

    /// <summary>The eighths of the bar that sound, counted from 0, ascending; even ones are strokes toward the floor.</summary>
    public ValueList<int> Eighths { get; }

    /// <summary>Eighths up to the last that sounds.</summary>
    public int Length => Eighths[^1] + 1;

    /// <summary>Down and up, joined where no eighth is passed by.</summary>
    public override string ToString()
    {
        var words = Eighths.Select(eighth => eighth % 2 == 0 ? "down" : "up").ToList();
        return string.Concat(
            words.Select((word, at) => at == 0 ? word : (Eighths[at] == Eighths[at - 1] + 1 ? "-" : " ") + word)
        );
    }
}
