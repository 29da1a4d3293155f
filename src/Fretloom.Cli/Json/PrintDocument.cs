namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom print --json</c> prints.</summary>
/// <param name="Sentence">The sentence in full, as the program understood it.</param>
/// <param name="Title">The heading of the sheet.</param>
/// <param name="Files">The file that was written.</param>
internal sealed record PrintDocument(string Sentence, string Title, IReadOnlyList<FileDocument> Files);
