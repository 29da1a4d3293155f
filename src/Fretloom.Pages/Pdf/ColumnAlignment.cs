namespace Fretloom.Pages.Pdf;

/// <summary>Where the cells of a table's column stand.</summary>
public enum ColumnAlignment
{
    /// <summary>At the left edge.</summary>
    Left,

    /// <summary>In the middle.</summary>
    Centre,

    /// <summary>At the right edge.</summary>
    Right,
}
