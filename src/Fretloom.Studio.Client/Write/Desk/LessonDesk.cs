using Fretloom.Exhibits;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>
/// The desk with the lesson that is open. What is written is saved when the keys rest, never over a file that changed in the meantime, and is kept in
/// the browser until it is on the disk.
/// </summary>
public sealed class LessonDesk
{
    /// <summary>How long the keys rest before the lesson is saved.</summary>
    public static readonly TimeSpan Rest = TimeSpan.FromSeconds(1);

    private readonly OpenLesson _lesson = new();
    private readonly LessonFolder _folder;
    private readonly Errands _errands;
    private readonly DraftShelf _shelf;
    private readonly LessonSaver _saver;
    private readonly FolderNews _news;
    private readonly ClashDecision _decision;
    private readonly TakenUp _takenUp;

    // Counts what was asked to be opened: the last one counts.
    private int _asked;

    /// <summary>An empty desk.</summary>
    /// <param name="folder">The lessons on the disk.</param>
    /// <param name="drafts">Keeps what is not on the disk.</param>
    /// <param name="clock">Says when to save.</param>
    /// <param name="errands">Does what nobody waits for.</param>
    public LessonDesk(LessonFolder folder, IDrafts drafts, TimeProvider clock, Errands errands)
    {
        (_folder, _errands) = (folder, errands);
        _shelf = new DraftShelf(_lesson, drafts);
        var disk = new DiskLook(_lesson, folder, _shelf);
        _saver = new LessonSaver(_lesson, folder, _shelf, disk, clock, errands);
        _news = new FolderNews(_lesson, folder, _saver, disk, _shelf, clock);
        _decision = new ClashDecision(_lesson, folder, _shelf, _saver);
        _takenUp = new TakenUp(_lesson, _shelf, _saver);
    }

    /// <summary>Raised when anything here is another than it was.</summary>
    public event Action? Changed
    {
        add => _lesson.Changed += value;
        remove => _lesson.Changed -= value;
    }

    /// <summary>Raised when the text changed by anything but typing; true when it is another lesson, false when it is to be taken back like a change that was typed.</summary>
    public event Action<bool>? TextSet
    {
        add => _lesson.TextSet += value;
        remove => _lesson.TextSet -= value;
    }

    /// <summary>Raised when the teacher asks for the files of the lesson.</summary>
    public event Action? BuildAsked;

    /// <summary>What stands in the editor at this moment; null without an editor. Typing is told a little later.</summary>
    public Func<Written?>? Live
    {
        get => _lesson.Live;
        set => _lesson.Live = value;
    }

    /// <summary>The name of the lesson's file; null when no lesson is open.</summary>
    public string? Name => _lesson.Name;

    /// <summary>What is written.</summary>
    public string Text => _lesson.Text;

    /// <summary>Where the cursor was when the editor was asked last, counted in UTF-16 units from 0; null where it was never put anywhere.</summary>
    public int? Cursor => _lesson.Cursor;

    /// <summary>The SHA-256 of the file that the text grew from, in hexadecimal; null when there is none on the disk.</summary>
    public string? ETag => _lesson.ETag;

    /// <summary>Whether a lesson is open.</summary>
    public bool IsOpen => _lesson.IsOpen;

    /// <summary>Whether what is written is on the disk.</summary>
    public bool IsSaved => _lesson.IsSaved;

    /// <summary>Whether what is written is neither on the disk nor kept by the browser.</summary>
    public bool IsAtRisk => IsOpen && !IsSaved && IsNotKept;

    /// <summary>Whether the browser keeps no drafts.</summary>
    public bool IsNotKept => _shelf.IsNotKept;

    /// <summary>Where the lesson stands.</summary>
    public SaveState State => _lesson.State;

    /// <summary>Why it is not saved, in the host's words; empty when the host was not reached or nothing is wrong.</summary>
    public string Trouble => _lesson.Trouble;

    /// <summary>What is to be chosen before anything is saved; null for nothing.</summary>
    public Clash? Clash => _lesson.Clash;

    /// <summary>A draft of this lesson that never came to the disk; null for none.</summary>
    public Draft? LeftBehind => _lesson.LeftBehind;

