namespace Fretloom.Studio.Client.Write;

/// <summary>Whether a line stands in both texts, or in one.</summary>
public enum LineKind
{
    /// <summary>In both.</summary>
    Same,

    /// <summary>In the first alone.</summary>
    Gone,

    /// <summary>In the second alone.</summary>
    New,

    /// <summary>Lines that are the same and are left out; the text says how many.</summary>
    Left,
}

/// <summary>A line of a comparison.</summary>
public readonly record struct ComparedLine(LineKind Kind, string Text);

/// <summary>What is different between two texts, line by line.</summary>
public static class LineDifference
{
    // The table of four million pairs of lines takes sixteen megabytes; texts that differ in more are shown whole.
    private const long MostPairs = 4_000_000;

    /// <summary>Compares two texts: the fewest lines that must go and come to make the second of the first.</summary>
    /// <remarks>By the table of longest common subsequences (Wagner and Fischer, 1974, from memory), between what both begin and end with.</remarks>
    public static IReadOnlyList<ComparedLine> Between(string first, string second)
    {
        var (before, after) = (first.Split('\n'), second.Split('\n'));
        var most = Math.Min(before.Length, after.Length);
        var start = 0;
        while (start < most && before[start] == after[start])
        {
            start++;
        }

        var end = 0;
        while (end < most - start && before[^(end + 1)] == after[^(end + 1)])
        {
            end++;
        }

        return
        [
            .. before[..start].Select(line => new ComparedLine(LineKind.Same, line)),
            .. Middle(before[start..^end], after[start..^end]),
            .. before[^end..].Select(line => new ComparedLine(LineKind.Same, line)),
        ];
    }

    /// <summary>A comparison with at most so many equal lines beside what differs; the others are counted.</summary>
    public static IEnumerable<ComparedLine> Shortened(IReadOnlyList<ComparedLine> lines, int beside)
    {
        var left = 0;
        for (var at = 0; at < lines.Count; at++)
        {
            var isNear = Enumerable
                .Range(Math.Max(0, at - beside), Math.Min(lines.Count - 1, at + beside) - Math.Max(0, at - beside) + 1)
                .Any(near => lines[near].Kind != LineKind.Same);
            if (!isNear)
            {
                left++;
                continue;
            }

            if (left > 0)
            {
                yield return Left(left);
                left = 0;
            }

            yield return lines[at];
        }

        if (left > 0)
        {
            yield return Left(left);
        }
    }

    private static ComparedLine Left(int count) =>
        new(LineKind.Left, count.ToString(System.Globalization.CultureInfo.InvariantCulture));

    private static IEnumerable<ComparedLine> Middle(string[] before, string[] after)
    {
        if ((long)before.Length * after.Length > MostPairs)
        {
            return before
                .Select(line => new ComparedLine(LineKind.Gone, line))
                .Concat(after.Select(line => new ComparedLine(LineKind.New, line)));
        }

        // How many lines are common to what follows in each.
        var common = new int[before.Length + 1, after.Length + 1];
        for (var i = before.Length - 1; i >= 0; i--)
        {
            for (var j = after.Length - 1; j >= 0; j--)
            {
                common[i, j] =
                    before[i] == after[j] ? common[i + 1, j + 1] + 1 : Math.Max(common[i + 1, j], common[i, j + 1]);
            }
        }

        return Walk(before, after, common);
    }

    private static IEnumerable<ComparedLine> Walk(string[] before, string[] after, int[,] common)
    {
        var (i, j) = (0, 0);
        while (i < before.Length || j < after.Length)
        {
            if (i < before.Length && j < after.Length && before[i] == after[j])
            {
                yield return new(LineKind.Same, before[i]);
                (i, j) = (i + 1, j + 1);
            }
            else if (j == after.Length || (i < before.Length && common[i + 1, j] >= common[i, j + 1]))
            {
                yield return new(LineKind.Gone, before[i++]);
            }
            else
            {
                yield return new(LineKind.New, after[j++]);
            }
        }
    }
}
