namespace Fretloom.Shapes;

/// <summary>Orders shapes by their spots, far string first: the string farther from the floor, then the lower fret, comes first.</summary>
internal sealed class FretOrder : IComparer<Shape>
{
    public static FretOrder Instance { get; } = new();

    public int Compare(Shape? x, Shape? y)
    {
        ArgumentNullException.ThrowIfNull(x);
        ArgumentNullException.ThrowIfNull(y);
        for (var at = 0; at < Math.Min(x.Notes.Count, y.Notes.Count); at++)
        {
            var (one, other) = (x.Notes[at].Spot, y.Notes[at].Spot);
            if (one != other)
            {
                return one.String == other.String ? one.Fret - other.Fret : other.String - one.String;
            }
        }

        return x.Notes.Count - y.Notes.Count;
    }
}
