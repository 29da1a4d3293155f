using Fretloom.Studio.Client.Write.Desk;

namespace Fretloom.Studio.Client.Tests.Write;

/// <summary>What was written and is not on the disk is kept by the browser, and offered when one comes back.</summary>
public sealed class LeftBehindTests : OneDesk
{
    [Fact]
    public async Task A_draft_that_was_left_behind_is_offered_and_taken_up()
    {
        Drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        await Desk.OpenAsync(Name);
        Assert.Equal((Before, Mine), (Desk.Text, Desk.LeftBehind?.Text));

        await Desk.TakeUpAsync();

        Assert.Equal((Mine, Mine), (Desk.Text, Folder.Files[Name]));
        Assert.Empty(Drafts.Left(Name));
    }

    [Fact]
    public async Task A_draft_of_a_file_that_went_on_is_a_choice()
    {
        Drafts.Leave(Name, FolderOfLessons.ETagOf("an older one"), Mine);
        await Desk.OpenAsync(Name);
        await Desk.TakeUpAsync();

        Assert.Equal((Before, true), (Desk.Clash?.Theirs, Desk.Clash?.IsDraft));
        Assert.Equal(Before, Folder.Files[Name]);
        await Desk.ChooseAsync(ClashChoice.Both);
        Assert.Equal((Mine, Before), (Folder.Files[Name], Folder.Files["one-2.md"]));
    }

    [Fact]
    public async Task A_draft_that_is_on_the_disk_is_forgotten()
    {
        Drafts.Leave(Name, null, Before);
        await Desk.OpenAsync(Name);

        Assert.Null(Desk.LeftBehind);
        Assert.Empty(Drafts.Left(Name));
    }

    [Fact]
    public async Task Without_a_host_the_draft_is_opened()
    {
        Drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        Folder.IsAway = true;
        Assert.True(await Desk.OpenAsync(Name));
        Assert.Equal(Mine, Desk.Text);
        Folder.IsAway = false;
        await Desk.ReturnAsync();

        Assert.Equal(Mine, Folder.Files[Name]);
    }

    [Fact]
    public async Task Leaving_is_warned_of_only_where_nothing_keeps_the_text()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        Assert.False(Desk.IsAtRisk);
        Desk.NotKept();
        Assert.True(Desk.IsAtRisk);
        await RestAsync();
        Assert.False(Desk.IsAtRisk);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Ones_own_text_that_was_not_saved_is_there_when_one_comes_back(bool isTakenUp)
    {
        Folder.Files["two.md"] = "Two.";
        await ClashedAsync();
        await Desk.OpenAsync("two.md");
        await Desk.OpenAsync(Name);
        Assert.Equal((Theirs, Mine), (Desk.Text, Desk.LeftBehind?.Text));

        if (isTakenUp)
        {
            await Desk.TakeUpAsync();
            Assert.Equal((Mine, Theirs), (Desk.Text, Desk.Clash?.Theirs));
            Assert.Equal(Mine, Drafts.Kept[Name].Text);
        }
        else
        {
            Type(Theirs + "x");
            await RestAsync();
            Assert.Equal(Theirs + "x", Folder.Files[Name]);
            Assert.Equal([Mine], Drafts.Left(Name));
        }
    }

    [Fact]
    public async Task What_was_typed_before_a_draft_is_taken_up_is_a_choice()
    {
        Drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        await Desk.OpenAsync(Name);
        Type(Theirs);
        await Desk.TakeUpAsync();

        Assert.Equal((Mine, Theirs, true), (Desk.Text, Desk.Clash?.Theirs, Desk.Clash?.IsDraft));
        Assert.Equal(Theirs, Folder.Files[Name]);
    }

    [Fact]
    public async Task What_was_typed_before_a_draft_is_taken_up_is_a_draft_where_nobody_answers()
    {
        Drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        await Desk.OpenAsync(Name);
        Folder.IsAway = true;
        Type(Theirs);
        await Desk.TakeUpAsync();

        Assert.Equal((Mine, Theirs), (Desk.Text, Desk.LeftBehind?.Text));
        Assert.Equal(Mine, Drafts.Kept[Name].Text);
        Assert.Equal([Theirs], Drafts.Left(Name));
    }

    [Fact]
    public async Task A_lesson_that_is_neither_saved_nor_kept_is_not_left()
    {
        Folder.Files["two.md"] = "Two.";
        await Desk.OpenAsync(Name);
        (Folder.IsAway, Drafts.IsFull) = (true, true);
        Type(Mine);

        Assert.False(await Desk.OpenAsync("two.md"));
        Assert.Equal((Name, Mine, "write-state-lost"), (Desk.Name, Desk.Text, Desk.Notice?.Label));
    }

    [Fact]
    public async Task Two_new_lessons_of_one_title_are_both_kept_where_nobody_answers()
    {
        Folder.IsAway = true;
        await Desk.StartAsync(new NewLesson("One", "The first."));
        await Desk.StartAsync(new NewLesson("Two", "The second."));
        await Desk.StartAsync(new NewLesson("One", "The third."));

        Assert.Equal("The third.", Drafts.Kept[Name].Text);
        Assert.Equal(["The first."], Drafts.Left(Name));
        Assert.Equal("The first.", Desk.LeftBehind?.Text);
    }
}
