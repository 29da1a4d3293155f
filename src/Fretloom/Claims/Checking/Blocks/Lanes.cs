using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>An operation on two numbers, lane by lane or one by one, with equal answers.</summary>
internal interface ILaneOperation
{
    static abstract Vector256<ushort> Of(Vector256<ushort> a, Vector256<ushort> b);

    static abstract ushort Of(ushort a, ushort b);
}

/// <summary>Runs operations over the lanes of a block.</summary>
internal static class Lanes
{
    /// <summary>How many string sets lie side by side.</summary>
    public const int Count = 256;

    private static readonly int Width = Vector256<ushort>.Count;

    public static void Run<TOperation>(ReadOnlySpan<ushort> a, ReadOnlySpan<ushort> b, Span<ushort> to, bool inVectors)
        where TOperation : struct, ILaneOperation
    {
        if (!inVectors)
        {
            for (var lane = 0; lane < Count; lane++)
            {
                to[lane] = TOperation.Of(a[lane], b[lane]);
            }

            return;
        }

        ref var first = ref MemoryMarshal.GetReference(a);
        ref var second = ref MemoryMarshal.GetReference(b);
        ref var result = ref MemoryMarshal.GetReference(to);
        for (nuint lane = 0; lane < Count; lane += (nuint)Width)
        {
            TOperation
                .Of(Vector256.LoadUnsafe(ref first, lane), Vector256.LoadUnsafe(ref second, lane))
                .StoreUnsafe(ref result, lane);
        }
    }

    /// <summary>With the same second number in every lane.</summary>
    public static void Run<TOperation>(ReadOnlySpan<ushort> a, ushort b, Span<ushort> to, bool inVectors)
        where TOperation : struct, ILaneOperation
    {
        if (!inVectors)
        {
            for (var lane = 0; lane < Count; lane++)
            {
                to[lane] = TOperation.Of(a[lane], b);
            }

            return;
        }

        var second = Vector256.Create(b);
        ref var first = ref MemoryMarshal.GetReference(a);
        ref var result = ref MemoryMarshal.GetReference(to);
        for (nuint lane = 0; lane < Count; lane += (nuint)Width)
        {
            TOperation.Of(Vector256.LoadUnsafe(ref first, lane), second).StoreUnsafe(ref result, lane);
        }
    }

    /// <summary>Takes from a table of sixteen what each lane counts to, 0 to 15.</summary>
    public static void LookUp(ReadOnlySpan<ushort> table, ReadOnlySpan<ushort> at, Span<ushort> to, bool inVectors)
    {
        if (!inVectors)
        {
            for (var lane = 0; lane < Count; lane++)
            {
                to[lane] = table[at[lane]];
            }

            return;
        }

        var all = Vector256.Create(table);
        ref var index = ref MemoryMarshal.GetReference(at);
        ref var result = ref MemoryMarshal.GetReference(to);
        for (nuint lane = 0; lane < Count; lane += (nuint)Width)
        {
            Vector256.ShuffleNative(all, Vector256.LoadUnsafe(ref index, lane)).StoreUnsafe(ref result, lane);
        }
    }

    /// <summary>How many of the first lanes are set.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static int CountSet(ReadOnlySpan<ushort> lanes)
    {
        var count = 0;
        var lane = 0;
        for (; lane + Width <= lanes.Length; lane += Width)
        {
            count += System.Numerics.BitOperations.PopCount(
                Vector256.Create(lanes.Slice(lane, Width)).ExtractMostSignificantBits()
            );
        }

        for (; lane < lanes.Length; lane++)
        {
            count += lanes[lane] >> 15;
        }

        return count;
    }
}
