namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>The file changed on the disk while something else was written here, or is gone.</summary>
/// <param name="Theirs">What is on the disk, as the editor would show it; null when the file is gone.</param>
/// <param name="ETag">What is on the disk; null when the file is gone.</param>
/// <param name="IsDraft">Whether what is written here is a draft that was left behind.</param>
public sealed record Clash(string? Theirs, string? ETag, bool IsDraft = false)
{
    /// <summary>The file is gone: it is put back, or the lesson is let go.</summary>
    public static Clash Gone { get; } = new(null, null);

    /// <summary>Whether there is a choice because the file is gone.</summary>
    public bool IsGone => Theirs is null && !IsDraft;
}
