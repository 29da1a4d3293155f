namespace Fretloom.Claims.Checking.Blocks;

/// <summary>Gathers instructions; what was asked for before is not worked out twice.</summary>
/// <param name="keys">For how many keys.</param>
internal sealed class Code(int keys)
{
    private const int TableSize = 16;

    private readonly List<Instruction> _instructions = [];
    private readonly List<bool> _isKeyed = [];
    private readonly Dictionary<Instruction, int> _known = [];

    public IReadOnlyList<Instruction> Instructions => _instructions;

    /// <summary>The strings that are read, and the register of each.</summary>
    public IEnumerable<(int Number, int Register)> Opens =>
        _instructions.Index().Where(each => each.Item.Op == Op.Open).Select(each => (each.Item.A, each.Index));

    /// <summary>Whether a register differs from key to key.</summary>
    public bool IsKeyed(int register) => _isKeyed[register];

    /// <summary>What string number n sounds when open.</summary>
    public int Open(int number) => Register(new Instruction(Op.Open, number, -1, []), isKeyed: false);

    public int Number(Func<int, int> ofKey) => WithData(Op.Number, -1, ofKey);

    public int Number(int number) => Number(_ => number);

    public int Binary(Op op, int a, int b) => Register(new Instruction(op, a, b, []), _isKeyed[a] || _isKeyed[b]);

    public int Unary(Op op, int a) => Register(new Instruction(op, a, -1, []), _isKeyed[a]);

    /// <summary>With a number for each key in the place of the second register.</summary>
    public int WithNumber(Op op, int a, Func<int, int> ofKey) => WithData(op, a, ofKey);

    /// <summary>The same number in every key.</summary>
    public int WithNumber(Op op, int a, int number) => WithData(op, a, _ => number);

    /// <summary>Looks a number from 0 to 11 up.</summary>
    /// <param name="at">The register that holds it.</param>
    /// <param name="ofKey">What is found, by key and number.</param>
    public int LookUp(int at, Func<int, int, int> ofKey)
    {
        var tables = new ushort[keys * TableSize];
        for (var cell = 0; cell < tables.Length; cell++)
        {
            var number = cell % TableSize;
            tables[cell] = number < 12 ? (ushort)ofKey(cell / TableSize, number) : (ushort)0;
        }

        var first = tables[..TableSize];
        var differs = !Enumerable
            .Range(0, keys)
            .All(key => tables.AsSpan(key * TableSize, TableSize).SequenceEqual(first));
        return Register(
            new Instruction(Op.LookUp, at, -1, ValueList.Create<ushort>(differs ? tables : first)),
            differs || _isKeyed[at]
        );
    }

    private int WithData(Op op, int a, Func<int, int> ofKey)
    {
        var numbers = Enumerable.Range(0, keys).Select(key => unchecked((ushort)ofKey(key))).ToArray();
        var differs = numbers.Distinct().Count() > 1;
        return Register(
            new Instruction(op, a, -1, ValueList.Create<ushort>(differs ? numbers : numbers[..1])),
            differs || (a >= 0 && _isKeyed[a])
        );
    }

    private int Register(Instruction instruction, bool isKeyed)
    {
        if (_known.TryGetValue(instruction, out var register))
        {
            return register;
        }

        _instructions.Add(instruction);
        _isKeyed.Add(isKeyed);
        _known.Add(instruction, _instructions.Count - 1);
        return _instructions.Count - 1;
    }
}
