namespace Fretloom.Studio.Folder;

/// <summary>A lesson in the list of lessons.</summary>
/// <param name="Name">The name of its file.</param>
/// <param name="Title">The title it gives itself.</param>
/// <param name="Changed">When the file was last changed, in universal time.</param>
internal sealed record ListedLesson(string Name, string Title, DateTime Changed);
