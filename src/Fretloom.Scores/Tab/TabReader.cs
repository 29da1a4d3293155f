using System.Buffers;
using Fretloom.Neck;

namespace Fretloom.Scores.Tab;

/// <summary>Reads the spots of plain-text tablature back.</summary>
/// <remarks>
/// A system is a run of lines that have a bar line before their first dash or figure; its first line is string 1. Figures that begin in one column are
/// played together. All other lines are words.
/// </remarks>
public static class TabReader
{
    private static readonly SearchValues<char> Signs = SearchValues.Create("|-0123456789 \r");

    /// <summary>The chords and notes in order, each with the far string first.</summary>
    /// <param name="text">The tablature, with words around it or without.</param>
    /// <param name="instrument">What it is for: an open string is 0, also where it begins at a later fret.</param>
    /// <exception cref="FormatException">A fret has more than two figures, or a system does not have a line for each string.</exception>
    public static ValueList<ValueList<Spot>> Read(string text, Instrument instrument)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(instrument);
        var chords = new List<ValueList<Spot>>();
        var system = new List<string>();
        foreach (var line in text.Split('\n').Append(""))
        {
            if (IsString(line))
            {
                system.Add(line);
            }
            else
            {
                chords.AddRange(Chords(system, instrument));
                system.Clear();
            }
        }

        return chords.ToValueList();
    }

    private static bool IsString(string line)
    {
        var bar = line.IndexOf('|', StringComparison.Ordinal);
        return bar >= 0 && bar + 1 < line.Length && line.AsSpan(bar).IndexOfAnyExcept(Signs) < 0;
    }

    private static IEnumerable<ValueList<Spot>> Chords(List<string> system, Instrument instrument)
    {
        if (system.Count > 0 && system.Count != instrument.Strings.Count)
        {
            throw new FormatException(
                $"A system of {system.Count} lines is no tablature for {instrument.NameWithArticle}, which has {instrument.Strings.Count} strings."
            );
        }

        var width = system.Count == 0 ? 0 : system.Max(line => line.Length);
        for (var column = 0; column < width; column++)
        {
            var spots = new List<Spot>();
            for (var at = system.Count - 1; at >= 0; at--)
            {
                if (FretAt(system[at], column) is { } fret)
                {
                    var open = instrument.String(at + 1).StartsAtFret;
                    spots.Add(new Spot(at + 1, Math.Max(fret, open)));
                }
            }

            if (spots.Count > 0)
            {
                yield return spots.ToValueList();
            }
        }
    }

    private static int? FretAt(string line, int column)
    {
        var begins = line.IndexOf('|', StringComparison.Ordinal);
        if (
            column <= begins
            || column >= line.Length
            || !char.IsAsciiDigit(line[column])
            || char.IsAsciiDigit(line[column - 1])
        )
        {
            return null;
        }

        var length = 1;
        while (column + length < line.Length && char.IsAsciiDigit(line[column + length]))
        {
            length++;
        }

        return length <= 2
            ? int.Parse(line.AsSpan(column, length), System.Globalization.CultureInfo.InvariantCulture)
            : throw new FormatException($"'{line.Substring(column, length)}' is not a fret.");
    }
}
