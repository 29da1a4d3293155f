namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>What the browser keeps of the open lesson until it is on the disk.</summary>
internal sealed class DraftShelf(OpenLesson lesson, IDrafts drafts)
{
    /// <summary>Whether the browser keeps no drafts.</summary>
    public bool IsNotKept { get; set; }

    /// <summary>Keeps what is written, unless it is on the disk.</summary>
    public async Task KeepAsync()
    {
        if (lesson.Name is { } name && !lesson.IsSaved)
        {
            IsNotKept = !await drafts.KeepAsync(name, lesson.ETag, lesson.Text);
        }
    }

    /// <summary>Forgets what is kept of a lesson: it is on the disk.</summary>
    public async Task DropAsync(string name) => await drafts.DropAsync(name);

    /// <summary>Forgets what is kept under a name that the lesson had before, where it is kept under its new one.</summary>
    public async Task MoveFromAsync(string name)
    {
        if (!IsNotKept)
        {
            await drafts.DropAsync(name);
        }
    }

    /// <summary>Makes what is kept under a name a draft that was left behind.</summary>
    public async Task SetAsideAsync(string name) => await drafts.SetAsideAsync(name);

    /// <summary>The drafts of a lesson that nobody is writing, the newest first.</summary>
    public async Task<IReadOnlyList<Draft>> LeftBehindAsync(string name) => await drafts.LeftBehindAsync(name);

    /// <summary>The lessons of which something is kept.</summary>
    public ValueTask<IReadOnlyList<string>> NamesAsync() => drafts.NamesAsync();

    /// <summary>Goes on with a draft. It is forgotten only when its text is kept as the lesson's own.</summary>
    public async Task TakeOverAsync(Draft draft)
    {
        lesson.Write(draft.Text);
        lesson.State = SaveState.Waiting;
        await KeepAsync();
        if (lesson.IsSaved || !IsNotKept)
        {
            await drafts.DiscardAsync(draft.Key);
        }
    }

    /// <summary>Forgets the draft that was left behind, and offers the next.</summary>
    public async Task ForgetAsync()
    {
        if (lesson.LeftBehind is { } draft)
        {
            var session = lesson.Session;
            lesson.LeftBehind = null;
            await drafts.DiscardAsync(draft.Key);
            await OfferNextAsync(session);
            lesson.Tell();
        }
    }

    /// <summary>Offers the newest draft that is another than the lesson, and forgets those that are on the disk.</summary>
    public async Task OfferAsync(IReadOnlyList<Draft> left)
    {
        var onDisk = lesson.OnDisk;
        lesson.LeftBehind = left.FirstOrDefault(draft => draft.Text != onDisk && draft.Text != lesson.Text);
        lesson.Tell();
        foreach (var draft in left.Where(draft => draft.Text == onDisk))
        {
            await drafts.DiscardAsync(draft.Key);
        }
    }

    /// <summary>Offers what is left of the lesson that was open when it was asked for.</summary>
    public async Task OfferNextAsync(int session)
    {
        if (lesson.Name is { } name && session == lesson.Session)
        {
            var left = await drafts.LeftBehindAsync(name);
            if (session == lesson.Session)
            {
                await OfferAsync(left);
            }
        }
    }
}
