using Fretloom.Studio.Client.Write.Desk;

namespace Fretloom.Studio.Client.Tests.Write;

/// <summary>Lessons are opened, begun and saved.</summary>
public sealed class LessonDeskTests : OneDesk
{
    [Fact]
    public async Task What_is_typed_is_saved_when_the_keys_rest()
    {
        Assert.True(await Desk.OpenAsync(Name));
        Type(Mine + "x");
        await Clock.PassAsync(LessonDesk.Rest / 2);
        Type(Mine);
        await Clock.PassAsync(LessonDesk.Rest / 2);
        Assert.Equal((Before, SaveState.Waiting), (Folder.Files[Name], Desk.State));

        await RestAsync();

        Assert.Equal((Mine, SaveState.Saved, 1), (Folder.Files[Name], Desk.State, Folder.Writes));
        Assert.Empty(Drafts.Kept);
    }

    [Fact]
    public async Task Nothing_is_written_where_nothing_is_typed()
    {
        await Desk.OpenAsync(Name);
        await Desk.SaveAsync();
        Type(Mine);
        Type(Before);
        await RestAsync();

        Assert.Equal(0, Folder.Writes);
        Assert.Empty(Drafts.Kept);
    }

    [Fact]
    public async Task What_was_typed_while_it_was_saved_is_saved_after_it()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        Folder.BeforeWriting = () =>
        {
            Folder.BeforeWriting = null;
            Type(Mine + "More.\n");
        };
        await Desk.SaveAsync();
        Assert.False(Desk.IsSaved);
        Assert.Equal(Mine + "More.\n", Drafts.Kept[Name].Text);

        await RestAsync();

