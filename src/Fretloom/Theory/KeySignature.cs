namespace Fretloom.Theory;

/// <summary>Key signatures.</summary>
public static class KeySignature
{
    private const int Most = 7;

    /// <summary>
    /// Sharps (positive) or flats (negative) of the signature that a key is written with: the one of the major scale with the same notes,
    /// for harmonic and melodic minor and their like that of the natural minor or major key on the tonic. From -7 to 7: a key that would need more takes
    /// the seven.
    /// </summary>
    public static int Of(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        var places = key.Notes.Select(note => note.FifthsFromC).Order().ToList();
        var isOneRun = places[^1] - places[0] == 6;
        var fifths =
            isOneRun ? places[0] + 1
            : key.Kind.IsMinor ? key.Tonic.FifthsFromC - 3
            : key.Tonic.FifthsFromC;
        return Math.Clamp(fifths, -Most, Most);
    }
}
