using System.Buffers;
using System.Security.Cryptography;
using System.Text;

namespace Fretloom.Studio.Client.Write;

/// <summary>Where the open lesson stands.</summary>
public enum SaveState
{
    /// <summary>What is written is on the disk.</summary>
    Saved,

    /// <summary>It will be saved when the keys rest.</summary>
    Waiting,

    /// <summary>It is on its way.</summary>
    Saving,

    /// <summary>It could not be saved; it is tried again.</summary>
    Failed,

    /// <summary>It cannot be saved as it is; what is wrong must change first.</summary>
    Refused,
}

/// <summary>The file changed on the disk while something else was written here.</summary>
/// <param name="Theirs">What is on the disk, as the editor would show it; null when the file is gone.</param>
/// <param name="ETag">What is on the disk; null when the file is gone.</param>
/// <param name="IsDraft">Whether what is written here is a draft that was left behind.</param>
public sealed record Clash(string? Theirs, string? ETag, bool IsDraft = false);

/// <summary>What to do about a <see cref="Clash"/>.</summary>
public enum ClashChoice
{
    /// <summary>What is written here goes to the disk.</summary>
    Mine,

    /// <summary>What is on the disk comes here.</summary>
    Theirs,

    /// <summary>What is written here goes to the disk, the other beside it as a lesson of its own.</summary>
    Both,
}

/// <summary>Something to be told once.</summary>
/// <param name="Label">The key of the words.</param>
/// <param name="Detail">What belongs in their braces; empty for nothing.</param>
public sealed record Notice(string Label, string Detail = "");

/// <summary>
/// The lesson that is open. What is written is saved when the keys rest, never over a file that changed in the meantime, and is kept in the browser
/// until it is on the disk.
/// </summary>
/// <param name="folder">The lessons on the disk.</param>
/// <param name="drafts">Keeps what is not on the disk.</param>
/// <param name="clock">Says when to save.</param>
public sealed class LessonDesk(LessonFolder folder, IDrafts drafts, TimeProvider clock)
{
    /// <summary>How long the keys rest before the lesson is saved.</summary>
    public static readonly TimeSpan Rest = TimeSpan.FromSeconds(1);

    // What means something to YAML.
    private static readonly SearchValues<char> Telling = SearchValues.Create(":#'\"{}[]&*!|>%@`");

    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    private string? _onDisk;
    private WrittenForm _form = WrittenForm.Plain;
    private bool _isSaving;
    private string? _onItsWay;
    private int _timers;
    private int _failures;

    // Counts the lessons that were open: an answer that comes late is for another one.
    private int _session;

    // Counts what was asked to be opened: the last one counts.
    private int _asked;

    /// <summary>Raised when anything here is another than it was.</summary>
    public event Action? Changed;

    /// <summary>Raised when the text changed by anything but typing; true when it is another lesson, false when it is to be taken back like a change that was typed.</summary>
    public event Action<bool>? TextSet;

    /// <summary>Raised when a block is to be put in at the cursor; the editor answers by <see cref="Type"/>.</summary>
    public event Action<string>? Inserting;

    /// <summary>Raised when the teacher asks for the files of the lesson.</summary>
    public event Action? BuildAsked;

    /// <summary>What stands in the editor at this moment; null without an editor. Typing is told a little later.</summary>
    public Func<string?>? Live { get; set; }

    /// <summary>The name of the lesson's file; null when no lesson is open.</summary>
    public string? Name { get; private set; }

    /// <summary>What is written.</summary>
    public string Text { get; private set; } = "";

    /// <summary>The SHA-256 of the file that the text grew from, in hexadecimal; null when there is none on the disk.</summary>
    public string? ETag { get; private set; }

    /// <summary>Whether a lesson is open.</summary>
    public bool IsOpen => Name is not null;

    /// <summary>Whether what is written is on the disk.</summary>
    public bool IsSaved => Text == _onDisk;

    /// <summary>Whether what is written is neither on the disk nor kept by the browser.</summary>
    public bool IsAtRisk => IsOpen && !IsSaved && IsNotKept;

    /// <summary>Whether the browser keeps no drafts.</summary>
    public bool IsNotKept { get; private set; }

