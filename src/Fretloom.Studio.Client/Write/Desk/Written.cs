namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>What stands in the editor.</summary>
/// <param name="Text">The text.</param>
/// <param name="Cursor">Where the cursor stands, counted in UTF-16 units from 0; null while it was never put anywhere.</param>
public sealed record Written(string Text, int? Cursor);
