using Fretloom.Claims.Checking.Blocks;

namespace Fretloom.Tests.Claims;

/// <summary>Every operation on lanes gives the same side by side, in the processor's vectors, as number by number.</summary>
public class LanesTests
{
    private const int TwelveBits = 0x1000;
    private static readonly int[] Odd = [0, 1, 2, 11, 12, 13, 255, 256, 383, 4095, 4096, 32767, 32768, 65534, 65535];

    [Fact]
    public void Operations_on_any_two_numbers()
    {
        var second = Odd.Concat(Enumerable.Range(0, 60).Select(at => at * 1091 % 65536)).ToArray();
        Sweep<And>(65536, second);
        Sweep<Or>(65536, second);
        Sweep<Without>(65536, second);
        Sweep<Add>(65536, second);
        Sweep<Subtract>(65536, second);
        Sweep<SubtractFrom>(65536, second);
        Sweep<Least>(65536, second);
        Sweep<Most>(65536, second);
        Sweep<AreEqual>(65536, second);
        Sweep<IsAbove>(65536, second);
    }

    [Fact]
    public void Operations_on_twelve_bits_and_on_small_numbers()
    {
        Sweep<Turn>(TwelveBits, [.. Enumerable.Range(0, 12)]);
        Sweep<Reverse>(TwelveBits, [0]);
        Sweep<Members>(TwelveBits, [0]);
        Sweep<ModuloTwelve>(384, [0]);
    }

    [Fact]
    public void Numbers_are_looked_up()
    {
        var table = Enumerable.Range(0, 16).Select(at => (ushort)(at * 4001)).ToArray();
        var at = Enumerable.Range(0, Lanes.Count).Select(lane => (ushort)(lane * 7 % 16)).ToArray();
        var (vectors, numbers) = (new ushort[Lanes.Count], new ushort[Lanes.Count]);
        Lanes.LookUp(table, at, vectors, inVectors: true);
        Lanes.LookUp(table, at, numbers, inVectors: false);
        Assert.Equal(numbers, vectors);
    }

    /// <summary>Every first number below an end with each of some second ones, as a register and as one number for all lanes.</summary>
    private static void Sweep<TOperation>(int end, int[] second)
        where TOperation : struct, ILaneOperation
    {
        var (a, b) = (new ushort[Lanes.Count], new ushort[Lanes.Count]);
        var (vectors, numbers, all) = (new ushort[Lanes.Count], new ushort[Lanes.Count], new ushort[Lanes.Count]);
        foreach (var number in second)
        {
            b.AsSpan().Fill((ushort)number);
            for (var first = 0; first < end; first += Lanes.Count)
            {
                for (var lane = 0; lane < Lanes.Count; lane++)
                {
                    a[lane] = (ushort)Math.Min(first + lane, end - 1);
                }

                Lanes.Run<TOperation>(a, b, vectors, inVectors: true);
                Lanes.Run<TOperation>(a, b, numbers, inVectors: false);
                Lanes.Run<TOperation>(a, (ushort)number, all, inVectors: true);
                Assert.True(vectors.AsSpan().SequenceEqual(numbers), $"{typeof(TOperation).Name} with {number}");
                Assert.True(all.AsSpan().SequenceEqual(numbers), $"{typeof(TOperation).Name} with {number} for all");
            }
        }
    }
}
