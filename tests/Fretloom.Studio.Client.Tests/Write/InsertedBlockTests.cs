using Fretloom.Exhibits;
using Fretloom.Studio.Client.Write.Desk;

namespace Fretloom.Studio.Client.Tests.Write;

/// <summary>Blocks are put into the lesson that is open, or into a new one.</summary>
public sealed class InsertedBlockTests : OneDesk
{
    private static Exhibit Seen =>
        ShowQuestion.Answer("every D, on a low-G ukulele, in Bb major", ShowDefaults.Standard).Value!;

    [Fact]
    public async Task A_block_goes_to_the_end_where_the_cursor_never_was()
    {
        await Desk.OpenAsync(Name);
        await Desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        await RestAsync();

        Assert.Equal(Before.TrimEnd() + "\n\n```show\nevery D\n```\n", Folder.Files[Name]);
    }

    [Fact]
    public async Task Blocks_without_a_lesson_go_into_one_new_one()
    {
        await Desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        await Desk.InsertBlockAsync("```show\nevery G\n```", Seen);
        await RestAsync();

        var text = Folder.Files[Desk.Name!];
        Assert.Contains("every D", text, StringComparison.Ordinal);
        Assert.Contains("every G", text, StringComparison.Ordinal);
        Assert.Equal("every-d.md", Desk.Name);
        Assert.StartsWith(
            "---\ntitle: Every D\ninstrument: low-G ukulele\nkey: Bb major\n---\n",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_block_goes_to_where_the_cursor_was_left()
    {
        Folder.Files[Name] = "# One\n\nFirst.\n\nSecond.\n";
        await Desk.OpenAsync(Name);
        Desk.Live = () => new Written(Folder.Files[Name], 9);
        Desk.LeaveEditor();
        Assert.Null(Desk.Live);

        await Desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        Assert.Equal("# One\n\nFirst.\n\n```show\nevery D\n```\n\n\nSecond.\n", Desk.Text);
        Assert.Equal(Desk.Text.IndexOf("\n\n\nSecond", StringComparison.Ordinal) + 1, Desk.TakeInserted());
        Assert.Null(Desk.TakeInserted());

        await Desk.InsertBlockAsync("```show\nevery G\n```", Seen);
        Assert.EndsWith("```\n\n```show\nevery G\n```\n\n\nSecond.\n", Desk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_lesson_knows_nothing_of_the_cursor_of_the_last()
    {
        Folder.Files["two.md"] = Theirs;
        await Desk.OpenAsync(Name);
        Desk.Live = () => new Written(Before, 1);
        Desk.LeaveEditor();
        await Desk.OpenAsync("two.md");

        Assert.Null(Desk.Cursor);
    }

    [Fact]
    public async Task A_new_lesson_that_is_begun_with_a_block_takes_what_is_typed_at_once()
    {
        var answer = new TaskCompletionSource();
        Folder.BeforeAnswering = answer.Task;
        var begun = Desk.InsertBlockAsync("```show\nevery D\n```", Seen);
        Assert.Equal(Desk.Text.Length, Desk.TakeInserted());
        var typed = Desk.Text + "More.";
        Desk.Live = () => new Written(typed, typed.Length);
        answer.SetResult();
        await begun;
        await RestAsync();

        Assert.Equal((typed, null), (Desk.Text, Desk.TakeInserted()));
        Assert.Equal(typed, Folder.Files[Desk.Name!]);
    }
}