        Assert.Equal(Mine + "More.\n", Folder.Files[Name]);
    }

    [Fact]
    public async Task A_host_that_is_away_is_asked_again_and_the_browser_keeps_the_text()
    {
        await Desk.OpenAsync(Name);
        Folder.IsAway = true;
        Type(Mine);
        await RestAsync();
        Assert.Equal(SaveState.Failed, Desk.State);
        Assert.Equal(Mine, Drafts.Kept[Name].Text);

        await Clock.PassAsync(TimeSpan.FromMinutes(1));
        Assert.Equal(SaveState.Failed, Desk.State);
        Folder.IsAway = false;
        await Clock.PassAsync(TimeSpan.FromSeconds(30));

        Assert.Equal((Mine, SaveState.Saved), (Folder.Files[Name], Desk.State));
        Assert.Empty(Drafts.Kept);
    }

    [Fact]
    public async Task A_new_lesson_has_a_name_that_nothing_has()
    {
        Folder.Files["one-2.md"] = "x";
        await Desk.StartAsync("One");

        Assert.Equal("one-3.md", Desk.Name);
        Assert.Equal((Before, "---\ntitle: One\n---\n\n"), (Folder.Files[Name], Folder.Files["one-3.md"]));
    }

    [Fact]
    public async Task A_copy_leaves_the_file_it_comes_from_alone()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        await Desk.SaveAsAsync("Two");
        await RestAsync();

        Assert.Equal((Before, Mine, "two.md"), (Folder.Files[Name], Folder.Files["two.md"], Desk.Name));
    }

    [Fact]
    public async Task Another_lesson_is_opened_only_after_this_one_is_saved_or_kept()
    {
        Folder.Files["two.md"] = "Two.";
        await Desk.OpenAsync(Name);
        Type(Mine);
        await Desk.OpenAsync("two.md");

        Assert.Equal((Mine, "Two."), (Folder.Files[Name], Desk.Text));
    }

    [Fact]
    public async Task What_the_host_refuses_is_told_in_its_words_and_tried_again_when_it_changed()
    {
        await Desk.OpenAsync(Name);
        Type(new string('x', 1_000_001));
        await RestAsync();
        Assert.Equal((SaveState.Refused, "It is too large."), (Desk.State, Desk.Trouble));
        await Clock.PassAsync(TimeSpan.FromMinutes(1));
        Type(Mine);
        await RestAsync();

        Assert.Equal(Mine, Folder.Files[Name]);
    }

    [Theory]
    [InlineData("---\r\ntitle: One\r\n---\r\n\r\nFirst.\r\n")]
    [InlineData("\uFEFF---\ntitle: One\n---\n\nFirst.\n")]
    public async Task A_file_keeps_its_line_ends_and_its_mark(string file)
    {
        Folder.Files[Name] = file;
        await Desk.OpenAsync(Name);
        Assert.Equal(Before, Desk.Text);
        Type(Mine);
        await RestAsync();

        Assert.Equal(file.Replace("First.", "First, and mine.", StringComparison.Ordinal), Folder.Files[Name]);
    }

    [Fact]
    public async Task What_is_not_opened_says_why()
    {
        Folder.Files["utf16.md"] = "#\0 \0T\0\n\0";
        Assert.False(await Desk.OpenAsync("utf16.md"));
        Assert.Equal(new Notice("write-no-text", "utf16.md"), Desk.Notice);

        Folder.Files["long.md"] = new string('a', 1_000_001);
        Assert.False(await Desk.OpenAsync("long.md"));

        Assert.Equal(new Notice("write-not-opened", "long.md: It is too large."), Desk.Notice);
    }

    [Fact]
    public async Task What_keeps_the_host_from_saving_is_told_in_its_words_and_tried_again()
    {
        await Desk.OpenAsync(Name);
        Folder.Trouble = "The disk is full.";
        Type(Mine);
        await RestAsync();
        Assert.Equal((SaveState.Failed, "The disk is full."), (Desk.State, Desk.Trouble));

        Folder.Trouble = null;
        await Clock.PassAsync(TimeSpan.FromMinutes(1));
        Assert.Equal((SaveState.Saved, ""), (Desk.State, Desk.Trouble));
    }

    [Fact]
    public async Task What_stands_in_the_editor_counts_before_it_is_told()
    {
        await Desk.OpenAsync(Name);
        Desk.Live = () => new Written(Mine, null);
        Folder.Files[Name] = Theirs;
        await Desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));

        Assert.Equal((Theirs, Mine), (Desk.Clash?.Theirs, Desk.Text));
    }

    [Fact]
    public async Task A_new_lesson_that_never_came_to_the_disk_is_opened_and_saved()
    {
        Drafts.Leave("two.md", null, Mine);
        Assert.True(await Desk.OpenAsync("two.md"));
        await RestAsync();

        Assert.Equal((Mine, Mine, SaveState.Saved), (Desk.Text, Folder.Files["two.md"], Desk.State));
        Assert.Empty(Drafts.Left("two.md"));
    }

    [Fact]
    public async Task A_name_that_the_folder_does_not_take_is_told_and_not_tried_for_ever()
    {
        Folder.Untaken = "four.md";
        await Desk.StartAsync("Four");
        await Clock.PassAsync(TimeSpan.FromMinutes(1));

        Assert.Equal((SaveState.Refused, "write-name-refused"), (Desk.State, Desk.Notice?.Label));
        Assert.Equal(1, Folder.Puts);
        await Desk.SaveAsAsync("Five");
        Assert.True(Folder.Files.ContainsKey("five.md"));
    }

    [Fact]
    public async Task An_answer_that_comes_late_changes_no_other_lesson()
    {
        Folder.Files["two.md"] = "Two.";
        await Desk.OpenAsync("two.md");
        var late = new TaskCompletionSource();
        Folder.BeforeWriting = () =>
        {
            Folder.BeforeWriting = null;
            Folder.BeforeAnswering = late.Task;
        };
        // The list of lessons was not read, so that the new lesson finds its name taken, and asks what is there.
        var begun = Desk.StartAsync(new NewLesson("One", "Mine."));
        await Desk.OpenAsync("two.md");
        late.SetResult();
        await begun;

        Assert.Equal(("two.md", "Two.", "Two."), (Desk.Name, Desk.Text, Folder.Files["two.md"]));
        Assert.Equal(["one.md", "two.md"], Folder.Files.Keys.Order());
        Assert.Equal("Mine.", Drafts.Kept[Name].Text);
    }

    [Fact]
    public async Task A_copy_that_is_asked_for_while_it_is_saved_is_saved_too()
    {
        await Desk.OpenAsync(Name);
        Type(Mine);
        var late = new TaskCompletionSource();
        Folder.BeforeAnswering = late.Task;
        var saved = Desk.SaveAsync();
        var copied = Desk.SaveAsAsync("Two");
        late.SetResult();
        await Task.WhenAll(saved, copied);
        await RestAsync();

        Assert.Equal(("two.md", SaveState.Saved, Mine), (Desk.Name, Desk.State, Folder.Files["two.md"]));
    }
}
