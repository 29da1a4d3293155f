using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Writes what sets of frets come to, on the endless neck and in a window; see <see cref="NeckLine"/>.</summary>
/// <remarks>In a window the frets of a set may be moved out of it, and are not lost.</remarks>
internal sealed class NeckCompiler(Code code, FretRange? window)
{
    private readonly Logic _logic = new(code);

    /// <summary>Null for the endless neck.</summary>
    public FretRange? Window => window;

    /// <summary>The octaves that are looked at.</summary>
    public IEnumerable<int> Octaves =>
        window is { } range ? Enumerable.Range(range.First / 12, range.Last / 12 - range.First / 12 + 1) : [0];

    /// <summary>Frets that are the same in every octave, as far as the neck is looked at.</summary>
    /// <param name="whole">The register of whole frets.</param>
    /// <param name="half">That of the places half a fret higher, if there can be any.</param>
    public FretBits Seen(int whole, int? half = null)
    {
        var seen = new FretBits();
        foreach (var octave in Octaves)
        {
            seen.Add(new Octave(octave, IsHalf: false), Masked(whole, InWindow(octave, 0)), code);
            if (half is { } halves)
            {
                seen.Add(new Octave(octave, IsHalf: true), Masked(halves, InWindow(octave, 1)), code);
            }
        }

        return seen;
    }

    /// <summary>Frets by number.</summary>
    public FretBits Numbers(ValueList<int> frets)
    {
        var numbers = new FretBits();
        foreach (var octave in frets.GroupBy(fret => window is null ? 0 : fret / 12))
        {
            var bits = octave.Aggregate(0, (all, fret) => all | 1 << fret % 12);
            numbers.Add(new Octave(octave.Key, IsHalf: false), code.Number(bits), code);
        }

        return numbers;
    }

    public FretBits Common(FretBits set, FretBits other) =>
        set.Each((octave, bits) => other[octave] is { } others ? code.Binary(Op.And, bits, others) : null);

    public FretBits Without(FretBits set, FretBits other) =>
        set.Each((octave, bits) => other[octave] is { } others ? code.Binary(Op.Without, bits, others) : bits);

    /// <summary>The set where something is true, and else nothing.</summary>
    public FretBits Where(FretBits set, int isTrue) => set.Each((_, bits) => code.Binary(Op.And, bits, isTrue));

    public FretBits Together(FretBits set, FretBits other)
    {
        var all = set.Each((_, bits) => bits);
        foreach (var (octave, bits) in other.Registers)
        {
            all.Add(octave, bits, code);
        }

        return all;
    }

    public int IsAny(FretBits set) =>
        set.Registers.Count == 0
            ? code.Number(0)
            : _logic.Not(code.WithNumber(Op.AreEqual, _logic.Any(set.Registers.Values), 0));

    public int Count(FretBits set) =>
        _logic.Joined(Op.Add, set.Registers.Values.Select(bits => code.Unary(Op.Members, bits))) ?? code.Number(0);

    public int AreEqual(FretBits set, FretBits other) =>
        _logic.All(
            set.Registers.Keys.Union(other.Registers.Keys)
                .Select(octave =>
                    set[octave] is { } one && other[octave] is { } two
                        ? code.Binary(Op.AreEqual, one, two)
                        : code.WithNumber(Op.AreEqual, set[octave] ?? other[octave] ?? 0, 0)
                )
        );

    /// <summary>Moved up, downward when negative.</summary>
    public FretBits Moved(FretBits set, int halfFrets)
    {
        var frets = Modulo.Floor(halfFrets, 2);
        var moved = new FretBits();
        foreach (var (octave, bits) in set.Registers)
        {
            var up = halfFrets % 2 != 0 && octave.IsHalf ? frets + 1 : frets;
            Move(new Octave(octave.Number, octave.IsHalf != (halfFrets % 2 != 0)), bits, up, moved);
        }

        return moved;
    }

    /// <summary>Turned about a place, in half frets.</summary>
    public FretBits Turned(FretBits set, int centre) => Moved(Reversed(set), 2 * centre);

    /// <summary>Turned, on the endless neck, about a place that differs from lane to lane.</summary>
    /// <param name="set">The set.</param>
    /// <param name="twice">The register of twice the place, 0 to 11.</param>
    public FretBits TurnedAbout(FretBits set, int twice) =>
        Reversed(set).Each((_, bits) => code.Binary(Op.Turn, bits, twice));

    /// <summary>Every place taken from fret 0.</summary>
    private FretBits Reversed(FretBits set)
    {
        var reversed = new FretBits();
        foreach (var (octave, bits) in set.Registers)
        {
            // A half fret above n comes to lie a half fret above -n - 1.
            var backwards = new Octave(-octave.Number, octave.IsHalf);
            var turned = code.Unary(Op.Reverse, bits);
            if (window is null)
            {
                Move(backwards, turned, octave.IsHalf ? -1 : 0, reversed);
            }
            else if (octave.IsHalf)
            {
                reversed.Add(Below(backwards), code.WithNumber(Op.Turn, turned, 11), code);
            }
            else
            {
                reversed.Add(backwards, Masked(turned, 1), code);
                reversed.Add(Below(backwards), Masked(turned, Twelve.All - 1), code);
            }
        }

        return reversed;
    }

    private void Move(Octave octave, int bits, int frets, FretBits to)
    {
        var (octaves, by) = (Modulo.Floor(frets, 12), Modulo.Of(frets, 12));
        var turned = by == 0 ? bits : code.WithNumber(Op.Turn, bits, by);
        var up = octave with { Number = octave.Number + octaves };
        if (window is null)
        {
            to.Add(octave, turned, code);
        }
        else if (by == 0)
        {
            to.Add(up, turned, code);
        }
        else
        {
            var carried = (1 << by) - 1;
            to.Add(up, Masked(turned, Twelve.All - carried), code);
            to.Add(up with { Number = up.Number + 1 }, Masked(turned, carried), code);
        }
    }

    private int Masked(int bits, int mask) => mask == Twelve.All ? bits : code.WithNumber(Op.And, bits, mask);

    /// <summary>The frets of an octave that lie in the window; of half frets those with a fret of the window on both sides.</summary>
    private int InWindow(int octave, int half) =>
        window is { } range
            ? Enumerable
                .Range(0, 12)
                .Where(fret => range.Contains(12 * octave + fret) && range.Contains(12 * octave + fret + half))
                .Sum(fret => 1 << fret)
            : Twelve.All;

    private static Octave Below(Octave octave) => octave with { Number = octave.Number - 1 };
}
