using System.Security.Cryptography;
using System.Text;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Saves the open lesson: one save at a time, again when something was typed meanwhile, later when nobody answers.</summary>
internal sealed class LessonSaver(
    OpenLesson lesson,
    LessonFolder folder,
    DraftShelf shelf,
    DiskLook disk,
    TimeProvider clock,
    Errands errands
)
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(30);

    private (int Session, string ETag)? _onItsWay;
    private (int Session, int Count) _failures;

    // The name that a new lesson was to have, and which of that name it is.
    private (int Session, string Name, int Number) _given;
    private int _timers;

    /// <summary>Whether something is on its way.</summary>
    public bool IsSaving { get; private set; }

    private bool IsToSave => lesson.IsOpen && !lesson.IsSaved && lesson.Clash is null;

    /// <summary>Whether a file of the open lesson is what is on its way.</summary>
    public bool Sends(string etag) => _onItsWay == (lesson.Session, etag);

    /// <summary>Saves in a while; what was asked for before is not done any more.</summary>
    public void SaveLater(TimeSpan wait)
    {
        var (timer, session) = (++_timers, lesson.Session);
        errands.Run(WaitAsync);

        async Task WaitAsync()
        {
            await Task.Delay(wait, clock);
            if (timer == _timers && session == lesson.Session)
            {
                await SaveAsync();
            }
        }
    }

    /// <summary>Saves what is written, unless it is saved or something is to be chosen first.</summary>
    public async Task SaveAsync()
    {
        lesson.Catch();
        if (IsSaving || !IsToSave)
        {
            return;
        }

        IsSaving = true;
        try
        {
            while (IsToSave && await SaveOnceAsync()) { }
        }
        finally
        {
            IsSaving = false;
            _onItsWay = null;
        }

        // A copy may have been asked for meanwhile. What failed is tried again later, what was refused when it changes.
        if (IsToSave && lesson.State is not (SaveState.Failed or SaveState.Refused))
        {
            lesson.State = SaveState.Waiting;
            SaveLater(LessonDesk.Rest);
        }

        lesson.Tell();
    }

    // Answers whether to save again at once.
    private async Task<bool> SaveOnceAsync()
    {
        var (session, name, text, etag) = (lesson.Session, lesson.Name!, lesson.Text, lesson.ETag);
        var written = lesson.Form.Write(text);
        var hash = HashOf(written);
        _onItsWay = (session, hash);
        lesson.State = SaveState.Saving;
        lesson.Tell();
        var answer = await folder.WriteAsync(name, written, etag);
        if (session != lesson.Session)
        {
            return true;
        }

        switch (answer.Answer)
        {
            case Answer.Done:
                await DoneAsync(name, answer.ETag ?? hash, text);
                return false;
            case Answer.IsAnother when etag is null:
                return await TakeAnotherNameAsync(session, name);
            case Answer.IsMissing when etag is null:
                // A new file that is not found: the folder takes none of this name.
                Refuse(answer.Reason);
                lesson.Tell(new Notice("write-name-refused", name));
                return false;
            case Answer.IsAnother or Answer.IsMissing:
                lesson.State = SaveState.Waiting;
                await disk.LookAsync(name);
                if (session == lesson.Session && !lesson.IsSaved && lesson.Clash is null && lesson.ETag == etag)
                {
                    Fail(answer.Reason);
                }

                return false;
            case Answer.Refused:
                Refuse(answer.Reason);
                return false;
            default:
                Fail(answer.Reason);
                return false;
        }
    }

    private async Task DoneAsync(string name, string etag, string text)
    {
        (_failures, lesson.Trouble) = (default, "");
        lesson.Catch();
        lesson.IsNow(etag, text);
        await (lesson.IsSaved ? shelf.DropAsync(name) : shelf.KeepAsync());
    }

    private void Refuse(string reason) => (lesson.State, lesson.Trouble) = (SaveState.Refused, reason);

    // Each time in a row it is waited twice as long.
    private void Fail(string reason)
    {
        (lesson.State, lesson.Trouble) = (SaveState.Failed, reason);
        _failures = (lesson.Session, _failures.Session == lesson.Session ? _failures.Count + 1 : 1);
        SaveLater(TimeSpan.FromSeconds(Math.Min(LongestWait.TotalSeconds, Math.Pow(2, _failures.Count))));
    }

    // A new lesson gives way to a file that has its name.
    private async Task<bool> TakeAnotherNameAsync(int session, string name)
    {
        var (_, file) = await folder.ReadAsync(name);
        if (session != lesson.Session)
        {
            return true;
        }

        if (file is not null && WrittenForm.Of(file.Text).Text == lesson.Text)
        {
            // It came there, and only the answer was lost.
            lesson.IsNow(file.ETag, lesson.Text);
            await shelf.DropAsync(name);
            return false;
        }

        _given = _given.Session == session ? _given with { Number = _given.Number + 1 } : (session, name, 2);
        var next = FileNames.Numbered(_given.Name, _given.Number);
        await shelf.SetAsideAsync(next);
        if (session != lesson.Session)
        {
            return true;
        }

        lesson.Rename(next);
        await shelf.KeepAsync();
        await shelf.MoveFromAsync(name);
        return true;
    }

    private static string HashOf(string text) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
