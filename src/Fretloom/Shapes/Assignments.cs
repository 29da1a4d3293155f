namespace Fretloom.Shapes;

/// <summary>Walks through every way to take one item from each of several lists.</summary>
internal static class Assignments
{
    /// <summary>Every row that takes one item of each list, in the order of the lists, the last list varying fastest.</summary>
    /// <param name="choices">What may stand in each place.</param>
    /// <param name="isPossible">Whether rows that begin like this are wanted; asked for every beginning and for whole rows.</param>
    public static List<ValueList<T>> OneOfEach<T>(
        IReadOnlyList<IReadOnlyList<T>> choices,
        Func<ReadOnlySpan<T>, bool> isPossible
    )
    {
        var rows = new List<ValueList<T>>();
        Extend(new T[choices.Count], 0);
        return rows;

        void Extend(T[] row, int length)
        {
            if (length == row.Length)
            {
                rows.Add(ValueList.Create<T>(row));
                return;
            }

            foreach (var item in choices[length])
            {
                row[length] = item;
                if (isPossible(row.AsSpan(0, length + 1)))
                {
                    Extend(row, length + 1);
                }
            }
        }
    }
}
