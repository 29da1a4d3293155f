namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>The lesson that is open: what is written, which file it grew from, and what there is to say of it.</summary>
internal sealed class OpenLesson
{
    private bool _hasInserted;

    /// <summary>Raised when anything here is another than it was.</summary>
    public event Action? Changed;

    /// <summary>Raised when the text changed by anything but typing; true when it is another lesson.</summary>
    public event Action<bool>? TextSet;

    /// <summary>What stands in the editor at this moment; null without an editor.</summary>
    public Func<Written?>? Live { get; set; }

    /// <summary>Where the cursor was when the editor was asked last; null where it was never put anywhere.</summary>
    public int? Cursor { get; private set; }

    /// <summary>Counts the lessons that were open: an answer that comes late is for another one.</summary>
    public int Session { get; private set; }

    /// <summary>The name of its file; null when none is open.</summary>
    public string? Name { get; private set; }

    /// <summary>What is written.</summary>
    public string Text { get; private set; } = "";

    /// <summary>The SHA-256 of the file that the text grew from, in hexadecimal; null when there is none on the disk.</summary>
    public string? ETag { get; private set; }

    /// <summary>What that file says; null when there is none, or nobody knows.</summary>
    public string? OnDisk { get; private set; }

    /// <summary>How the file is written.</summary>
    public WrittenForm Form { get; private set; } = WrittenForm.Plain;

    /// <summary>Whether one is open.</summary>
    public bool IsOpen => Name is not null;

    /// <summary>Whether what is written is on the disk.</summary>
    public bool IsSaved => Text == OnDisk;

    /// <summary>Where it stands.</summary>
    public SaveState State { get; set; }

    /// <summary>Why it is not saved, in the host's words; empty when the host was not reached or nothing is wrong.</summary>
    public string Trouble { get; set; } = "";

    /// <summary>What is to be chosen before anything is saved; null for nothing.</summary>
    public Clash? Clash { get; set; }

    /// <summary>A draft of it that never came to the disk; null for none.</summary>
    public Draft? LeftBehind { get; set; }

    /// <summary>What is to be told; null for nothing.</summary>
    public Notice? Notice { get; private set; }

    /// <summary>Opens another lesson.</summary>
    public void Begin(string name, string? onDisk, string? etag, string text, WrittenForm form)
    {
        (Name, OnDisk, ETag, Text, Form) = (name, onDisk, etag, text, form);
        BeginAnew(IsSaved ? SaveState.Saved : SaveState.Waiting);
    }

    /// <summary>Lets the lesson go: none is open.</summary>
    public void Close()
    {
        (Name, OnDisk, ETag, Text, Form) = (null, null, null, "", WrittenForm.Plain);
        BeginAnew(SaveState.Saved);
    }

    private void BeginAnew(SaveState state)
    {
        Session++;
        (State, Clash, LeftBehind, Notice, Trouble) = (state, null, null, null, "");
        (Cursor, _hasInserted) = (null, false);
        TextSet?.Invoke(true);
        Tell();
    }

    /// <summary>Goes on with the same text as a new lesson of another name.</summary>
    public void BeginCopy(string name)
    {
        Session++;
        (Name, ETag, OnDisk, Clash, LeftBehind) = (name, null, null, null, null);
        (State, Trouble) = (SaveState.Waiting, "");
        Tell();
    }

    /// <summary>Goes by another name.</summary>
    public void Rename(string name)
    {
        Name = name;
        Tell();
    }

    /// <summary>Takes what is written in the editor.</summary>
    public void Write(string text) => Text = text;

    /// <summary>Typing is told a little later than it is done; before anything is decided, all of it counts.</summary>
    public void Catch()
    {
        if (IsOpen && Live?.Invoke() is { } live)
        {
            (Text, Cursor) = live;
        }
    }

    /// <summary>Puts a text into the editor, where it can be taken back like a change that was typed.</summary>
    public void Replace(string text)
    {
        Text = text;
        TextSet?.Invoke(false);
    }

    /// <summary>Takes a text into which something was put, and where the cursor stands behind it.</summary>
    public void Insert(string text, int cursor)
    {
        (Text, Cursor, _hasInserted) = (text, cursor, true);
        TextSet?.Invoke(false);
    }

    /// <summary>Where the cursor stands behind what was put in and no editor has shown; null without one. Asked once.</summary>
    public int? TakeInserted()
    {
        var at = _hasInserted ? Cursor : null;
        _hasInserted = false;
        return at;
    }

    /// <summary>Takes over what is on the disk.</summary>
    public void Take(string theirs, string etag)
    {
        (Text, OnDisk, ETag, State) = (theirs, theirs, etag, SaveState.Saved);
        TextSet?.Invoke(false);
        Tell();
    }

    /// <summary>Learns what is on the disk.</summary>
    /// <param name="etag">The file; null when there is none.</param>
    /// <param name="text">What it says; null when there is none.</param>
    public void IsNow(string? etag, string? text)
    {
        (ETag, OnDisk) = (etag, text);
        State = IsSaved ? SaveState.Saved : SaveState.Waiting;
    }

    /// <summary>Tells that something is another than it was.</summary>
    public void Tell() => Changed?.Invoke();

    /// <summary>Tells the teacher something; null takes away what was told.</summary>
    public void Tell(Notice? notice)
    {
        Notice = notice;
        Tell();
    }

    /// <summary>Takes away what was told, which is done by going on.</summary>
    public void GoOn() => Notice = null;
}
