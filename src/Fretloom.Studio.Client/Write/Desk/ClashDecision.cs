namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>Decides a clash.</summary>
internal sealed class ClashDecision(OpenLesson lesson, LessonFolder folder, DraftShelf shelf, LessonSaver saver)
{
    private Clash? _decided;

    /// <summary>Does what was chosen, once.</summary>
    public async Task MakeAsync(ClashChoice choice)
    {
        if (lesson.Clash is not { } clash || ReferenceEquals(clash, _decided) || lesson.Name is not { } name)
        {
            return;
        }

        _decided = clash;
        try
        {
            await MakeAsync(choice, clash, name);
        }
        finally
        {
            _decided = null;
        }
    }

    private async Task MakeAsync(ClashChoice choice, Clash clash, string name)
    {
        lesson.Catch();
        var session = lesson.Session;
        if (choice == ClashChoice.Theirs && clash.IsGone)
        {
            lesson.Close();
            await shelf.DropAsync(name);
            return;
        }

        if (choice == ClashChoice.Theirs && clash.Theirs is { } theirs)
        {
            lesson.Clash = null;
            lesson.Take(theirs, clash.ETag!);
            await shelf.DropAsync(name);
            return;
        }

        if (choice == ClashChoice.Both && clash.Theirs is { } other && !await SaveBeside(name, other))
        {
            return;
        }

        if (session != lesson.Session)
        {
            return;
        }

        lesson.Clash = null;
        lesson.IsNow(clash.ETag, clash.Theirs);
        await shelf.KeepAsync();
        await saver.SaveAsync();
    }

    private async Task<bool> SaveBeside(string name, string text)
    {
        var written = lesson.Form.Write(text);
        for (var number = 2; ; number++)
        {
            var beside = FileNames.Numbered(name, number);
            var answer = await folder.WriteAsync(beside, written, null);
            if (answer.Answer == Answer.Done)
            {
                lesson.Tell(new Notice("write-beside", beside));
                return true;
            }

            if (answer.Answer != Answer.IsAnother)
            {
                lesson.Tell(new Notice("write-not-reached"));
                return false;
            }
        }
    }
}
