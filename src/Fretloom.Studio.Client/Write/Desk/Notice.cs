namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Something to be told once.</summary>
/// <param name="Label">The key of the words.</param>
/// <param name="Detail">What belongs in their braces; empty for nothing.</param>
public sealed record Notice(string Label, string Detail = "");
