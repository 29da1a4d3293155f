namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Twelve places in a row: the whole frets of an octave of the neck, or those half a fret higher.</summary>
/// <param name="Number">Octave 0 begins at fret 0; there is no other on the endless neck. Frets moved below the nut lie in octave -1.</param>
/// <param name="IsHalf">Whether they lie half a fret higher.</param>
internal readonly record struct Octave(int Number, bool IsHalf);

/// <summary>The registers of a set of frets: for each octave in which there can be any, twelve bits.</summary>
internal sealed class FretBits
{
    private readonly Dictionary<Octave, int> _registers = [];

    public IReadOnlyDictionary<Octave, int> Registers => _registers;

    public bool HasHalves => _registers.Keys.Any(octave => octave.IsHalf);

    /// <summary>The register of an octave; null where there can be no fret of the set.</summary>
    public int? this[Octave octave] => _registers.TryGetValue(octave, out var register) ? register : null;

    /// <summary>Takes a register in, together with what is known of the octave already.</summary>
    public void Add(Octave octave, int register, Code code) =>
        _registers[octave] = this[octave] is { } known ? code.Binary(Op.Or, known, register) : register;

    /// <summary>Another set, octave by octave; an octave for which nothing is given is left out.</summary>
    public FretBits Each(Func<Octave, int, int?> register)
    {
        var others = new FretBits();
        foreach (var (octave, mine) in _registers)
        {
            if (register(octave, mine) is { } other)
            {
                others._registers.Add(octave, other);
            }
        }

        return others;
    }
}
