namespace Fretloom.Studio.Client.Write;

/// <summary>The file changed on the disk while something else was written here.</summary>
/// <param name="Theirs">What is on the disk, as the editor would show it; null when the file is gone.</param>
/// <param name="ETag">What is on the disk; null when the file is gone.</param>
/// <param name="IsDraft">Whether what is written here is a draft that was left behind.</param>
public sealed record Clash(string? Theirs, string? ETag, bool IsDraft = false)
{
    /// <summary>Whether there is a choice because the file is gone.</summary>
    public bool IsGone => Theirs is null && !IsDraft;

    /// <summary>What was on the disk before the file was gone; null when nobody knows, or it is not.</summary>
    public string? Before { get; private init; }

    /// <summary>The file is gone.</summary>
    /// <param name="before">What it said; null when nobody knows.</param>
    public static Clash Gone(string? before) => new(null, null) { Before = before };
}
