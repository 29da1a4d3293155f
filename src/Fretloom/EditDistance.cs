namespace Fretloom;

/// <summary>How far one word is from another, for suggestions after a misspelling.</summary>
public static class EditDistance
{
    /// <summary>
    /// The fewest letters to insert, leave out, replace, or swap with their neighbour that turn one word into the other, no
    /// letter being touched twice (the optimal string alignment distance; common practice, no source).
    /// </summary>
    public static int Between(ReadOnlySpan<char> one, ReadOnlySpan<char> other)
    {
        var distance = new int[one.Length + 1, other.Length + 1];
        for (var i = 0; i <= one.Length; i++)
        {
            for (var j = 0; j <= other.Length; j++)
            {
                distance[i, j] = (i, j) switch
                {
                    (_, 0) => i,
                    (0, _) => j,
                    _ => Math.Min(
                        distance[i - 1, j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1),
                        1 + Math.Min(distance[i - 1, j], distance[i, j - 1])
                    ),
                };
                if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                {
                    distance[i, j] = Math.Min(distance[i, j], distance[i - 2, j - 2] + 1);
                }
            }
        }

        return distance[one.Length, other.Length];
    }

    /// <summary>How far a suggestion may be from what was written: 1 for short words, 2 from six letters on.</summary>
    public static int Tolerated(int length) => length < 6 ? 1 : 2;
}
