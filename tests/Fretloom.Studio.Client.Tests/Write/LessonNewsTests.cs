using Bunit;
using Fretloom.Studio.Client.Words;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;
using Microsoft.Extensions.DependencyInjection;

namespace Fretloom.Studio.Client.Tests.Write;

public sealed class LessonNewsTests : BunitContext
{
    private const string Name = "one.md";
    private const string Before = "---\ntitle: One\n---\n\nFirst.\n";

    private readonly FolderOfLessons _folder = new();
    private readonly DraftsInMemory _drafts = new();
    private readonly LessonDesk _desk;

    public LessonNewsTests()
    {
        _folder.Files[Name] = Before;
        _desk = new LessonDesk(_folder.Asked(), _drafts, new StoppedClock(), new());
        Services.AddSingleton(_desk);
        Services.AddSingleton<Labels>();
    }

    [Theory]
    [InlineData(0, "Mine.", null)]
    [InlineData(1, "Theirs.", null)]
    [InlineData(2, "Mine.", "Theirs.")]
    public async Task A_clash_shows_what_is_different_and_is_decided_by_a_button(
        int button,
        string here,
        string? beside
    )
    {
        await _desk.OpenAsync(Name);
        var news = Render<LessonNews>();
        await news.InvokeAsync(() => _desk.Type(Before + "Mine.\n"));
        _folder.Files[Name] = Before + "Theirs.\n";
        await news.InvokeAsync(() => _desk.SaveAsync());

        Assert.Contains("Theirs.", news.Find("li.gone").TextContent, StringComparison.Ordinal);
        Assert.Contains("Mine.", news.Find("li.new").TextContent, StringComparison.Ordinal);
        await news.FindAll(".choices button")[button].ClickAsync(new());

        Assert.Empty(news.FindAll(".choices"));
        Assert.Equal(Before + here + "\n", _folder.Files[Name]);
        Assert.Equal(beside is null ? null : Before + beside + "\n", _folder.Files.GetValueOrDefault("one-2.md"));
    }

    [Theory]
    [InlineData(0, Before)]
    [InlineData(1, null)]
    public async Task A_file_that_is_gone_is_put_back_or_let_go_by_a_button(int button, string? onDisk)
    {
        await _desk.OpenAsync(Name);
        var news = Render<LessonNews>();
        _folder.Files.Remove(Name);
        await news.InvokeAsync(() => _desk.FileChangedAsync(Name, null));

        Assert.Contains("is gone from the folder", news.Markup, StringComparison.Ordinal);
        await news.FindAll(".choices button")[button].ClickAsync(new());

        Assert.Empty(news.FindAll(".choices"));
        Assert.Equal(onDisk, _folder.Files.GetValueOrDefault(Name));
        Assert.Equal(onDisk is not null, _desk.IsOpen);
    }

    [Fact]
    public async Task A_draft_that_was_left_behind_is_offered()
    {
        _drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Before + "Lost?\n");
        var news = Render<LessonNews>();
        await news.InvokeAsync(() => _desk.OpenAsync(Name));

        Assert.Contains(
            $"{DateTimeOffset.UnixEpoch.ToLocalTime():yyyy-MM-dd HH:mm}",
            news.Markup,
            StringComparison.Ordinal
        );
        await news.FindAll(".choices button")[0].ClickAsync(new());
        Assert.Equal(Before + "Lost?\n", _folder.Files[Name]);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public async Task What_was_decided_is_told_so_that_the_editor_gets_the_keys(int button)
    {
        _drafts.Leave(Name, FolderOfLessons.ETagOf(Before), Before + "Lost?\n");
        var decided = 0;
        var news = Render<LessonNews>(with => with.Add(one => one.Decided, () => decided++));
        await news.InvokeAsync(() => _desk.OpenAsync(Name));
        await news.FindAll(".choices button")[button].ClickAsync(new());

        Assert.Equal(1, decided);
        Assert.Empty(news.FindAll(".choices"));
        Assert.Empty(_drafts.Left(Name));
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _folder.Dispose();
        }

        base.Dispose(disposing);
    }
}
