using Fretloom.Studio.Client.Write.Desk;

namespace Fretloom.Studio.Client.Tests.Write;

/// <summary>A desk with a folder of one lesson, drafts and a clock of its own.</summary>
public abstract class OneDesk : IDisposable
{
    /// <summary>The lesson.</summary>
    protected const string Name = "one.md";

    /// <summary>What it says at first.</summary>
    protected const string Before = "---\ntitle: One\n---\n\nFirst.\n";

    /// <summary>What is written here.</summary>
    protected const string Mine = "---\ntitle: One\n---\n\nFirst, and mine.\n";

    /// <summary>What is written elsewhere.</summary>
    protected const string Theirs = "---\ntitle: One\n---\n\nFirst, and theirs.\n";

    /// <summary>Puts the lesson into the folder.</summary>
    protected OneDesk()
    {
        Folder.Files[Name] = Before;
        Desk = new LessonDesk(Folder.Asked(), Drafts, Clock, new());
    }

    private protected FolderOfLessons Folder { get; } = new();

    private protected DraftsInMemory Drafts { get; } = new();

    private protected StoppedClock Clock { get; } = new();

    private protected LessonDesk Desk { get; }

    /// <inheritdoc/>
    public void Dispose()
    {
        Folder.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Types; the editor keeps what is typed before it tells the desk.</summary>
    protected void Type(string text)
    {
        Drafts.Put(Desk.Name!, Desk.ETag, text);
        Desk.Type(text);
    }

    /// <summary>The keys rest as long as it takes to be saved.</summary>
    protected Task RestAsync() => Clock.PassAsync(LessonDesk.Rest);

    /// <summary>Opens the lesson, and writes it here and elsewhere.</summary>
    protected async Task ClashedAsync()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        Folder.Files[Name] = Theirs;
        await RestAsync();
        Assert.NotNull(Desk.Clash);
    }
}
