namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Looks at what is on the disk, and brings it together with what is written.</summary>
internal sealed class DiskLook(OpenLesson lesson, LessonFolder folder, DraftShelf shelf)
{
    /// <summary>Looks at the file of the open lesson. It comes here where nothing was written; else it is to be chosen.</summary>
    /// <param name="name">Its name.</param>
    public async Task LookAsync(string name)
    {
        var (session, before) = (lesson.Session, lesson.ETag);
        var (answer, file) = await folder.ReadAsync(name);
        lesson.Catch();
        if (session != lesson.Session || answer.Answer is not (Answer.Done or Answer.IsMissing))
        {
            return;
        }

        if (lesson.ETag != before)
        {
            // Something was saved meanwhile: this answer may be older than that.
            await LookAsync(name);
        }
        else if (file is null)
        {
            Lose();
        }
        else
        {
            await MeetAsync(name, WrittenForm.Of(file.Text).Text, file.ETag);
        }
    }

    // A file that is gone was taken away by somebody: whether it comes back is to be chosen.
    private void Lose()
    {
        if (lesson.ETag is not null && lesson.Clash is not { IsGone: true })
        {
            lesson.Clash = Clash.Gone;
            lesson.Tell(null);
        }
    }

    private async Task MeetAsync(string name, string theirs, string etag)
    {
        if (etag == lesson.ETag && lesson.Clash is null or { IsDraft: true })
        {
            return;
        }

        if (etag == lesson.ETag || theirs == lesson.Text)
        {
            // It is what this text grew from, or the same.
            lesson.Clash = null;
            lesson.IsNow(etag, theirs);
            if (lesson.IsSaved)
            {
                await shelf.DropAsync(name);
            }
        }
        else if (lesson.IsSaved)
        {
            lesson.Clash = null;
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
