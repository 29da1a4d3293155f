using System.Numerics;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>What a program has to know of a key.</summary>
internal sealed class KeyNotes
{
    public KeyNotes(Key key)
    {
        Key = key;
        Notes = key.PitchClasses.Mask;
        var indexes = Enumerable.Range(0, 12).Where(sum => Twelve.Reversed(Notes, sum) == Notes).ToList();
        Inversions = indexes.Sum(sum => 1 << sum);
        Inversion = indexes.Count == 0 ? null : indexes[0];
    }

    public Key Key { get; }

    /// <summary>Pitch classes, as bits.</summary>
    public int Notes { get; }

    /// <summary>The sums m for which taking every note from m gives the key again, as bits. Seven notes have one at most.</summary>
    public int Inversions { get; }

    /// <summary>That sum, or null.</summary>
    public int? Inversion { get; }

    public int Degree(int degree) => Key.Notes[degree - 1].PitchClass.Number;
}
