namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>A text that was written and never came to the disk.</summary>
/// <param name="Key">What it is kept under.</param>
/// <param name="Text">The text.</param>
/// <param name="ETag">The file that it began from; null for a new lesson.</param>
/// <param name="At">When it was last changed.</param>
public sealed record Draft(string Key, string Text, string? ETag, DateTimeOffset At);

/// <summary>Keeps what is written and not yet on the disk, at once and through a crash.</summary>
public interface IDrafts
{
    /// <summary>Keeps a text.</summary>
    /// <param name="name">The lesson.</param>
    /// <param name="etag">The file that it began from; null for a new lesson.</param>
    /// <param name="text">The text.</param>
    /// <returns>Whether it is kept; a browser may be full, or keep nothing.</returns>
    ValueTask<bool> KeepAsync(string name, string? etag, string text);

    /// <summary>Makes what is kept of a lesson a draft that was left behind, so that nothing kept or dropped later touches it.</summary>
    ValueTask SetAsideAsync(string name);

    /// <summary>Forgets what is kept of a lesson, but for drafts that were left behind.</summary>
    ValueTask DropAsync(string name);

    /// <summary>Forgets a draft.</summary>
    ValueTask DiscardAsync(string key);

    /// <summary>The lessons of which there is something that no other tab is writing now.</summary>
    ValueTask<IReadOnlyList<string>> NamesAsync();

    /// <summary>The drafts of a lesson that nobody is writing now, the newest first.</summary>
    ValueTask<IReadOnlyList<Draft>> LeftBehindAsync(string name);
}