    /// <summary>What is to be told; null for nothing.</summary>
    public Notice? Notice => _lesson.Notice;

    /// <summary>The lessons in the folder; null while the host was not reached.</summary>
    public IReadOnlyList<LessonEntry>? Lessons => _news.Lessons;

    /// <summary>The lessons of which this browser keeps something that is not on the disk, whether they are in the folder or not.</summary>
    public IReadOnlyList<string> Unsaved => _news.Unsaved;

    /// <summary>Reads the list of lessons.</summary>
    public Task RefreshAsync() => _news.RefreshAsync();

    /// <summary>Opens a lesson. What is open is saved first; where that fails, the browser keeps it as a draft, and where that fails too, it stays open.</summary>
    /// <returns>Whether it is open.</returns>
    public async Task<bool> OpenAsync(string name)
    {
        var asked = ++_asked;
        if (!await LeaveAsync() || asked != _asked)
        {
            return false;
        }

        var (answer, file) = await _folder.ReadAsync(name);
        if (asked != _asked)
        {
            return false;
        }

        if (answer.Answer is Answer.IsNoText or Answer.Refused)
        {
            _lesson.Tell(WhyNotOpened(answer, name));
            return false;
        }

        // What was typed while the host was asked.
        if (!await KeptAsync())
        {
            return false;
        }

        await _shelf.SetAsideAsync(name);
        var left = await _shelf.LeftBehindAsync(name);
        if (asked != _asked)
        {
            return false;
        }

        if (file is not null)
        {
            var (form, text) = WrittenForm.Of(file.Text);
            _lesson.Begin(name, text, file.ETag, text, form);
            await _shelf.OfferAsync(left);
            await _news.RefreshUnsavedAsync();
            return true;
        }

        if (left is not [var newest, ..])
        {
            _lesson.Tell(WhyNotOpened(answer, name));
            return false;
        }

        // Without a host, and of a lesson that is not on the disk, what the browser has is all there is.
        _lesson.Begin(name, null, newest.ETag, newest.Text, WrittenForm.Plain);
        _lesson.Clash = answer.Answer == Answer.IsMissing && newest.ETag is not null ? Desk.Clash.Gone : null;
        var session = _lesson.Session;
        await _shelf.TakeOverAsync(newest);
        _saver.SaveLater(Rest);
        await _shelf.OfferNextAsync(session);
        return true;
    }

    /// <summary>Begins a new lesson with nothing but a title, which is saved under a name from it that no other has.</summary>
    public Task StartAsync(string title) => StartAsync(NewLesson.Called(title));

    /// <summary>Begins a new lesson, which is saved under a name from its title that no other has.</summary>
    internal async Task StartAsync(NewLesson begun)
    {
        var asked = ++_asked;
        if (!await LeaveAsync() || asked != _asked)
        {
            return;
        }

        var name = _news.Free(FileNames.From(begun.Title));
        await _shelf.SetAsideAsync(name);
        if (asked != _asked || !await KeptAsync() || asked != _asked)
        {
            return;
        }

        _lesson.Begin(name, null, null, begun.Text, WrittenForm.Plain);
        _lesson.Insert(begun.Text, begun.Text.Length);
        var session = _lesson.Session;
        await _shelf.KeepAsync();
        await SaveAsync();
        await _shelf.OfferNextAsync(session);
        await RefreshAsync();
    }

    /// <summary>Goes on under another name; the file of the old name stays as it is on the disk.</summary>
    /// <param name="title">What the name is made from.</param>
    public async Task SaveAsAsync(string title)
    {
        var asked = ++_asked;
        var name = _news.Free(FileNames.From(title));
        await _shelf.SetAsideAsync(name);
        if (asked != _asked)
        {
            return;
        }

        _lesson.Catch();
        var before = Name;
        _lesson.BeginCopy(name);
        await _shelf.KeepAsync();
        if (before is not null)
        {
            await _shelf.MoveFromAsync(before);
        }

        await SaveAsync();
        await RefreshAsync();
    }

