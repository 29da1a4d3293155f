using Fretloom.Exhibits;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;

namespace Fretloom.Studio.Client.Tests.Write;

public sealed class LessonDeskTests : IDisposable
{
    private const string Name = "one.md";
    private const string Before = "---\ntitle: One\n---\n\nFirst.\n";
    private const string Mine = "---\ntitle: One\n---\n\nFirst, and mine.\n";
    private const string Theirs = "---\ntitle: One\n---\n\nFirst, and theirs.\n";

    private readonly FolderOfLessons _folder = new();
    private readonly DraftsInMemory _drafts = new();
    private readonly StoppedClock _clock = new();
    private readonly LessonDesk _desk;

    public LessonDeskTests()
    {
        _folder.Files[Name] = Before;
        _desk = new LessonDesk(_folder.Asked(), _drafts, _clock, new());
    }

    public void Dispose() => _folder.Dispose();

    // The editor keeps what is typed before it tells the desk.
    private void Type(string text)
    {
        _drafts.Put(_desk.Name!, _desk.ETag, text);
        _desk.Type(text);
    }

    private Task RestAsync() => _clock.PassAsync(LessonDesk.Rest);

    [Fact]
    public async Task What_is_typed_is_saved_when_the_keys_rest()
    {
        Assert.True(await _desk.OpenAsync(Name));
        Type(Mine + "x");
        await _clock.PassAsync(LessonDesk.Rest / 2);
        Type(Mine);
        await _clock.PassAsync(LessonDesk.Rest / 2);
        Assert.Equal((Before, SaveState.Waiting), (_folder.Files[Name], _desk.State));

        await RestAsync();

        Assert.Equal((Mine, SaveState.Saved, 1), (_folder.Files[Name], _desk.State, _folder.Writes));
        Assert.Empty(_drafts.Kept);
    }

    [Fact]
    public async Task Nothing_is_written_where_nothing_is_typed()
    {
        await _desk.OpenAsync(Name);
        await _desk.SaveAsync();
        Type(Mine);
        Type(Before);
        await RestAsync();

        Assert.Equal(0, _folder.Writes);
        Assert.Empty(_drafts.Kept);
    }

    [Fact]
    public async Task What_was_typed_while_it_was_saved_is_saved_after_it()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        _folder.BeforeWriting = () =>
        {
            _folder.BeforeWriting = null;
            Type(Mine + "More.\n");
        };
        await _desk.SaveAsync();
        Assert.False(_desk.IsSaved);
        Assert.Equal(Mine + "More.\n", _drafts.Kept[Name].Text);

        await RestAsync();

