using Fretloom.Studio.Client.Write.Desk;

namespace Fretloom.Studio.Client.Tests.Write;

/// <summary>The file is changed, taken away or put back by somebody else while the lesson is open.</summary>
public sealed class FileChangedTests : OneDesk
{
    [Fact]
    public async Task An_answer_that_is_lost_is_no_clash()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        Folder.LosesAnswers = true;
        await Desk.SaveAsync();
        Folder.LosesAnswers = false;

        await Desk.ReturnAsync();

        Assert.Null(Desk.Clash);
        Assert.Equal((SaveState.Saved, FolderOfLessons.ETagOf(Mine)), (Desk.State, Desk.ETag));
    }

    [Fact]
    public async Task A_file_that_changed_comes_here_when_nothing_was_typed_and_can_be_taken_back()
    {
        await Desk.OpenAsync(Name);
        var sets = new List<bool>();
        Desk.TextSet += sets.Add;
        Folder.Files[Name] = Theirs;
        await Desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));

        Assert.Equal((Theirs, "write-changed-outside"), (Desk.Text, Desk.Notice?.Label));
        Assert.Equal([false], sets);
        Assert.True(Desk.IsSaved);
    }

    [Fact]
    public async Task Ones_own_save_is_no_change_from_outside()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        await RestAsync();
        await Desk.FileChangedAsync(Name, $"\"{FolderOfLessons.ETagOf(Mine)}\"");

        Assert.Null(Desk.Notice);
        Assert.Equal(Mine, Desk.Text);
    }

    [Fact]
    public async Task Nothing_is_saved_over_a_file_that_changed_until_it_is_chosen()
    {
        await ClashedAsync();
        Type(Mine + "More.\n");
        await Clock.PassAsync(TimeSpan.FromMinutes(1));

        Assert.Equal(Theirs, Desk.Clash?.Theirs);
        Assert.Equal(Theirs, Folder.Files[Name]);
        Assert.Equal(Mine + "More.\n", Drafts.Kept[Name].Text);
    }

    [Fact]
    public async Task Mine_is_kept()
    {
        await ClashedAsync();
        await Desk.ChooseAsync(ClashChoice.Mine);

        Assert.Equal((Mine, Mine, SaveState.Saved), (Desk.Text, Folder.Files[Name], Desk.State));
        Assert.Null(Desk.Clash);
        Assert.Single(Folder.Files);
    }

    [Fact]
    public async Task The_other_is_taken()
    {
        await ClashedAsync();
        await Desk.ChooseAsync(ClashChoice.Theirs);

        Assert.Equal((Theirs, Theirs, SaveState.Saved), (Desk.Text, Folder.Files[Name], Desk.State));
        Assert.Empty(Drafts.Kept);
    }

    [Fact]
    public async Task Both_are_kept_the_other_beside_it_under_a_name_that_is_free()
    {
        Folder.Files["one-2.md"] = "Something else.";
        await ClashedAsync();
        await Desk.ChooseAsync(ClashChoice.Both);

        Assert.Equal(
            (Mine, Theirs, "Something else."),
            (Folder.Files[Name], Folder.Files["one-3.md"], Folder.Files["one-2.md"])
        );
        Assert.Equal((Mine, "one-3.md"), (Desk.Text, Desk.Notice?.Detail));
    }

    [Fact]
    public async Task Both_chosen_twice_keeps_the_other_once()
    {
        await ClashedAsync();
        var answer = new TaskCompletionSource();
        Folder.BeforeAnswering = answer.Task;

        var first = Desk.ChooseAsync(ClashChoice.Both);
        var second = Desk.ChooseAsync(ClashChoice.Both);
        answer.SetResult();
        await Task.WhenAll(first, second);

        Assert.Equal([Mine, Theirs], Folder.Files.OrderBy(file => file.Key.Length).Select(file => file.Value));
    }

    [Fact]
    public async Task A_file_that_changes_again_before_it_is_chosen_is_seen_as_it_is_now()
    {
        await ClashedAsync();
        Folder.Files[Name] = Theirs + "Again.\n";
        await Desk.ChooseAsync(ClashChoice.Mine);
        Assert.Equal(Theirs + "Again.\n", Desk.Clash?.Theirs);

        await Desk.ChooseAsync(ClashChoice.Both);
        Assert.Equal((Mine, Theirs + "Again.\n"), (Folder.Files[Name], Folder.Files["one-2.md"]));
    }

    [Fact]
    public async Task Two_desks_on_one_file_lose_nothing()
    {
        var other = new LessonDesk(Folder.Asked(), new DraftsInMemory(), Clock, new());
        await Desk.OpenAsync(Name);
        await other.OpenAsync(Name);
        Type(Mine);
        other.Type(Theirs);
        await RestAsync();

        var late = new[] { Desk, other }.Single(desk => desk.Clash is not null);
        await late.ChooseAsync(ClashChoice.Both);
        Assert.Equal(new[] { Mine, Theirs }.Order(), Folder.Files.Values.Order());
    }

    [Fact]
    public async Task A_file_that_is_gone_comes_back_only_when_it_is_chosen()
    {
        await LoseAsync();
        Type(Mine);
        await RestAsync();
        await Desk.ReturnAsync();
        Assert.Empty(Folder.Files);
        Assert.Equal(Mine, Desk.Text);

        await Desk.ChooseAsync(ClashChoice.Mine);
        Assert.Equal(Mine, Folder.Files[Name]);
        Assert.Null(Desk.Clash);
    }

    [Fact]
    public async Task A_file_that_is_gone_is_not_written_again_by_leaving_it_and_what_was_written_is_kept()
    {
        Folder.Files["two.md"] = Theirs;
        await LoseAsync();
        Type(Mine);
        Assert.True(await Desk.OpenAsync("two.md"));
        Assert.DoesNotContain(Name, Folder.Files.Keys);

        Assert.True(await Desk.OpenAsync(Name));
        Assert.Equal(Mine, Desk.Text);
        await RestAsync();
        Assert.DoesNotContain(Name, Folder.Files.Keys);
        Assert.NotNull(Desk.Clash);
    }

    [Fact]
    public async Task Where_nothing_was_written_nothing_is_kept_of_a_file_that_is_gone()
    {
        Folder.Files["two.md"] = Theirs;
        await LoseAsync();
        await Desk.OpenAsync("two.md");

        Assert.Empty(Drafts.Left(Name));
        Assert.False(await Desk.OpenAsync(Name));
    }

    [Fact]
    public async Task What_is_only_in_the_browser_is_named_until_it_is_on_the_disk()
    {
        Folder.Files["two.md"] = Theirs;
        await LoseAsync();
        Type(Mine);
        await Desk.OpenAsync("two.md");
        Assert.Equal([Name], Desk.Unsaved);

        await Desk.OpenAsync(Name);
        await Desk.ChooseAsync(ClashChoice.Mine);
        await Desk.RefreshAsync();
        Assert.Empty(Desk.Unsaved);
    }

    /// <summary>The choice is made while a save of what was typed before is out.</summary>
    [Fact]
    public async Task A_lesson_that_is_let_go_while_it_is_saved_stays_closed()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        var answer = new TaskCompletionSource();
        Folder.BeforeAnswering = answer.Task;
        var saved = Desk.SaveAsync();
        Folder.Files.Remove(Name);
        var looked = Desk.ReturnAsync();
        await Clock.PassAsync(TimeSpan.FromSeconds(1));
        await Desk.ChooseAsync(ClashChoice.Theirs);
        answer.SetResult();
        await saved;
        await Clock.PassAsync(TimeSpan.FromSeconds(1));
        await looked;
        if (Desk.Clash is not null)
        {
            await Desk.ChooseAsync(ClashChoice.Theirs);
        }

        await RestAsync();
        Assert.Equal((false, SaveState.Saved), (Desk.IsOpen, Desk.State));
        Assert.Empty(Folder.Files);
    }

    [Fact]
    public async Task A_lesson_whose_file_is_gone_can_be_let_go()
    {
        await LoseAsync();
        await Desk.ChooseAsync(ClashChoice.Theirs);
        await RestAsync();

        Assert.False(Desk.IsOpen);
        Assert.Empty(Folder.Files);
        Assert.False(await Desk.OpenAsync(Name));
    }

    /// <summary>Some programs save a file by taking it away and putting another in its place.</summary>
    [Theory]
    [InlineData(Before)]
    [InlineData(Theirs)]
    public async Task A_file_that_comes_back_is_as_if_it_had_never_been_gone(string text)
    {
        await LoseAsync();
        Folder.Files[Name] = text;
        await Desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(text));

        Assert.Equal((text, null), (Desk.Text, Desk.Clash));
        Assert.True(Desk.IsSaved);
    }

    [Fact]
    public async Task The_same_file_that_comes_back_is_written_on()
    {
        await LoseAsync();
        Type(Mine);
        Folder.Files[Name] = Before;
        await Desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Before));
        Assert.Null(Desk.Clash);
        await RestAsync();

        Assert.Equal(Mine, Folder.Files[Name]);
    }

    [Fact]
    public async Task A_change_that_was_taken_back_elsewhere_is_no_choice_any_more()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        Folder.Files[Name] = Theirs;
        await Desk.SaveAsync();
        Assert.NotNull(Desk.Clash);
        Folder.Files[Name] = Before;
        await Desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Before));
        Assert.Null(Desk.Clash);
        await RestAsync();

        Assert.Equal(Mine, Folder.Files[Name]);
    }

    /// <summary>An answer that was on its way while something newer was saved says nothing of what is on the disk now.</summary>
    [Fact]
    public async Task An_old_answer_does_not_undo_what_was_saved_since()
    {
        await Desk.OpenAsync(Name);
        var answer = new TaskCompletionSource();
        Folder.BeforeReading = answer.Task;
        var looked = Desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));
        Type(Mine);
        await Desk.SaveAsync();
        Assert.Equal(Mine, Folder.Files[Name]);
        answer.SetResult();
        await looked;

        Assert.Equal((Mine, true, null), (Desk.Text, Desk.IsSaved, Desk.Clash));
    }

    [Fact]
    public async Task A_file_that_comes_back_while_one_wrote_is_a_choice()
    {
        await LoseAsync();
        Type(Mine);
        Folder.Files[Name] = Theirs;
        await Desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));

        Assert.Equal((Mine, Theirs), (Desk.Text, Desk.Clash?.Theirs));
    }

    private async Task LoseAsync()
    {
        await Desk.OpenAsync(Name);
        Folder.Files.Remove(Name);
        await Desk.FileChangedAsync(Name, null);
        Assert.Equal((true, Before), (Desk.Clash is { Theirs: null }, Desk.Text));
    }
}
