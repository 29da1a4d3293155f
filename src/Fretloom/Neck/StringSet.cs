using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Fretloom.Neck;

/// <summary>The strings looked at, from the one farthest from the floor to the one nearest it: 4, 3, 2, 1.</summary>
/// <remarks>Text: <c>4-1</c> for a run, else a list, <c>6, 4, 3 and 2</c>. The <c>default</c> is empty and fits no instrument.</remarks>
public readonly record struct StringSet
{
    /// <summary>Makes a set from string numbers in any order.</summary>
    /// <exception cref="ArgumentException">A number is outside 1 to 99, stands twice, or there is none.</exception>
    public StringSet(IEnumerable<int> numbers)
    {
        Numbers = numbers.OrderDescending().ToValueList();
        if (Numbers.Count == 0 || Numbers[0] > 99 || Numbers[^1] < 1 || Numbers.Distinct().Count() != Numbers.Count)
        {
            throw new ArgumentException(
                "A string set holds at least one string, each number from 1 to 99 once.",
                nameof(numbers)
            );
        }
    }

    /// <summary>String numbers, descending: the string farthest from the floor first.</summary>
    public ValueList<int> Numbers { get; }

    /// <summary>How many strings.</summary>
    public int Count => Numbers.Count;

    /// <summary>Whether the strings follow each other without a gap.</summary>
    public bool IsRun => Count > 0 && Numbers[0] - Numbers[^1] == Count - 1;

    /// <summary>All the strings from one down to another, such as 4 down to 1.</summary>
    /// <exception cref="ArgumentException">The numbers do not descend, or are outside 1 to 99.</exception>
    public static StringSet Run(int farthest, int nearest) =>
        new(farthest <= 99 ? Enumerable.Range(nearest, Math.Max(0, farthest - nearest + 1)) : []);

    /// <summary>Every run of neighbours of the set of a given size, from the far side on: of 6-1, size 4: 6-3, 5-2, 4-1.</summary>
    public IEnumerable<StringSet> Neighbours(int size)
    {
        for (var start = 0; start + size <= Count && size > 0; start++)
        {
            yield return new StringSet(Numbers.Skip(start).Take(size));
        }
    }

    /// <summary>Reads <c>4-1</c>, or a list with commas or <c>and</c>, in any order.</summary>
    /// <exception cref="FormatException">The text is not a string set.</exception>
    public static StringSet Parse(string text) =>
        TryParse(text, out var set) ? set : throw new FormatException($"'{text}' is not a string set such as 4-1.");

    /// <summary>Reads a string set if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, out StringSet set)
    {
        set = default;
        var ends = (text ?? "").Split('-', StringSplitOptions.TrimEntries);
        var words =
            ends.Length == 2
                ? ends
                : (text ?? "")
                    .Replace(", and ", ",", StringComparison.Ordinal)
                    .Replace(" and ", ",", StringComparison.Ordinal)
                    .Split(',', StringSplitOptions.TrimEntries);
        var numbers = new List<int>();
        foreach (var word in words)
        {
            if (
                !int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
                || number is < 1 or > 99
                || numbers.Contains(number)
            )
            {
                return false;
            }

            numbers.Add(number);
        }

        if (ends.Length == 2 && numbers[0] < numbers[1])
        {
            return false;
        }

        set = ends.Length == 2 ? Run(numbers[0], numbers[1]) : new StringSet(numbers);
        return true;
    }

    /// <summary>A run as <c>4-1</c>; one string as <c>4</c>; others as <c>6, 4, 3 and 2</c>.</summary>
    public override string ToString()
    {
        var words = Numbers.Select(number => number.ToString(CultureInfo.InvariantCulture)).ToArray();
        return words.Length switch
        {
            0 => "",
            1 => words[0],
            _ when IsRun => $"{words[0]}-{words[^1]}",
            _ => $"{string.Join(", ", words[..^1])} and {words[^1]}",
        };
    }
}
