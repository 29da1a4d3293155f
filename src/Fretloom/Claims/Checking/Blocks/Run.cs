using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>A claim's program for string sets of one layout.</summary>
internal sealed class Program
{
    private Program(Code code, Answer answer, StringLayout layout)
    {
        (Code, Answer) = (code, answer);
        Opens = [.. code.Opens.Select(open => (open.Number, open.Register, layout.All.Numbers.IndexOf(open.Number)))];
        Strings = layout.All.Count;
    }

    public Code Code { get; }

    public Answer Answer { get; }

    /// <summary>How many strings there are.</summary>
    public int Strings { get; }

    /// <summary>The strings that are read, the register of each, and their indexes, the farthest first.</summary>
    public ValueList<(int Number, int Register, int At)> Opens { get; }

    public static Program Of(Claim claim, ValueList<Key> keys, StringLayout layout, FretRange? window)
    {
        var (code, answer) = ClaimCompiler.Compile(claim, keys, layout, window);
        return new Program(code, answer, layout);
    }
}

/// <summary>Some string sets of one layout.</summary>
/// <param name="Program">What is run.</param>
/// <param name="First">The first tuning.</param>
/// <param name="Count">How many.</param>
/// <param name="Named">Indexes of named string sets; null for tunings that follow each other.</param>
internal sealed record Run(Program Program, int First, int Count, ValueList<int>? Named)
{
    /// <summary>The index of a string set, by its place in the run.</summary>
    public int PlaceOf(int at) => Named is { } named ? named[at] : First + at;

    /// <summary>Writes what the strings sound when open into the registers of a machine.</summary>
    /// <param name="places">The string sets.</param>
    /// <param name="machine">The machine.</param>
    /// <param name="from">The first one, by its place in the run.</param>
    /// <param name="count">How many; the other lanes are left as they are.</param>
    public void Fill(PlaceList places, Machine machine, int from, int count)
    {
        if (Named is { } named)
        {
            foreach (var (number, register, _) in Program.Opens)
            {
                var lanes = machine.Register(register);
                for (var lane = 0; lane < count; lane++)
                {
                    lanes[lane] = (ushort)places[named[from + lane]].OpenOf(number);
                }
            }

            return;
        }

        Span<ushort> opens = stackalloc ushort[Program.Strings * Lanes.Count];
        places.WriteOpens(First + from, count, opens, Lanes.Count);
        foreach (var (_, register, at) in Program.Opens.AsSpan())
        {
            opens.Slice(at * Lanes.Count, Lanes.Count).CopyTo(machine.Register(register));
        }
    }
}
