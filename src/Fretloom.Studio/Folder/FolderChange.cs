using System.Text.Json.Serialization;

namespace Fretloom.Studio.Folder;

/// <summary>A lesson file that has changed.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Tag">Its entity tag, without the quotation marks that headers put around it; null when it is gone.</param>
internal sealed record FolderChange(string Name, [property: JsonPropertyName("etag")] string? Tag);
