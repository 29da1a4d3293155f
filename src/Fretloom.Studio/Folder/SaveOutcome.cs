namespace Fretloom.Studio.Folder;

/// <summary>What came of saving a lesson.</summary>
/// <param name="IsSaved">Whether the file holds the new content; else it is as it was.</param>
/// <param name="Tag">The entity tag of what is there now; null when there is no file.</param>
internal sealed record SaveOutcome(bool IsSaved, string? Tag);
