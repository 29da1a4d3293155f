namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>What happens in the folder while a lesson is open.</summary>
internal sealed class FolderNews(
    OpenLesson lesson,
    LessonFolder folder,
    LessonSaver saver,
    DiskLook disk,
    DraftShelf shelf,
    TimeProvider clock
)
{
    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(200);

    /// <summary>The lessons in the folder; null while the host was not reached.</summary>
    public IReadOnlyList<LessonEntry>? Lessons { get; private set; }

    /// <summary>The lessons of which this browser keeps something that is not on the disk.</summary>
    public IReadOnlyList<string> Unsaved { get; private set; } = [];

    /// <summary>Reads the list of lessons, and what this browser keeps.</summary>
    public async Task RefreshAsync()
    {
        Lessons = await folder.ListAsync() ?? Lessons;
        await RefreshUnsavedAsync();
    }

    /// <summary>Looks what this browser keeps.</summary>
    public async Task RefreshUnsavedAsync()
    {
        Unsaved = await shelf.NamesAsync();
        lesson.Tell();
    }

    /// <summary>A name that no lesson has, as far as is known: this one, or the next that is free.</summary>
    public string Free(string name)
    {
        var free = name;
        for (var number = 2; free == lesson.Name || Lessons?.Any(one => one.Name == free) == true; number++)
        {
            free = FileNames.Numbered(name, number);
        }

        return free;
    }

    /// <summary>The browser is online again, or the host answers again.</summary>
    public async Task ReturnAsync()
    {
        await saver.SaveAsync();
        while (saver.IsSaving)
        {
            await Task.Delay(Moment, clock);
        }

        if (lesson.Name is { } name)
        {
            await LookAsync(name);
        }

        await RefreshAsync();
    }

    /// <summary>A file of the folder changed.</summary>
    /// <param name="name">Which.</param>
    /// <param name="etag">What it is now; null when it is gone.</param>
    public async Task FileChangedAsync(string name, string? etag)
    {
        if (name != lesson.Name)
        {
            await RefreshAsync();
            return;
        }

        etag = etag?.Trim('"');
        if (etag is not null && ((lesson.Clash is null && etag == lesson.ETag) || saver.Sends(etag)))
        {
            // Its title may be another.
            await RefreshAsync();
            return;
        }

        if (saver.IsSaving)
        {
            // What is on its way is refused if the file is another; else it is told again by the next look.
            await Task.Delay(Moment, clock);
            await FileChangedAsync(name, etag);
            return;
        }

        await LookAsync(name);
        await RefreshAsync();
    }

    private async Task LookAsync(string name)
    {
        await disk.LookAsync(name);
        if (lesson.Name == name && !lesson.IsSaved && lesson.Clash is null)
        {
            saver.SaveLater(LessonDesk.Rest);
        }
    }
}