    /// <summary>Where the lesson stands.</summary>
    public SaveState State { get; private set; }

    /// <summary>Why it is not saved, in the host's words; empty when the host was not reached or nothing is wrong.</summary>
    public string Trouble { get; private set; } = "";

    /// <summary>What is to be chosen before anything is saved; null for nothing.</summary>
    public Clash? Clash { get; private set; }

    /// <summary>A draft of this lesson that never came to the disk; null for none.</summary>
    public Draft? LeftBehind { get; private set; }

    /// <summary>What is to be told; null for nothing.</summary>
    public Notice? Notice { get; private set; }

    /// <summary>The lessons in the folder; null while the host was not reached.</summary>
    public IReadOnlyList<LessonEntry>? Lessons { get; private set; }

    /// <summary>Reads the list of lessons.</summary>
    public async Task RefreshAsync()
    {
        Lessons = await folder.ListAsync() ?? Lessons;
        Changed?.Invoke();
    }

    /// <summary>Opens a lesson. What is open is saved first; where that fails, the browser keeps it as a draft, and where that fails too, it stays open.</summary>
    /// <returns>Whether it is open.</returns>
    public async Task<bool> OpenAsync(string name)
    {
        var asked = ++_asked;
        if (!await LeaveAsync() || asked != _asked)
        {
            return false;
        }

        var (answer, file) = await folder.ReadAsync(name);
        if (asked != _asked)
        {
            return false;
        }

        if (answer.Answer == Answer.IsNoText)
        {
            Tell(new("write-no-text", name));
            return false;
        }

        // What was typed while the host was asked.
        Catch();
        await KeepAsync();
        await drafts.SetAsideAsync(name);
        var left = await drafts.LeftBehindAsync(name);
        if (asked != _asked)
        {
            return false;
        }

        if (file is not null)
        {
            var (form, text) = WrittenForm.Of(file.Text);
            Begin(name, text, file.ETag, text, form);
            await OfferAsync(left);
            return true;
        }

        if (left is not [var newest, ..])
        {
            Tell(answer.Answer == Answer.Unreached ? new("write-not-reached") : new("write-not-there", name));
            return false;
        }

        // Without a host, and of a lesson that never came to the disk, what the browser has is all there is.
        var etag = answer.Answer == Answer.IsMissing ? null : newest.ETag;
        Begin(name, null, etag, newest.Text, WrittenForm.Plain);
        var session = _session;
        await TakeOver(newest);
        await OfferNextAsync(session);
        return true;
    }

    /// <summary>Begins a new lesson, which is saved under a name from its title that no other has.</summary>
    /// <param name="title">The title.</param>
    /// <param name="text">The whole text; null for one with nothing but the title.</param>
    public async Task StartAsync(string title, string? text = null)
    {
        var asked = ++_asked;
        if (!await LeaveAsync() || asked != _asked)
        {
            return;
        }

        text ??= $"---\ntitle: {Quoted(title)}\n---\n\n";
        var name = Free(FileNames.From(title));
        await drafts.SetAsideAsync(name);
        if (asked != _asked)
        {
            return;
        }

        Begin(name, null, null, text, WrittenForm.Plain);
        var session = _session;
        await KeepAsync();
        await SaveAsync();
        await OfferNextAsync(session);
        await RefreshAsync();
    }

