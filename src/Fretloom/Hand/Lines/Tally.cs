namespace Fretloom.Hand.Lines;

/// <summary>Costs by term in whole thousandths, so that sums are exact and ties are ties.</summary>
internal sealed class Tally
{
    /// <summary>More than any line costs, and small enough that two of them still fit an integer.</summary>
    public const int Forbidden = 1 << 29;

    private readonly int[] _terms = new int[Enum.GetValues<LineTerm>().Length];

    /// <summary>The sum of the terms; <see cref="Forbidden"/> when something cannot be done.</summary>
    public int Total { get; private set; }

    /// <summary>What a term has cost.</summary>
    public int this[LineTerm term] => _terms[(int)term];

    /// <summary>Adds a cost, rounded to thousandths.</summary>
    public void Add(LineTerm term, double cost)
    {
        var thousandths = (int)Math.Round(cost * 1000);
        _terms[(int)term] += thousandths;
        Total = Math.Min(Forbidden, Total + thousandths);
    }

    /// <summary>Says that it cannot be done.</summary>
    public void Forbid() => Total = Forbidden;

    /// <summary>Begins anew.</summary>
    public void Clear()
    {
        Array.Clear(_terms);
        Total = 0;
    }
}
