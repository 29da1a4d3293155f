namespace Fretloom.Studio.Client.Write;

/// <summary>Looks at what is on the disk, and brings it together with what is written.</summary>
internal sealed class DiskLook(OpenLesson lesson, LessonFolder folder, DraftShelf shelf)
{
    /// <summary>Looks at the file of the open lesson. It comes here where nothing was written; else it is to be chosen.</summary>
    /// <param name="name">Its name.</param>
    public async Task LookAsync(string name)
    {
        var session = lesson.Session;
        var (answer, file) = await folder.ReadAsync(name);
        lesson.Catch();
        if (
            session != lesson.Session
            || answer.Answer is not (Answer.Done or Answer.IsMissing)
            || file?.ETag == lesson.ETag
        )
        {
            return;
        }

        if (file is null)
        {
            await LoseAsync(name);
        }
        else
        {
            await MeetAsync(name, WrittenForm.Of(file.Text).Text, file.ETag);
        }
    }

    private async Task LoseAsync(string name)
    {
        if (lesson.ETag is not null)
        {
            lesson.IsNow(null, null);
            lesson.Tell(new Notice("write-gone", name));
            await shelf.KeepAsync();
        }
    }

    private async Task MeetAsync(string name, string theirs, string etag)
    {
        if (theirs == lesson.Text)
        {
            lesson.IsNow(etag, theirs);
            await shelf.DropAsync(name);
        }
        else if (lesson.IsSaved)
        {
            lesson.Take(theirs, etag);
            await shelf.DropAsync(name);
            lesson.Tell(new Notice("write-changed-outside", name));
        }
        else
        {
            lesson.Clash = new Clash(theirs, etag);
        }

        lesson.Tell();
    }
}
