using Fretloom.Pages.Pictures;

namespace Fretloom.Pages.Text;

/// <summary>A table as lines with its columns aligned.</summary>
internal static class Columns
{
    private const int Gap = 2;

    /// <summary>
    /// The lines, the header first, numbers to the right. A table wider than the page is told row by row instead, each
    /// cell after its column's name.
    /// </summary>
    public static IEnumerable<string> Lines(TextTable table, int width)
    {
        var widths = table
            .Header.Select((title, column) => table.Rows.Select(row => row[column].Length).Append(title.Length).Max())
            .ToList();
        return widths.Sum() + Gap * (widths.Count - 1) <= width
            ? table.Rows.Prepend(table.Header).Select(row => Line(row, widths))
            : table.Rows.SelectMany(row => Wrapping.Lines(Told(table.Header, row), width));
    }

    private static string Line(ValueList<string> row, List<int> widths) =>
        string.Join(new string(' ', Gap), row.Select((cell, column) => Padded(cell, widths[column]))).TrimEnd();

    private static string Padded(string cell, int width) =>
        cell.Length > 0 && cell.All(letter => char.IsAsciiDigit(letter) || letter == 'x')
            ? cell.PadLeft(width)
            : cell.PadRight(width);

    private static string Told(ValueList<string> header, ValueList<string> row) =>
        row[0]
        + ": "
        + string.Join(
            ", ",
            row.Zip(header).Skip(1).Where(cell => cell.First.Length > 0).Select(cell => $"{cell.Second} {cell.First}")
        );
}