        Assert.Equal(Mine + "More.\n", _folder.Files[Name]);
    }

    [Fact]
    public async Task A_host_that_is_away_is_asked_again_and_the_browser_keeps_the_text()
    {
        await _desk.OpenAsync(Name);
        _folder.IsAway = true;
        Type(Mine);
        await RestAsync();
        Assert.Equal(SaveState.Failed, _desk.State);
        Assert.Equal(Mine, _drafts.Kept[Name].Text);

        await _clock.PassAsync(TimeSpan.FromMinutes(1));
        Assert.Equal(SaveState.Failed, _desk.State);
        _folder.IsAway = false;
        await _clock.PassAsync(TimeSpan.FromSeconds(30));

        Assert.Equal((Mine, SaveState.Saved), (_folder.Files[Name], _desk.State));
        Assert.Empty(_drafts.Kept);
    }

    [Fact]
    public async Task An_answer_that_is_lost_is_no_clash()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        _folder.LosesAnswers = true;
        await _desk.SaveAsync();
        _folder.LosesAnswers = false;

        await _desk.ReturnAsync();

        Assert.Null(_desk.Clash);
        Assert.Equal((SaveState.Saved, FolderOfLessons.ETagOf(Mine)), (_desk.State, _desk.ETag));
    }

    [Fact]
    public async Task A_file_that_changed_comes_here_when_nothing_was_typed_and_can_be_taken_back()
    {
        await _desk.OpenAsync(Name);
        var sets = new List<bool>();
        _desk.TextSet += sets.Add;
        _folder.Files[Name] = Theirs;
        await _desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));

        Assert.Equal((Theirs, "write-changed-outside"), (_desk.Text, _desk.Notice?.Label));
        Assert.Equal([false], sets);
        Assert.True(_desk.IsSaved);
    }

    [Fact]
    public async Task Ones_own_save_is_no_change_from_outside()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        await RestAsync();
        await _desk.FileChangedAsync(Name, $"\"{FolderOfLessons.ETagOf(Mine)}\"");

        Assert.Null(_desk.Notice);
        Assert.Equal(Mine, _desk.Text);
    }

    [Fact]
    public async Task Nothing_is_saved_over_a_file_that_changed_until_it_is_chosen()
    {
        await ClashedAsync();
        Type(Mine + "More.\n");
        await _clock.PassAsync(TimeSpan.FromMinutes(1));

        Assert.Equal(Theirs, _desk.Clash?.Theirs);
        Assert.Equal(Theirs, _folder.Files[Name]);
        Assert.Equal(Mine + "More.\n", _drafts.Kept[Name].Text);
    }

    [Fact]
    public async Task Mine_is_kept()
    {
        await ClashedAsync();
        await _desk.ChooseAsync(ClashChoice.Mine);

        Assert.Equal((Mine, Mine, SaveState.Saved), (_desk.Text, _folder.Files[Name], _desk.State));
        Assert.Null(_desk.Clash);
        Assert.Single(_folder.Files);
    }

    [Fact]
    public async Task The_other_is_taken()
    {
        await ClashedAsync();
        await _desk.ChooseAsync(ClashChoice.Theirs);

        Assert.Equal((Theirs, Theirs, SaveState.Saved), (_desk.Text, _folder.Files[Name], _desk.State));
        Assert.Empty(_drafts.Kept);
    }

    [Fact]
    public async Task Both_are_kept_the_other_beside_it_under_a_name_that_is_free()
    {
        _folder.Files["one-2.md"] = "Something else.";
        await ClashedAsync();
        await _desk.ChooseAsync(ClashChoice.Both);

        Assert.Equal(
            (Mine, Theirs, "Something else."),
            (_folder.Files[Name], _folder.Files["one-3.md"], _folder.Files["one-2.md"])
        );
        Assert.Equal((Mine, "one-3.md"), (_desk.Text, _desk.Notice?.Detail));
    }

    [Fact]
    public async Task Both_chosen_twice_keeps_the_other_once()
    {
        await ClashedAsync();
        var answer = new TaskCompletionSource();
        _folder.BeforeAnswering = answer.Task;

        var first = _desk.ChooseAsync(ClashChoice.Both);
        var second = _desk.ChooseAsync(ClashChoice.Both);
        answer.SetResult();
        await Task.WhenAll(first, second);

        Assert.Equal([Mine, Theirs], _folder.Files.OrderBy(file => file.Key.Length).Select(file => file.Value));
    }

    [Fact]
    public async Task A_file_that_changes_again_before_it_is_chosen_is_seen_as_it_is_now()
    {
        await ClashedAsync();
        _folder.Files[Name] = Theirs + "Again.\n";
        await _desk.ChooseAsync(ClashChoice.Mine);
        Assert.Equal(Theirs + "Again.\n", _desk.Clash?.Theirs);

        await _desk.ChooseAsync(ClashChoice.Both);
        Assert.Equal((Mine, Theirs + "Again.\n"), (_folder.Files[Name], _folder.Files["one-2.md"]));
    }

    [Fact]
    public async Task Two_desks_on_one_file_lose_nothing()
    {
        var other = new LessonDesk(_folder.Asked(), new DraftsInMemory(), _clock, new());
        await _desk.OpenAsync(Name);
        await other.OpenAsync(Name);
        Type(Mine);
        other.Type(Theirs);
        await RestAsync();

        var late = new[] { _desk, other }.Single(desk => desk.Clash is not null);
        await late.ChooseAsync(ClashChoice.Both);
        Assert.Equal(new[] { Mine, Theirs }.Order(), _folder.Files.Values.Order());
    }

    [Fact]
    public async Task A_file_that_is_gone_comes_back_only_when_it_is_chosen()
    {
        await LoseAsync();
        Type(Mine);
        await RestAsync();
        await _desk.ReturnAsync();
        Assert.Empty(_folder.Files);
        Assert.Equal(Mine, _desk.Text);

        await _desk.ChooseAsync(ClashChoice.Mine);
        Assert.Equal(Mine, _folder.Files[Name]);
        Assert.Null(_desk.Clash);
    }

    [Fact]
    public async Task A_file_that_is_gone_is_not_written_again_by_leaving_it_and_what_was_written_is_kept()
    {
        _folder.Files["two.md"] = Theirs;
        await LoseAsync();
        Type(Mine);
        Assert.True(await _desk.OpenAsync("two.md"));
        Assert.DoesNotContain(Name, _folder.Files.Keys);

        Assert.True(await _desk.OpenAsync(Name));
        Assert.Equal(Mine, _desk.Text);
        await RestAsync();
        Assert.DoesNotContain(Name, _folder.Files.Keys);
        Assert.NotNull(_desk.Clash);
    }

    [Fact]
    public async Task Where_nothing_was_written_nothing_is_kept_of_a_file_that_is_gone()
    {
        _folder.Files["two.md"] = Theirs;
        await LoseAsync();
        await _desk.OpenAsync("two.md");

        Assert.Empty(_drafts.Left(Name));
        Assert.False(await _desk.OpenAsync(Name));
    }

    [Fact]
    public async Task What_is_only_in_the_browser_is_named_until_it_is_on_the_disk()
    {
        _folder.Files["two.md"] = Theirs;
        await LoseAsync();
        Type(Mine);
        await _desk.OpenAsync("two.md");
        Assert.Equal([Name], _desk.Unsaved);

        await _desk.OpenAsync(Name);
        await _desk.ChooseAsync(ClashChoice.Mine);
        await _desk.RefreshAsync();
        Assert.Empty(_desk.Unsaved);
    }

    /// <summary>The choice is made while a save of what was typed before is out.</summary>
    [Fact]
    public async Task A_lesson_that_is_let_go_while_it_is_saved_stays_closed()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        var answer = new TaskCompletionSource();
        _folder.BeforeAnswering = answer.Task;
        var saved = _desk.SaveAsync();
        _folder.Files.Remove(Name);
        var looked = _desk.ReturnAsync();
        await _clock.PassAsync(TimeSpan.FromSeconds(1));
        await _desk.ChooseAsync(ClashChoice.Theirs);
        answer.SetResult();
        await saved;
        await _clock.PassAsync(TimeSpan.FromSeconds(1));
        await looked;
        if (_desk.Clash is not null)
        {
            await _desk.ChooseAsync(ClashChoice.Theirs);
        }

        await RestAsync();
        Assert.Equal((false, SaveState.Saved), (_desk.IsOpen, _desk.State));
        Assert.Empty(_folder.Files);
    }

    [Fact]
    public async Task A_lesson_whose_file_is_gone_can_be_let_go()
    {
        await LoseAsync();
        await _desk.ChooseAsync(ClashChoice.Theirs);
        await RestAsync();

        Assert.False(_desk.IsOpen);
        Assert.Empty(_folder.Files);
        Assert.False(await _desk.OpenAsync(Name));
    }

    /// <summary>Some programs save a file by taking it away and putting another in its place.</summary>
    [Theory]
    [InlineData(Before)]
    [InlineData(Theirs)]
    public async Task A_file_that_comes_back_is_as_if_it_had_never_been_gone(string text)
    {
        await LoseAsync();
        _folder.Files[Name] = text;
        await _desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(text));

        Assert.Equal((text, null), (_desk.Text, _desk.Clash));
        Assert.True(_desk.IsSaved);
    }

    [Fact]
    public async Task The_same_file_that_comes_back_is_written_on()
    {
        await LoseAsync();
        Type(Mine);
        _folder.Files[Name] = Before;
        await _desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Before));
        Assert.Null(_desk.Clash);
        await RestAsync();

        Assert.Equal(Mine, _folder.Files[Name]);
    }

    [Fact]
    public async Task A_change_that_was_taken_back_elsewhere_is_no_choice_any_more()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        _folder.Files[Name] = Theirs;
        await _desk.SaveAsync();
        Assert.NotNull(_desk.Clash);
        _folder.Files[Name] = Before;
        await _desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Before));
        Assert.Null(_desk.Clash);
        await RestAsync();

        Assert.Equal(Mine, _folder.Files[Name]);
    }

    /// <summary>An answer that was on its way while something newer was saved says nothing of what is on the disk now.</summary>
    [Fact]
    public async Task An_old_answer_does_not_undo_what_was_saved_since()
    {
        await _desk.OpenAsync(Name);
        var answer = new TaskCompletionSource();
        _folder.BeforeReading = answer.Task;
        var looked = _desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));
        Type(Mine);
        await _desk.SaveAsync();
        Assert.Equal(Mine, _folder.Files[Name]);
        answer.SetResult();
        await looked;

        Assert.Equal((Mine, true, null), (_desk.Text, _desk.IsSaved, _desk.Clash));
    }

    [Fact]
    public async Task A_file_that_comes_back_while_one_wrote_is_a_choice()
    {
        await LoseAsync();
        Type(Mine);
        _folder.Files[Name] = Theirs;
        await _desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));

        Assert.Equal((Mine, Theirs), (_desk.Text, _desk.Clash?.Theirs));
    }

    private async Task LoseAsync()
    {
        await _desk.OpenAsync(Name);
        _folder.Files.Remove(Name);
        await _desk.FileChangedAsync(Name, null);
        Assert.Equal((true, Before), (_desk.Clash is { Theirs: null }, _desk.Text));
    }

    [Fact]
    public async Task A_draft_that_was_left_behind_is_offered_and_taken_up()
    {
        _drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        await _desk.OpenAsync(Name);
        Assert.Equal((Before, Mine), (_desk.Text, _desk.LeftBehind?.Text));

        await _desk.TakeUpAsync();

        Assert.Equal((Mine, Mine), (_desk.Text, _folder.Files[Name]));
        Assert.Empty(_drafts.Left(Name));
    }

    [Fact]
    public async Task A_draft_of_a_file_that_went_on_is_a_choice()
    {
        _drafts.Leave(Name, FolderOfLessons.ETagOf("an older one"), Mine);
        await _desk.OpenAsync(Name);
        await _desk.TakeUpAsync();

        Assert.Equal((Before, true), (_desk.Clash?.Theirs, _desk.Clash?.IsDraft));
        Assert.Equal(Before, _folder.Files[Name]);
        await _desk.ChooseAsync(ClashChoice.Both);
        Assert.Equal((Mine, Before), (_folder.Files[Name], _folder.Files["one-2.md"]));
    }

    [Fact]
    public async Task A_draft_that_is_on_the_disk_is_forgotten()
    {
        _drafts.Leave(Name, null, Before);
        await _desk.OpenAsync(Name);

        Assert.Null(_desk.LeftBehind);
        Assert.Empty(_drafts.Left(Name));
    }

    [Fact]
    public async Task Without_a_host_the_draft_is_opened()
    {
        _drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        _folder.IsAway = true;
        Assert.True(await _desk.OpenAsync(Name));
        Assert.Equal(Mine, _desk.Text);
        _folder.IsAway = false;
        await _desk.ReturnAsync();

        Assert.Equal(Mine, _folder.Files[Name]);
    }

    [Fact]
    public async Task A_new_lesson_has_a_name_that_nothing_has()
    {
        _folder.Files["one-2.md"] = "x";
        await _desk.StartAsync("One");

        Assert.Equal("one-3.md", _desk.Name);
        Assert.Equal((Before, "---\ntitle: One\n---\n\n"), (_folder.Files[Name], _folder.Files["one-3.md"]));
    }

    [Fact]
    public async Task A_copy_leaves_the_file_it_comes_from_alone()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        await _desk.SaveAsAsync("Two");
        await RestAsync();

        Assert.Equal((Before, Mine, "two.md"), (_folder.Files[Name], _folder.Files["two.md"], _desk.Name));
    }

    [Fact]
    public async Task Another_lesson_is_opened_only_after_this_one_is_saved_or_kept()
    {
        _folder.Files["two.md"] = "Two.";
        await _desk.OpenAsync(Name);
        Type(Mine);
        await _desk.OpenAsync("two.md");

        Assert.Equal((Mine, "Two."), (_folder.Files[Name], _desk.Text));
    }

    [Fact]
    public async Task What_the_host_refuses_is_told_in_its_words_and_tried_again_when_it_changed()
    {
        await _desk.OpenAsync(Name);
        Type(new string('x', 1_000_001));
        await RestAsync();
        Assert.Equal((SaveState.Refused, "It is too large."), (_desk.State, _desk.Trouble));
        await _clock.PassAsync(TimeSpan.FromMinutes(1));
        Type(Mine);
        await RestAsync();

        Assert.Equal(Mine, _folder.Files[Name]);
    }

    [Theory]
    [InlineData("---\r\ntitle: One\r\n---\r\n\r\nFirst.\r\n")]
    [InlineData("\uFEFF---\ntitle: One\n---\n\nFirst.\n")]
    public async Task A_file_keeps_its_line_ends_and_its_mark(string file)
    {
        _folder.Files[Name] = file;
        await _desk.OpenAsync(Name);
        Assert.Equal(Before, _desk.Text);
        Type(Mine);
        await RestAsync();

        Assert.Equal(file.Replace("First.", "First, and mine.", StringComparison.Ordinal), _folder.Files[Name]);
    }

    private static Exhibit Seen =>
        ShowQuestion.Answer("every D, on a low-G ukulele, in Bb major", ShowDefaults.Standard).Value!;

    [Fact]
    public async Task A_block_goes_to_the_end_where_the_cursor_never_was()
    {
        await _desk.OpenAsync(Name);
        await _desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        await RestAsync();

        Assert.Equal(Before.TrimEnd() + "\n\n```show\nevery D\n```\n", _folder.Files[Name]);
    }

    [Fact]
    public async Task Blocks_without_a_lesson_go_into_one_new_one()
    {
        await _desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        await _desk.InsertBlockAsync("```show\nevery G\n```", Seen);
        await RestAsync();

        var text = _folder.Files[_desk.Name!];
        Assert.Contains("every D", text, StringComparison.Ordinal);
        Assert.Contains("every G", text, StringComparison.Ordinal);
        Assert.Equal("every-d.md", _desk.Name);
        Assert.StartsWith(
            "---\ntitle: Every D\ninstrument: low-G ukulele\nkey: Bb major\n---\n",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_block_goes_to_where_the_cursor_was_left()
    {
        _folder.Files[Name] = "# One\n\nFirst.\n\nSecond.\n";
        await _desk.OpenAsync(Name);
        _desk.Live = () => new Written(_folder.Files[Name], 9);
        _desk.LeaveEditor();
        Assert.Null(_desk.Live);

        await _desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        Assert.Equal("# One\n\nFirst.\n\n```show\nevery D\n```\n\n\nSecond.\n", _desk.Text);
        Assert.Equal(_desk.Text.IndexOf("\n\n\nSecond", StringComparison.Ordinal) + 1, _desk.TakeInserted());
        Assert.Null(_desk.TakeInserted());

        await _desk.InsertBlockAsync("```show\nevery G\n```", Seen);
        Assert.EndsWith("```\n\n```show\nevery G\n```\n\n\nSecond.\n", _desk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_lesson_knows_nothing_of_the_cursor_of_the_last()
    {
        _folder.Files["two.md"] = Theirs;
        await _desk.OpenAsync(Name);
        _desk.Live = () => new Written(Before, 1);
        _desk.LeaveEditor();
        await _desk.OpenAsync("two.md");

        Assert.Null(_desk.Cursor);
    }

    [Fact]
    public async Task A_new_lesson_that_is_begun_with_a_block_takes_what_is_typed_at_once()
    {
        var answer = new TaskCompletionSource();
        _folder.BeforeAnswering = answer.Task;
        var begun = _desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        Assert.Equal(_desk.Text.Length, _desk.TakeInserted());
        var typed = _desk.Text + "More.";
        _desk.Live = () => new Written(typed, typed.Length);
        answer.SetResult();
        await begun;
        await RestAsync();

        Assert.Equal((typed, null), (_desk.Text, _desk.TakeInserted()));
        Assert.Equal(typed, _folder.Files[_desk.Name!]);
    }

    [Fact]
    public async Task What_is_not_opened_says_why()
    {
        _folder.Files["utf16.md"] = "#\0 \0T\0\n\0";
        Assert.False(await _desk.OpenAsync("utf16.md"));
        Assert.Equal(new Notice("write-no-text", "utf16.md"), _desk.Notice);

        _folder.Files["long.md"] = new string('a', 1_000_001);
        Assert.False(await _desk.OpenAsync("long.md"));

        Assert.Equal(new Notice("write-not-opened", "long.md: It is too large."), _desk.Notice);
    }

    [Fact]
    public async Task What_keeps_the_host_from_saving_is_told_in_its_words_and_tried_again()
    {
        await _desk.OpenAsync(Name);
        _folder.Trouble = "The disk is full.";
        Type(Mine);
        await RestAsync();
        Assert.Equal((SaveState.Failed, "The disk is full."), (_desk.State, _desk.Trouble));

        _folder.Trouble = null;
        await _clock.PassAsync(TimeSpan.FromMinutes(1));
        Assert.Equal((SaveState.Saved, ""), (_desk.State, _desk.Trouble));
    }

    [Fact]
    public async Task What_stands_in_the_editor_counts_before_it_is_told()
    {
        await _desk.OpenAsync(Name);
        _desk.Live = () => new Written(Mine, null);
        _folder.Files[Name] = Theirs;
        await _desk.FileChangedAsync(Name, FolderOfLessons.ETagOf(Theirs));

        Assert.Equal((Theirs, Mine), (_desk.Clash?.Theirs, _desk.Text));
    }

    [Fact]
    public async Task Leaving_is_warned_of_only_where_nothing_keeps_the_text()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        Assert.False(_desk.IsAtRisk);
        _desk.NotKept();
        Assert.True(_desk.IsAtRisk);
        await RestAsync();
        Assert.False(_desk.IsAtRisk);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Ones_own_text_that_was_not_saved_is_there_when_one_comes_back(bool isTakenUp)
    {
        _folder.Files["two.md"] = "Two.";
        await ClashedAsync();
        await _desk.OpenAsync("two.md");
        await _desk.OpenAsync(Name);
        Assert.Equal((Theirs, Mine), (_desk.Text, _desk.LeftBehind?.Text));

        if (isTakenUp)
        {
            await _desk.TakeUpAsync();
            Assert.Equal((Mine, Theirs), (_desk.Text, _desk.Clash?.Theirs));
            Assert.Equal(Mine, _drafts.Kept[Name].Text);
        }
        else
        {
            Type(Theirs + "x");
            await RestAsync();
            Assert.Equal(Theirs + "x", _folder.Files[Name]);
            Assert.Equal([Mine], _drafts.Left(Name));
        }
    }

    [Fact]
    public async Task What_was_typed_before_a_draft_is_taken_up_is_a_choice()
    {
        _drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        await _desk.OpenAsync(Name);
        Type(Theirs);
        await _desk.TakeUpAsync();

        Assert.Equal((Mine, Theirs, true), (_desk.Text, _desk.Clash?.Theirs, _desk.Clash?.IsDraft));
        Assert.Equal(Theirs, _folder.Files[Name]);
    }

    [Fact]
    public async Task What_was_typed_before_a_draft_is_taken_up_is_a_draft_where_nobody_answers()
    {
        _drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Mine);
        await _desk.OpenAsync(Name);
        _folder.IsAway = true;
        Type(Theirs);
        await _desk.TakeUpAsync();

        Assert.Equal((Mine, Theirs), (_desk.Text, _desk.LeftBehind?.Text));
        Assert.Equal(Mine, _drafts.Kept[Name].Text);
        Assert.Equal([Theirs], _drafts.Left(Name));
    }

    [Fact]
    public async Task A_lesson_that_is_neither_saved_nor_kept_is_not_left()
    {
        _folder.Files["two.md"] = "Two.";
        await _desk.OpenAsync(Name);
        (_folder.IsAway, _drafts.IsFull) = (true, true);
        Type(Mine);

        Assert.False(await _desk.OpenAsync("two.md"));
        Assert.Equal((Name, Mine, "write-state-lost"), (_desk.Name, _desk.Text, _desk.Notice?.Label));
    }

    [Fact]
    public async Task A_new_lesson_that_never_came_to_the_disk_is_opened_and_saved()
    {
        _drafts.Leave("two.md", null, Mine);
        Assert.True(await _desk.OpenAsync("two.md"));
        await RestAsync();

        Assert.Equal((Mine, Mine, SaveState.Saved), (_desk.Text, _folder.Files["two.md"], _desk.State));
        Assert.Empty(_drafts.Left("two.md"));
    }

    [Fact]
    public async Task Two_new_lessons_of_one_title_are_both_kept_where_nobody_answers()
    {
        _folder.IsAway = true;
        await _desk.StartAsync(new NewLesson("One", "The first."));
        await _desk.StartAsync(new NewLesson("Two", "The second."));
        await _desk.StartAsync(new NewLesson("One", "The third."));

        Assert.Equal("The third.", _drafts.Kept[Name].Text);
        Assert.Equal(["The first."], _drafts.Left(Name));
        Assert.Equal("The first.", _desk.LeftBehind?.Text);
    }

    [Fact]
    public async Task A_name_that_the_folder_does_not_take_is_told_and_not_tried_for_ever()
    {
        _folder.Untaken = "four.md";
        await _desk.StartAsync("Four");
        await _clock.PassAsync(TimeSpan.FromMinutes(1));

        Assert.Equal((SaveState.Refused, "write-name-refused"), (_desk.State, _desk.Notice?.Label));
        Assert.Equal(1, _folder.Puts);
        await _desk.SaveAsAsync("Five");
        Assert.True(_folder.Files.ContainsKey("five.md"));
    }

    [Fact]
    public async Task An_answer_that_comes_late_changes_no_other_lesson()
    {
        _folder.Files["two.md"] = "Two.";
        await _desk.OpenAsync("two.md");
        var late = new TaskCompletionSource();
        _folder.BeforeWriting = () =>
        {
            _folder.BeforeWriting = null;
            _folder.BeforeAnswering = late.Task;
        };
        // The list of lessons was not read, so that the new lesson finds its name taken, and asks what is there.
        var begun = _desk.StartAsync(new NewLesson("One", "Mine."));
        await _desk.OpenAsync("two.md");
        late.SetResult();
        await begun;

        Assert.Equal(("two.md", "Two.", "Two."), (_desk.Name, _desk.Text, _folder.Files["two.md"]));
        Assert.Equal(["one.md", "two.md"], _folder.Files.Keys.Order());
        Assert.Equal("Mine.", _drafts.Kept[Name].Text);
    }

    [Fact]
    public async Task A_copy_that_is_asked_for_while_it_is_saved_is_saved_too()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        var late = new TaskCompletionSource();
        _folder.BeforeAnswering = late.Task;
        var saved = _desk.SaveAsync();
        var copied = _desk.SaveAsAsync("Two");
        late.SetResult();
        await Task.WhenAll(saved, copied);
        await RestAsync();

        Assert.Equal(("two.md", SaveState.Saved, Mine), (_desk.Name, _desk.State, _folder.Files["two.md"]));
    }

    private async Task ClashedAsync()
    {
        await _desk.OpenAsync(Name);
        Type(Mine);
        _folder.Files[Name] = Theirs;
        await RestAsync();
        Assert.NotNull(_desk.Clash);
    }
}
