using Fretloom.Neck;

namespace Fretloom.Shapes;

/// <summary>Orders rows of spots by their first difference: by string, one way or the other, then by fret.</summary>
internal sealed class SpotOrder : IComparer<IReadOnlyList<Spot>>
{
    private readonly int _sign;

    private SpotOrder(int sign) => _sign = sign;

    /// <summary>String 1 before string 2; on one string the lower fret.</summary>
    public static SpotOrder NearestTheFloorFirst { get; } = new(1);

    /// <summary>String 2 before string 1; on one string the lower fret.</summary>
    public static SpotOrder FarthestFromTheFloorFirst { get; } = new(-1);

    public int Compare(IReadOnlyList<Spot>? x, IReadOnlyList<Spot>? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        for (var at = 0; at < Math.Min(x.Count, y.Count); at++)
        {
            if (x[at] != y[at])
            {
                return x[at].String == y[at].String ? x[at].Fret - y[at].Fret : _sign * (x[at].String - y[at].String);
            }
        }

        return x.Count - y.Count;
    }
}
