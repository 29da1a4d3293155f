namespace Fretloom.Claims.Checking.Blocks;

/// <summary>What an instruction does.</summary>
internal enum Op
{
    /// <summary>Nothing: the register holds what a string sounds when open.</summary>
    Open,

    /// <summary>A number for each key in every lane.</summary>
    Number,

    LookUp,
    And,
    Or,
    Without,
    Add,
    Subtract,
    SubtractFrom,
    Least,
    Most,
    AreEqual,
    IsAbove,
    ModuloTwelve,
    Members,
    Turn,
    Reverse,
}

/// <summary>Fills a register from others. Registers are numbered as the instructions that fill them.</summary>
/// <param name="Op">How.</param>
/// <param name="A">The first register; -1 for none.</param>
/// <param name="B">The second; -1 when a number stands in its place, or nothing.</param>
/// <param name="Data">Numbers for each key, or tables of sixteen for each key, one after another; empty for none.</param>
internal readonly record struct Instruction(Op Op, int A, int B, ValueList<ushort> Data);
