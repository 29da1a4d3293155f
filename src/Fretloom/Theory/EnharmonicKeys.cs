namespace Fretloom.Theory;

/// <summary>Keys as players meet them: of two that sound alike, the one with fewer accidentals.</summary>
public static class EnharmonicKeys
{
    private const int Count = 12;

    /// <summary>
    /// The key itself or its enharmonic twin, whichever has fewer accidentals in its scale; with equally many, the one whose
    /// tonic lies nearer C (or A for a key with a minor third) in fifths, then the flat one.
    /// </summary>
    public static Key Simplest(this Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        var home = key.Kind.Intervals.Any(interval => interval.Semitones == 3) ? 3 : 0;
        return new[] { -Count, 0, Count }
            .Select(turn => key.Tonic.FifthsFromC + turn)
            .Where(fifths => fifths is >= -10 and <= 13)
            .Select(fifths => key.On(NoteName.FromFifths(fifths)))
            .OrderBy(twin => twin.Notes.Sum(note => Math.Abs(note.Alteration)))
            .ThenBy(twin => Math.Abs(twin.Tonic.FifthsFromC - home))
            .ThenBy(twin => twin.Tonic.FifthsFromC)
            .First();
    }

    /// <summary>The twelve keys of a kind, each a fourth above the one before, from C.</summary>
    /// <exception cref="ArgumentException">The kind of scale has not seven notes.</exception>
    public static ValueList<Key> OnEveryTonic(ScaleKind kind) =>
        Enumerable
            .Range(0, Count)
            .Select(fourths => new Key(NoteName.FromFifths(fourths > 9 ? Count - fourths : -fourths), kind).Simplest())
            .ToValueList();
}