    /// <summary>Takes what is typed. The editor has kept it already.</summary>
    public void Type(string text)
    {
        if (!IsOpen || text == Text)
        {
            return;
        }

        _lesson.Write(text);
        SaveSoon();
    }

    // Something was written.
    private void SaveSoon()
    {
        _lesson.GoOn();
        if (IsSaved)
        {
            var name = Name!;
            _lesson.State = SaveState.Saved;
            _errands.Run(() => _shelf.DropAsync(name));
        }
        else if (State is not SaveState.Saving)
        {
            _lesson.State = SaveState.Waiting;
        }

        _saver.SaveLater(Rest);
        _lesson.Tell();
    }

    /// <summary>Puts a block in where the cursor stands or stood last, at the end where it never was; without a lesson a new one is begun.</summary>
    /// <param name="fence">The whole block with its fences.</param>
    /// <param name="seen">What a new lesson is called after.</param>
    public async Task InsertBlockAsync(string fence, Exhibit seen)
    {
        if (!IsOpen)
        {
            await StartAsync(NewLesson.With(seen, fence));
            return;
        }

        _lesson.Catch();
        var (text, cursor) = BlockPlace.Put(Text, Cursor, fence);
        _lesson.Insert(text, cursor);
        SaveSoon();
        await _shelf.KeepAsync();
    }

    /// <summary>Where the editor is to show the cursor, since something was put in before it; null where nothing was. Asked once.</summary>
    internal int? TakeInserted() => _lesson.TakeInserted();

    /// <summary>The editor is closed: where it was left is known.</summary>
    public void LeaveEditor()
    {
        if (Live?.Invoke() is { } live)
        {
            Type(live.Text);
        }

        _lesson.Catch();
        Live = null;
    }

    /// <summary>Asks for the files of the lesson.</summary>
    public void AskForBuild()
    {
        _lesson.Catch();
        BuildAsked?.Invoke();
    }

    /// <summary>Saves what is written, unless it is saved or something is to be chosen first.</summary>
    public Task SaveAsync() => _saver.SaveAsync();

    /// <summary>The browser is online again, or the host answers again.</summary>
    public Task ReturnAsync() => _news.ReturnAsync();

    /// <summary>A file of the folder changed.</summary>
    /// <param name="name">Which.</param>
    /// <param name="etag">What it is now; null when it is gone.</param>
    public Task FileChangedAsync(string name, string? etag) => _news.FileChangedAsync(name, etag);

    /// <summary>Decides a clash.</summary>
    public async Task ChooseAsync(ClashChoice choice)
    {
        await _decision.MakeAsync(choice);
        if (choice == ClashChoice.Both)
        {
            await RefreshAsync();
        }
    }

    /// <summary>Goes on with the draft that was left behind. What was typed since the lesson was opened is saved first; where that fails, it becomes a draft itself.</summary>
    public Task TakeUpAsync() => _takenUp.TakeUpAsync();

    /// <summary>Forgets the draft that was left behind.</summary>
    public Task ForgetDraftAsync() => _shelf.ForgetAsync();

    /// <summary>The browser cannot keep what is written.</summary>
    public void NotKept()
    {
        _shelf.IsNotKept = true;
        _lesson.Tell();
    }

    /// <summary>Takes a notice away.</summary>
    public void Dismiss() => _lesson.Tell(null);

    private static Notice WhyNotOpened(FileAnswer answer, string name) =>
        answer switch
        {
            { Answer: Answer.IsNoText } => new Notice("write-no-text", name),
            { Answer: Answer.IsMissing } => new Notice("write-not-there", name),
            { Reason.Length: > 0 } => new Notice("write-not-opened", $"{name}: {answer.Reason}"),
            _ => new Notice("write-not-reached"),
        };

    // Answers whether nothing is lost by leaving.
    private async Task<bool> LeaveAsync()
    {
        if (!IsOpen)
        {
            return true;
        }

        await SaveAsync();
        return await KeptAsync();
    }

    private async Task<bool> KeptAsync()
    {
        _lesson.Catch();
        await _shelf.KeepAsync();
        if (IsAtRisk)
        {
            _lesson.Tell(new Notice("write-state-lost"));
            return false;
        }

        return true;
    }
}
