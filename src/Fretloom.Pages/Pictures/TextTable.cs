namespace Fretloom.Pages.Pictures;

/// <summary>What a picture holds, as a table for those who do not see it.</summary>
/// <param name="Header">The first row; its first cell heads the row names.</param>
/// <param name="Rows">As long as the header; the first cell of each is its name.</param>
public sealed record TextTable(ValueList<string> Header, ValueList<ValueList<string>> Rows);
