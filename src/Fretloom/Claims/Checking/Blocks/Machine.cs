using System.Runtime.Intrinsics;

namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Runs instructions over blocks of string sets. Each thread has its own.</summary>
internal sealed class Machine
{
    private const int TableSize = 16;

    private readonly Instruction[] _instructions;
    private readonly int[] _once;
    private readonly int[] _ofEachKey;
    private readonly ushort[] _registers;
    private readonly bool _inVectors;

    /// <summary>Makes a machine.</summary>
    /// <param name="code">What it runs.</param>
    /// <param name="inVectors">Whether lanes are worked out side by side, where the processor can.</param>
    public Machine(Code code, bool inVectors)
    {
        _instructions = [.. code.Instructions];
        var all = Enumerable.Range(0, _instructions.Length).Where(at => _instructions[at].Op != Op.Open).ToList();
        _once = [.. all.Where(at => !code.IsKeyed(at))];
        _ofEachKey = [.. all.Where(code.IsKeyed)];
        _registers = new ushort[_instructions.Length * Lanes.Count];
        _inVectors = inVectors && Vector256.IsHardwareAccelerated;
    }

    /// <summary>The lanes of a register.</summary>
    public Span<ushort> Register(int register) => _registers.AsSpan(register * Lanes.Count, Lanes.Count);

    /// <summary>Works out what is the same in every key, once a block, after the open strings were filled in.</summary>
    public void Begin()
    {
        foreach (var at in _once)
        {
            Run(at, 0);
        }
    }

    /// <summary>Works out the rest for a key.</summary>
    public void RunKey(int key)
    {
        foreach (var at in _ofEachKey)
        {
            Run(at, key);
        }
    }

    private void Run(int at, int key)
    {
        ref readonly var instruction = ref _instructions[at];
        var to = Register(at);
        var data = instruction.Data.AsSpan();
        switch (instruction.Op)
        {
            case Op.Number:
                to.Fill(data[data.Length == 1 ? 0 : key]);
                return;
            case Op.LookUp:
                var start = data.Length == TableSize ? 0 : key * TableSize;
                Lanes.LookUp(data.Slice(start, TableSize), Register(instruction.A), to, _inVectors);
                return;
        }

        var a = Register(instruction.A);
        if (instruction.B >= 0)
        {
            RunBinary(instruction.Op, a, Register(instruction.B), to);
        }
        else
        {
            RunWithNumber(instruction.Op, a, data.Length == 0 ? (ushort)0 : data[data.Length == 1 ? 0 : key], to);
        }
    }

    private void RunBinary(Op op, ReadOnlySpan<ushort> a, ReadOnlySpan<ushort> b, Span<ushort> to)
    {
        switch (op)
        {
            case Op.And:
                Lanes.Run<And>(a, b, to, _inVectors);
                break;
            case Op.Or:
                Lanes.Run<Or>(a, b, to, _inVectors);
                break;
            case Op.Without:
                Lanes.Run<Without>(a, b, to, _inVectors);
                break;
            case Op.Add:
                Lanes.Run<Add>(a, b, to, _inVectors);
                break;
            case Op.Subtract:
                Lanes.Run<Subtract>(a, b, to, _inVectors);
                break;
            case Op.Least:
                Lanes.Run<Least>(a, b, to, _inVectors);
                break;
            case Op.Most:
                Lanes.Run<Most>(a, b, to, _inVectors);
                break;
            case Op.AreEqual:
                Lanes.Run<AreEqual>(a, b, to, _inVectors);
                break;
            case Op.IsAbove:
                Lanes.Run<IsAbove>(a, b, to, _inVectors);
                break;
            case Op.Turn:
                Lanes.Run<Turn>(a, b, to, _inVectors);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(op), op, "Not an operation on two registers.");
        }
    }

    private void RunWithNumber(Op op, ReadOnlySpan<ushort> a, ushort number, Span<ushort> to)
    {
        switch (op)
        {
            case Op.And:
                Lanes.Run<And>(a, number, to, _inVectors);
                break;
            case Op.Without:
                Lanes.Run<Without>(a, number, to, _inVectors);
                break;
            case Op.Add:
                Lanes.Run<Add>(a, number, to, _inVectors);
                break;
            case Op.SubtractFrom:
                Lanes.Run<SubtractFrom>(a, number, to, _inVectors);
                break;
            case Op.AreEqual:
                Lanes.Run<AreEqual>(a, number, to, _inVectors);
                break;
            case Op.IsAbove:
                Lanes.Run<IsAbove>(a, number, to, _inVectors);
                break;
            case Op.Turn:
                Lanes.Run<Turn>(a, number, to, _inVectors);
                break;
            case Op.ModuloTwelve:
                Lanes.Run<ModuloTwelve>(a, 0, to, _inVectors);
                break;
            case Op.Members:
                Lanes.Run<Members>(a, 0, to, _inVectors);
                break;
            case Op.Reverse:
                Lanes.Run<Reverse>(a, 0, to, _inVectors);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(op), op, "Not an operation on a register and a number.");
        }
    }
}
