using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Tests.State;

public class StudioTests
{
    private readonly History _history = new();
    private readonly Client.State.Studio _studio;

    public StudioTests() => _studio = new(_history);

    [Fact]
    public void What_is_said_is_a_step_that_can_be_taken_back_and_done_again()
    {
        _studio.Say("show the thirds, in D major", "in D major");
        _studio.Say("show the thirds, in F major", "in F major");

        Assert.Equal("in F major", _history.Last);
        _history.Undo();
        Assert.Equal("D major", _studio.Exhibit.Map.Key.ToString());
        Assert.Equal("in F major", _history.Next);
        _history.Redo();
        Assert.Equal("F major", _studio.Exhibit.Map.Key.ToString());
        _history.Undo();
        _history.Undo();
        _history.Undo();
        Assert.Null(_history.Last);
        Assert.Equal(Client.State.Studio.FirstSentence, _studio.View.Sentence);
    }

    [Fact]
    public void A_new_step_forgets_what_was_undone()
    {
        _studio.Say("show the thirds, in D major", "one");
        _history.Undo();
        _studio.Say("show the thirds, in F major", "two");

        Assert.Null(_history.Next);
    }

    [Fact]
    public void A_sentence_with_an_error_keeps_what_was_seen()
    {
        _studio.Say("show the thirds, in D major", "one");
        _studio.Say("show the thirds, in H major", "two");

        Assert.NotNull(_studio.Error);
        Assert.Equal("D major", _studio.Exhibit.Map.Key.ToString());
    }

    [Fact]
    public void An_error_in_the_first_sentence_shows_the_neck_of_a_new_studio()
    {
        _studio.Set(new View("show nonsense"));

        Assert.NotNull(_studio.Error);
        Assert.Equal("guitar", _studio.Exhibit.Map.Instrument.Name);
    }

    [Fact]
    public void Spots_are_taken_into_a_shape_and_out_of_it_and_stay_with_another_sentence()
    {
        _studio.Toggle(new Spot(4, 2), "a spot");
        _studio.Toggle(new Spot(3, 2), "another spot");
        _studio.Toggle(new Spot(4, 2), "a spot");
        Assert.Equal([new Spot(3, 2)], _studio.View.Built);
        _studio.Say("show the thirds, in F major", "in F major");

        Assert.Equal([new Spot(3, 2)], _studio.Built!.Spots);
        _studio.Say("show the thirds, on a four-string tenor banjo, frets 0-1", "another");
        _history.Undo();
        Assert.Equal([new Spot(3, 2)], _studio.Built!.Spots);
    }

    [Fact]
    public void What_a_lesson_says_fills_in_what_the_sentence_does_not()
    {
        _studio.Say("show the thirds", "the thirds");
        Catalogue.TryFind("mandolin", out var mandolin);

        _studio.Assume(new ShowDefaults(mandolin!));

        Assert.Equal("mandolin", _studio.Exhibit.Map.Instrument.Name);
    }

    [Fact]
    public void What_is_tried_is_seen_on_the_neck_alone_and_gone_with_the_next_word()
    {
        _studio.Say("show the thirds, in D major", "one");

        _studio.Try("show the thirds, in F major");
        Assert.Equal("F major", _studio.Tried?.Map.Key.ToString());
        Assert.Equal("D major", _studio.Exhibit.Map.Key.ToString());
        _studio.Try("show nonsense");
        Assert.Null(_studio.Tried);
        _studio.Try("show the thirds, in F major");
        _studio.Toggle(new Spot(4, 2), "a spot");

        Assert.Null(_studio.Tried);
        Assert.Equal("a spot", _history.Last);
    }

    [Fact]
    public void Steps_are_told_from_what_is_only_passed_through()
    {
        _studio.Say("show the thirds, in D major", "one");
        Assert.False(_studio.IsPassing);
        _studio.Set(new View("show the thirds, in F"));
        Assert.True(_studio.IsPassing);
        _history.Undo();

        Assert.False(_studio.IsPassing);
    }
}
