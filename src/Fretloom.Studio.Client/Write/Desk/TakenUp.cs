namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Goes on with a draft that was left behind.</summary>
internal sealed class TakenUp(OpenLesson lesson, DraftShelf shelf, LessonSaver saver)
{
    /// <summary>Takes up the draft that is offered. What was typed since the lesson was opened is saved first; where that fails, it becomes a draft itself.</summary>
    public async Task TakeUpAsync()
    {
        if (lesson.LeftBehind is not { } draft || lesson.Name is not { } name)
        {
            return;
        }

        var session = lesson.Session;
        await saver.SaveAsync();
        if (session != lesson.Session || lesson.Clash is not null || !await IsKeptAsync(session, name))
        {
            return;
        }

        lesson.LeftBehind = null;
        if (draft.ETag != lesson.ETag)
        {
            // The file went on without the draft: that is to be seen before one of them is lost.
            lesson.Clash = new Clash(lesson.OnDisk, lesson.ETag, IsDraft: true);
        }

        lesson.Replace(draft.Text);
        await shelf.TakeOverAsync(draft);
        saver.SaveLater(LessonDesk.Rest);
        lesson.Tell();
        await saver.SaveAsync();
        await shelf.OfferNextAsync(session);
    }

    // Answers whether what is written can give way, and the same lesson is still open.
    private async Task<bool> IsKeptAsync(int session, string name)
    {
        if (lesson.IsSaved)
        {
            return true;
        }

        await shelf.KeepAsync();
        if (session != lesson.Session)
        {
            return false;
        }

        if (shelf.IsNotKept)
        {
            lesson.Tell(new Notice("write-state-lost"));
            return false;
        }

        await shelf.SetAsideAsync(name);
        return session == lesson.Session;
    }
}