    /// <summary>Goes on under another name; the file of the old name stays as it is on the disk.</summary>
    /// <param name="title">What the name is made from.</param>
    public async Task SaveAsAsync(string title)
    {
        var asked = ++_asked;
        var name = Free(FileNames.From(title));
        await drafts.SetAsideAsync(name);
        if (asked != _asked)
        {
            return;
        }

        Catch();
        var before = Name;
        _timers++;
        _session++;
        (Name, ETag, _onDisk, _onItsWay, Clash, LeftBehind) = (name, null, null, null, null, null);
        (State, Trouble, _failures) = (SaveState.Waiting, "", 0);
        Changed?.Invoke();
        await KeepAsync();
        if (before is not null && !IsNotKept)
        {
            await drafts.DropAsync(before);
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

        Text = text;
        Notice = null;
        if (IsSaved)
        {
            State = SaveState.Saved;
            _ = DropAsync(Name!);
        }
        else if (State is not SaveState.Saving)
        {
            State = SaveState.Waiting;
        }

        Later(Rest);
        Changed?.Invoke();
    }

    /// <summary>Puts a block in at the cursor, with an empty line on both sides; without a lesson a new one is begun.</summary>
    /// <param name="fence">The whole block with its fences.</param>
    public void InsertBlock(string fence)
    {
        if (!IsOpen)
        {
            _ = StartAsync("New lesson", $"---\ntitle: New lesson\n---\n\n{fence.TrimEnd()}\n");
        }
        else if (Inserting is not null)
        {
            Inserting(fence);
        }
        else
        {
            var text = $"{Text.TrimEnd()}\n\n{fence.TrimEnd()}\n";
            Type(text);
            _ = KeepAsync();
            TextSet?.Invoke(false);
        }
    }

    /// <summary>Asks for the files of the lesson.</summary>
    public void AskForBuild()
    {
        Catch();
        BuildAsked?.Invoke();
    }

    /// <summary>Saves what is written, unless it is saved or something is to be chosen first.</summary>
    public async Task SaveAsync()
    {
        Catch();
        if (_isSaving || Name is null || Clash is not null)
        {
            return;
        }

        _isSaving = true;
        try
        {
            while (!IsSaved && Clash is null && await SaveOnceAsync()) { }
        }
        finally
        {
            _isSaving = false;
            _onItsWay = null;
        }

        // A copy may have been asked for meanwhile. What failed is tried again later, what was refused when it changes.
        if (!IsSaved && Clash is null && State is not (SaveState.Failed or SaveState.Refused))
        {
            State = SaveState.Waiting;
            Later(Rest);
        }

        Changed?.Invoke();
    }

    /// <summary>The browser is online again, or the host answers again.</summary>
    public async Task ReturnAsync()
    {
        await SaveAsync();
        if (Name is { } name && Clash is null)
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
        if (name != Name)
        {
            await RefreshAsync();
            return;
        }

        etag = etag?.Trim('"');
        if (etag is not null && (etag == ETag || etag == _onItsWay))
        {
            return;
        }

        if (_isSaving)
        {
            // What is on its way is refused if the file is another; else it is told again by the next look.
            await Task.Delay(TimeSpan.FromMilliseconds(200), clock);
            await FileChangedAsync(name, etag);
            return;
        }

        await LookAsync(name);
    }

    /// <summary>Decides a clash.</summary>
    public async Task ChooseAsync(ClashChoice choice)
    {
        if (Clash is not { } clash || Name is not { } name)
        {
            return;
        }

        Catch();
        var session = _session;
        if (choice == ClashChoice.Theirs && clash.Theirs is { } theirs)
        {
            Clash = null;
            await Adopt(theirs, clash.ETag!);
            return;
        }

        if (choice == ClashChoice.Both && clash.Theirs is { } other && !await SaveBeside(name, other))
        {
            return;
        }

        if (session != _session)
        {
            return;
        }

        (Clash, ETag, _onDisk) = (null, clash.ETag, clash.Theirs);
        await KeepAsync();
        await SaveAsync();
        if (choice == ClashChoice.Both)
        {
            await RefreshAsync();
        }
    }

    /// <summary>Goes on with the draft that was left behind. What was typed since the lesson was opened is saved first; where that fails, it becomes a draft itself.</summary>
    public async Task TakeUpAsync()
    {
        if (LeftBehind is not { } draft || Name is not { } name)
        {
            return;
        }

        var session = _session;
        await SaveAsync();
        if (session != _session || Clash is not null)
        {
            return;
        }

        if (!IsSaved)
        {
            await KeepAsync();
            if (session != _session)
            {
                return;
            }

            if (IsNotKept)
            {
                Tell(new("write-state-lost"));
                return;
            }

            await drafts.SetAsideAsync(name);
            if (session != _session)
            {
                return;
            }
        }

        LeftBehind = null;
        if (draft.ETag != ETag)
        {
            // The file went on without the draft: that is to be seen before one of them is lost.
            Clash = new Clash(_onDisk, ETag, IsDraft: true);
        }

        Text = draft.Text;
        TextSet?.Invoke(false);
        await TakeOver(draft);
        Changed?.Invoke();
        await SaveAsync();
        await OfferNextAsync(session);
    }

    /// <summary>Forgets the draft that was left behind.</summary>
    public async Task ForgetDraftAsync()
    {
        if (LeftBehind is { } draft)
        {
            var session = _session;
            LeftBehind = null;
            await drafts.DiscardAsync(draft.Key);
            await OfferNextAsync(session);
            Changed?.Invoke();
        }
    }

    /// <summary>The browser cannot keep what is written.</summary>
    public void NotKept()
    {
        IsNotKept = true;
        Changed?.Invoke();
    }

    /// <summary>Takes a notice away.</summary>
    public void Dismiss()
    {
        Notice = null;
        Changed?.Invoke();
    }

    // Answers whether to save again at once.
    private async Task<bool> SaveOnceAsync()
    {
        var (session, name, text, etag) = (_session, Name!, Text, ETag);
        var written = _form.Write(text);
        var hash = HashOf(written);
        _onItsWay = hash;
        State = SaveState.Saving;
        Changed?.Invoke();
        var answer = await folder.WriteAsync(name, written, etag);
        if (session != _session)
        {
            return true;
        }

        switch (answer.Answer)
        {
            case Answer.Done:
                (ETag, _onDisk, _failures, Trouble) = (answer.ETag ?? hash, text, 0, "");
                Catch();
                State = IsSaved ? SaveState.Saved : SaveState.Waiting;
                await (IsSaved ? DropAsync(name) : KeepAsync());
                return false;
            case Answer.IsAnother when etag is null:
                return await TakeAnotherName(session, name);
            case Answer.IsMissing when etag is null:
                // A new file that is not found: the folder takes none of this name.
                (State, Trouble) = (SaveState.Refused, answer.Reason);
                Tell(new Notice("write-name-refused", name));
                return false;
            case Answer.IsAnother or Answer.IsMissing:
                State = SaveState.Waiting;
                await LookAsync(name);
                if (session == _session && !IsSaved && Clash is null && ETag == etag)
                {
                    Fail(answer.Reason);
                }

                return false;
            case Answer.Refused:
                (State, Trouble) = (SaveState.Refused, answer.Reason);
                return false;
            default:
                Fail(answer.Reason);
                return false;
        }
    }

    private void Fail(string reason)
    {
        (State, Trouble) = (SaveState.Failed, reason);
        Later(TimeSpan.FromSeconds(Math.Min(LongestWait.TotalSeconds, Math.Pow(2, ++_failures))));
    }

    // A new lesson gives way to a file that has its name.
    private async Task<bool> TakeAnotherName(int session, string name)
    {
        var (_, file) = await folder.ReadAsync(name);
        if (session != _session)
        {
            return true;
        }

        if (file is not null && WrittenForm.Of(file.Text).Text == Text)
        {
            // It came there, and only the answer was lost.
            (ETag, _onDisk, State) = (file.ETag, Text, SaveState.Saved);
            await DropAsync(name);
            return false;
        }

        var next = FileNames.Next(name);
        await drafts.SetAsideAsync(next);
        if (session != _session)
        {
            return true;
        }

        Name = next;
        Changed?.Invoke();
        await KeepAsync();
        if (!IsNotKept)
        {
            await drafts.DropAsync(name);
        }

        return true;
    }

    private async Task DropAsync(string name) => await drafts.DropAsync(name);

    private async Task KeepAsync()
    {
        if (Name is { } name && !IsSaved)
        {
            IsNotKept = !await drafts.KeepAsync(name, ETag, Text);
        }
    }

    // Looks at what is on the disk.
    private async Task LookAsync(string name)
    {
        var session = _session;
        var (answer, file) = await folder.ReadAsync(name);
        Catch();
        if (session != _session || answer.Answer is not (Answer.Done or Answer.IsMissing) || file?.ETag == ETag)
        {
            return;
        }

        if (file is null)
        {
            if (ETag is not null)
            {
                (ETag, _onDisk, State) = (null, null, SaveState.Waiting);
                Tell(new Notice("write-gone", name));
                await KeepAsync();
            }

            return;
        }

        var theirs = WrittenForm.Of(file.Text).Text;
        if (theirs == Text)
        {
            (ETag, _onDisk, State) = (file.ETag, theirs, SaveState.Saved);
            await DropAsync(name);
        }
        else if (IsSaved)
        {
            await Adopt(theirs, file.ETag);
            Tell(new Notice("write-changed-outside", name));
        }
        else
        {
            Clash = new Clash(theirs, file.ETag);
        }

        Changed?.Invoke();
    }

    private async Task Adopt(string theirs, string etag)
    {
        (Text, _onDisk, ETag, State) = (theirs, theirs, etag, SaveState.Saved);
        TextSet?.Invoke(false);
        Changed?.Invoke();
        await DropAsync(Name!);
    }

    private async Task<bool> SaveBeside(string name, string text)
    {
        var written = _form.Write(text);
        for (var beside = FileNames.Next(name); ; beside = FileNames.Next(beside))
        {
            var answer = await folder.WriteAsync(beside, written, null);
            if (answer.Answer == Answer.Done)
            {
                Tell(new Notice("write-beside", beside));
                return true;
            }

            if (answer.Answer != Answer.IsAnother)
            {
                Tell(new Notice("write-not-reached"));
                return false;
            }
        }
    }

    // A draft is forgotten only when its text is kept as this lesson's own.
    private async Task TakeOver(Draft draft)
    {
        Text = draft.Text;
        State = SaveState.Waiting;
        await KeepAsync();
        if (IsSaved || !IsNotKept)
        {
            await drafts.DiscardAsync(draft.Key);
        }

        Later(Rest);
    }

    // Offers the newest draft that is another than the lesson, and forgets those that are on the disk.
    private async Task OfferAsync(IReadOnlyList<Draft> left)
    {
        var onDisk = _onDisk;
        LeftBehind = left.FirstOrDefault(draft => draft.Text != onDisk && draft.Text != Text);
        Changed?.Invoke();
        foreach (var draft in left.Where(draft => draft.Text == onDisk))
        {
            await drafts.DiscardAsync(draft.Key);
        }
    }

    private async Task OfferNextAsync(int session)
    {
        if (Name is { } name && session == _session)
        {
            var left = await drafts.LeftBehindAsync(name);
            if (session == _session)
            {
                await OfferAsync(left);
            }
        }
    }

    // Answers whether nothing is lost by leaving.
    private async Task<bool> LeaveAsync()
    {
        if (!IsOpen)
        {
            return true;
        }

        await SaveAsync();
        await KeepAsync();
        if (IsAtRisk)
        {
            Tell(new("write-state-lost"));
            return false;
        }

        return true;
    }

    private void Begin(string name, string? onDisk, string? etag, string text, WrittenForm form)
    {
        _timers++;
        _session++;
        _onItsWay = null;
        (Name, _onDisk, ETag, Text, _form) = (name, onDisk, etag, text, form);
        (Clash, LeftBehind, Notice, Trouble, _failures) = (null, null, null, "", 0);
        State = IsSaved ? SaveState.Saved : SaveState.Waiting;
        TextSet?.Invoke(true);
        Changed?.Invoke();
    }

    // Typing is told a little later than it is done; before anything is decided, all of it counts.
    private void Catch()
    {
        if (IsOpen && Live?.Invoke() is { } live)
        {
            Text = live;
        }
    }

    private void Later(TimeSpan wait)
    {
        var timer = ++_timers;
        _ = WaitAsync();

        async Task WaitAsync()
        {
            await Task.Delay(wait, clock);
            if (timer == _timers)
            {
                await SaveAsync();
            }
        }
    }

    private void Tell(Notice notice)
    {
        Notice = notice;
        Changed?.Invoke();
    }

    private string Free(string name)
    {
        while (name == Name || Lessons?.Any(lesson => lesson.Name == name) == true)
        {
            name = FileNames.Next(name);
        }

        return name;
    }

    private static string Quoted(string title) =>
        title.AsSpan().ContainsAny(Telling) ? "'" + title.Replace("'", "''", StringComparison.Ordinal) + "'" : title;

    private static string HashOf(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
