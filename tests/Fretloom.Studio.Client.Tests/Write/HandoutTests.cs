using Fretloom.Scores.Engraving;
using Fretloom.Studio.Client.State;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;
using Fretloom.Testing;

namespace Fretloom.Studio.Client.Tests.Write;

public sealed class HandoutTests
{
    private readonly Engine _engine = new() { Problem = new EngraverGoneException() };
    private readonly Errands _errands = new();
    private readonly StoppedClock _clock = new();
    private readonly BrowserEngraver _engraver;
    private readonly Handout _handout;

    public HandoutTests()
    {
        _errands.Failed += problem => throw problem;
        _engraver = new BrowserEngraver(_engine, _errands, _clock);
        _handout = new Handout(_engraver, _errands, _clock);
    }

    private static string Long => File.ReadAllText(Repository.PathTo("bench", "lessons", "ten-pages.md"));

    [Fact]
    public async Task A_long_lesson_is_shown_from_its_beginning_on_and_then_whole()
    {
        var seen = new List<int>();
        _handout.Changed += () => seen.Add(_handout.Page!.Parts.Count);
        _handout.Open(Long);
        Assert.Empty(seen);
        await _clock.PassAsync(TimeSpan.FromSeconds(1));

        Assert.True(seen.Count > 2);
        Assert.Equal(seen.Order(), seen);
        var anew = new Fretloom.Pages.Html.LessonPreview().Update(Long);
        Assert.Equal(anew.Parts.Select(part => part.Html), _handout.Page!.Parts.Select(part => part.Html));
    }

    [Fact]
    public async Task A_letter_that_is_typed_is_seen_at_once_and_ends_what_was_still_to_be_shown()
    {
        _handout.Open(Long);
        await _clock.PassAsync(Pace.Rest);
        _handout.Open("---\ntitle: Short\n---\n\nWords.\n");
        Assert.Equal("Short", _handout.Page!.Title);
        await _clock.PassAsync(TimeSpan.FromSeconds(1));

        Assert.Equal("Short", _handout.Page.Title);
    }

    [Fact]
    public async Task What_was_shown_stays_until_all_of_it_is_worked_out_in_another_key()
    {
        _handout.Open(Long);
        await _clock.PassAsync(TimeSpan.FromSeconds(1));
        var before = _handout.Page;
        _handout.Follow(Long.Replace("key: G major", "key: A major", StringComparison.Ordinal));
        await _clock.PassAsync(Pace.Rest);
        Assert.Same(before, _handout.Page);

        await _clock.PassAsync(TimeSpan.FromSeconds(1));
        Assert.Equal(before!.Parts.Count, _handout.Page!.Parts.Count);
        Assert.Equal("A major", _handout.Page.Lesson.Key.ToString());
    }

    [Fact]
    public async Task An_exercise_that_cannot_be_engraved_is_counted_and_stays_tablature()
    {
        _engine.Problem = new EngravingException("it gave no answer");
        _handout.Open("---\ntitle: T\n---\n\n```play\nthe scale\n```\n");
        Assert.Contains("aria-busy", _handout.Page!.Parts[2].Html, StringComparison.Ordinal);
        Assert.Equal(0, _engraver.Refused);
        await _clock.PassAsync(Pace.Rest);

        Assert.Equal(1, _engraver.Refused);
        Assert.Contains("tablature", _handout.Page.Parts[2].Html, StringComparison.Ordinal);
        Assert.DoesNotContain("aria-busy", _handout.Page.Parts[2].Html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_engraver_that_is_gone_is_asked_again_with_the_next_page_alone()
    {
        _engine.Problem = new EngraverGoneException();
        _handout.Open("---\ntitle: T\n---\n\n```play\nthe scale\n```\n");
        await _clock.PassAsync(Pace.Rest);
        var asked = _engine.Asked;
        await _clock.PassAsync(TimeSpan.FromSeconds(1));
        Assert.Equal(asked, _engine.Asked);

        _handout.Again();
        await _clock.PassAsync(Pace.Rest);
        Assert.Equal(2 * asked, _engine.Asked);
    }

    [Fact]
    public async Task What_is_not_to_be_seen_any_more_is_not_engraved()
    {
        _engine.Problem = new EngravingException("no");
        _handout.Open("---\ntitle: T\n---\n\n```play\nthe scale\n```\n");
        _handout.Follow("---\ntitle: T\n---\n\nWords.\n");
        await _clock.PassAsync(Pace.Rest);

        Assert.Equal(0, _engine.Asked);
    }

    private sealed class Engine : IEngravingEngine
    {
        public required Exception Problem { get; set; }

        public int Asked { get; private set; }

        public async Task<string[]> EngraveAsync(string score, string options)
        {
            Asked++;
            await Task.Yield();
            throw Problem;
        }
    }
}
