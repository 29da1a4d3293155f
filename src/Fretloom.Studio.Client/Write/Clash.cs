namespace Fretloom.Studio.Client.Write;

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

/// <summary>Decides a clash.</summary>
internal sealed class ClashDecision(OpenLesson lesson, LessonFolder folder, DraftShelf shelf, LessonSaver saver)
{
    /// <summary>Does what was chosen.</summary>
    public async Task MakeAsync(ClashChoice choice)
    {
        if (lesson.Clash is not { } clash || lesson.Name is not { } name)
        {
            return;
        }

        lesson.Catch();
        var session = lesson.Session;
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
        for (var beside = FileNames.Next(name); ; beside = FileNames.Next(beside))
        {
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
