using System.Numerics;
using System.Runtime.Intrinsics;

namespace Fretloom.Claims.Checking.Blocks;

internal readonly struct And : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => a & b;

    public static ushort Of(ushort a, ushort b) => (ushort)(a & b);
}

internal readonly struct Or : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => a | b;

    public static ushort Of(ushort a, ushort b) => (ushort)(a | b);
}

/// <summary>What is in the first and not in the second.</summary>
internal readonly struct Without : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => Vector256.AndNot(a, b);

    public static ushort Of(ushort a, ushort b) => (ushort)(a & ~b);
}

internal readonly struct Add : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => a + b;

    public static ushort Of(ushort a, ushort b) => (ushort)(a + b);
}

internal readonly struct Subtract : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => a - b;

    public static ushort Of(ushort a, ushort b) => (ushort)(a - b);
}

/// <summary>The second less the first.</summary>
internal readonly struct SubtractFrom : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => b - a;

    public static ushort Of(ushort a, ushort b) => (ushort)(b - a);
}

internal readonly struct Least : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => Vector256.Min(a, b);

    public static ushort Of(ushort a, ushort b) => Math.Min(a, b);
}

internal readonly struct Most : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => Vector256.Max(a, b);

    public static ushort Of(ushort a, ushort b) => Math.Max(a, b);
}

/// <summary>All bits where equal, else none.</summary>
internal readonly struct AreEqual : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => Vector256.Equals(a, b);

    public static ushort Of(ushort a, ushort b) => a == b ? ushort.MaxValue : (ushort)0;
}

/// <summary>All bits where the first is greater, else none.</summary>
internal readonly struct IsAbove : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) => Vector256.GreaterThan(a, b);

    public static ushort Of(ushort a, ushort b) => a > b ? ushort.MaxValue : (ushort)0;
}

/// <summary>The remainder of a number up to 383 on division by twelve; the second number is not used.</summary>
internal readonly struct ModuloTwelve : ILaneOperation
{
    // 171/2048 is a little more than a twelfth; the quotient is exact up to 12 * 41.
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b) =>
        a - Vector256.ShiftRightLogical(a * (ushort)171, 11) * (ushort)12;

    public static ushort Of(ushort a, ushort b) => (ushort)(a % 12);
}

/// <summary>How many of twelve bits are set; the second number is not used.</summary>
internal readonly struct Members : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b)
    {
        var pairs = a - (Vector256.ShiftRightLogical(a, 1) & Vector256.Create((ushort)0x5555));
        var fours =
            (pairs & Vector256.Create((ushort)0x3333))
            + (Vector256.ShiftRightLogical(pairs, 2) & Vector256.Create((ushort)0x3333));
        var eights = (fours + Vector256.ShiftRightLogical(fours, 4)) & Vector256.Create((ushort)0x0F0F);
        return (eights + Vector256.ShiftRightLogical(eights, 8)) & Vector256.Create((ushort)0x1F);
    }

    public static ushort Of(ushort a, ushort b) => (ushort)BitOperations.PopCount(a);
}

/// <summary>Twelve bits turned upward by a number from 0 to 11.</summary>
internal readonly struct Turn : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b)
    {
        var turned = a;
        for (var bit = 0; bit < 4; bit++)
        {
            var by = 1 << bit;
            var further =
                (Vector256.ShiftLeft(turned, by) | Vector256.ShiftRightLogical(turned, 12 - by))
                & Vector256.Create((ushort)Twelve.All);
            var isAsked = Vector256.Equals(b & Vector256.Create((ushort)by), Vector256.Create((ushort)by));
            turned = Vector256.ConditionalSelect(isAsked, further, turned);
        }

        return turned;
    }

    public static ushort Of(ushort a, ushort b) => (ushort)Twelve.Turned(a, b);
}

/// <summary>Twelve bits, each taken from 12; the second number is not used.</summary>
internal readonly struct Reverse : ILaneOperation
{
    public static Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b)
    {
        // Sixteen bits swapped by ones, twos, fours and eights; bit n of twelve comes to 11 - n, and one step up to 12 - n.
        var swapped = Swapped(Swapped(Swapped(Swapped(a, 1, 0x5555), 2, 0x3333), 4, 0x0F0F), 8, 0x00FF);
        var reversed = Vector256.ShiftRightLogical(swapped, 4);
        return (Vector256.ShiftLeft(reversed, 1) | Vector256.ShiftRightLogical(reversed, 11))
            & Vector256.Create((ushort)Twelve.All);
    }

    public static ushort Of(ushort a, ushort b) => (ushort)Twelve.Reversed(a, 0);

    private static Vector256<ushort> Swapped(Vector256<ushort> a, int by, ushort mask)
    {
        var low = Vector256.Create(mask);
        return (Vector256.ShiftRightLogical(a, by) & low) | Vector256.ShiftLeft(a & low, by);
    }
}
