using System.Collections;
using System.Numerics;

namespace Fretloom.Theory;

/// <summary>A set of pitch classes as twelve bits: bit n stands for pitch class n. The <c>default</c> is empty.</summary>
/// <remarks>
/// Terms and operations as in Allen Forte, The Structure of Atonal Music (1973), and John Rahn, Basic Atonal Theory (1980):
/// from memory; the tables are checked in the tests.
/// </remarks>
public readonly record struct PitchClassSet : IReadOnlyCollection<PitchClass>
{
    private const int AllBits = 0xFFF;

    /// <summary>Makes a set from its mask.</summary>
    /// <param name="mask">Bit n set when pitch class n is in; 0 to 4095.</param>
    /// <exception cref="ArgumentOutOfRangeException">A bit above 11 is set.</exception>
    public PitchClassSet(int mask)
    {
        if ((mask & ~AllBits) != 0)
        {
            throw new ArgumentOutOfRangeException(nameof(mask), mask, "A pitch-class set has twelve bits.");
        }

        Mask = (ushort)mask;
    }

    /// <summary>The twelve bits.</summary>
    public ushort Mask { get; }

    /// <summary>How many pitch classes are in it, 0 to 12.</summary>
    public int Count => BitOperations.PopCount(Mask);

    /// <summary>The set of the pitch classes given; repeats count once.</summary>
    public static PitchClassSet Of(IEnumerable<PitchClass> pitchClasses) =>
        new(pitchClasses.Aggregate(0, (mask, pitchClass) => mask | (1 << pitchClass.Number)));

    /// <summary>Whether a pitch class is in it.</summary>
    public bool Contains(PitchClass pitchClass) => (Mask >> pitchClass.Number & 1) != 0;

    /// <summary>Whether all of another set is in it.</summary>
    public bool Includes(PitchClassSet other) => (other.Mask & ~Mask) == 0;

    /// <summary>T_n: every member some semitones up (down when negative).</summary>
    public PitchClassSet Transpose(int semitones)
    {
        var up = Modulo.Of(semitones, 12);
        return new((Mask << up | Mask >> 12 - up) & AllBits);
    }

    /// <summary>T_nI: every member x becomes n - x.</summary>
    public PitchClassSet Invert(int index) => Map(member => index - member);

    /// <summary>M5: every member times five, which turns the line of semitones into that of fourths.</summary>
    public PitchClassSet MultiplyByFive() => Map(member => 5 * member);

    /// <summary>How often each interval class 1 to 6 occurs between members; item 0 is interval class 1.</summary>
    public ValueList<int> IntervalVector
    {
        get
        {
            Span<int> counts = stackalloc int[6];
            for (var size = 1; size <= 6; size++)
            {
                var shared = BitOperations.PopCount((uint)(Mask & Transpose(size).Mask));
                counts[size - 1] = size == 6 ? shared / 2 : shared;
            }

            return ValueList.Create<int>(counts);
        }
    }

    /// <summary>
    /// The prime form: of all transpositions and inversions the one with the smallest mask, that is, packed to the left
    /// from the right as Rahn has it. Starts at 0 unless empty.
    /// </summary>
    public PitchClassSet PrimeForm
    {
        get
        {
            var smallest = Mask;
            var inverse = Invert(0);
            for (var n = 0; n < 12; n++)
            {
                smallest = Math.Min(smallest, Math.Min(Transpose(n).Mask, inverse.Transpose(n).Mask));
            }

            return new PitchClassSet(smallest);
        }
    }

    /// <summary>How many different sets transposition makes of it: 12, or a divisor of 12 when it repeats within the octave.</summary>
    public int DistinctTranspositions
    {
        get
        {
            var period = 1;
            while (Transpose(period) != this)
            {
                period++;
            }

            return period;
        }
    }

    /// <summary>Every n for which T_nI carries the set onto itself, ascending, 0 to 11; empty when it is not its own inversion.</summary>
    public ValueList<int> InversionIndexes
    {
        get
        {
            var set = this;
            return Enumerable.Range(0, 12).Where(n => set.Invert(n) == set).ToValueList();
        }
    }

    /// <summary>Whether some T_nI carries the set onto itself.</summary>
    public bool IsItsOwnInversion => InversionIndexes.Count > 0;

    /// <summary>The members, ascending.</summary>
    public IEnumerator<PitchClass> GetEnumerator()
    {
        for (var number = 0; number < 12; number++)
        {
            if ((Mask >> number & 1) != 0)
            {
                yield return new PitchClass(number);
            }
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>The members in braces, ascending: <c>{0,4,7}</c>.</summary>
    public override string ToString() => $"{{{string.Join(",", this)}}}";

    private PitchClassSet Map(Func<int, int> map)
    {
        var mask = 0;
        foreach (var member in this)
        {
            mask |= 1 << Modulo.Of(map(member.Number), 12);
        }

        return new PitchClassSet(mask);
    }
}
