using System.Globalization;
using Fretloom.Testing;

namespace Fretloom.Tests;

/// <summary>A check table of the folder Data: rows of cells, found by the name of their column.</summary>
internal static class Table
{
    /// <summary>The rows below the heading. Lines that begin with # are remarks; a quoted cell may hold commas.</summary>
    public static List<Dictionary<string, string>> Read(string file)
    {
        var lines = File.ReadAllLines(Repository.PathTo("tests", "Fretloom.Tests", "Data", file))
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(Cells)
            .ToList();
        return lines
            .Skip(1)
            .Select(cells => lines[0].Zip(cells).ToDictionary(cell => cell.First, cell => cell.Second))
            .ToList();
    }

    public static double Number(this Dictionary<string, string> row, string column) =>
        double.Parse(row[column], CultureInfo.InvariantCulture);

    public static List<int> Integers(this Dictionary<string, string> row, string column, char separator = ' ') =>
        row[column].Split(separator).Select(text => int.Parse(text, CultureInfo.InvariantCulture)).ToList();

    private static string[] Cells(string line)
    {
        var isQuoted = false;
        var cells = new List<string> { "" };
        foreach (var letter in line)
        {
            if (letter == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (letter == ',' && !isQuoted)
            {
                cells.Add("");
            }
            else
            {
                cells[^1] += letter;
            }
        }

        return [.. cells];
    }
}
