using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Tests.Neck;

namespace Fretloom.Tests.Hand;

/// <summary>What describes a fingering cannot hold a wrong value.</summary>
public class FingeringValuesTests
{
    private static readonly Player Guitarist = new(Necks.Find("guitar"));
    private static readonly ValueList<LineNote> Notes = [new LineNote.At(new Spot(4, 9))];

    [Theory]
    [InlineData(-1)]
    [InlineData(6)]
    public void A_note_has_a_finger_that_there_is(int finger) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new FingeredNote(default, (Finger)finger));

    [Fact]
    public void A_note_keeps_what_it_was_given()
    {
        var note = new FingeredNote(new Spot(4, 9), Finger.Thumb);

        Assert.Equal((new Spot(4, 9), Finger.Thumb), (note.Spot, note.Finger));
        Assert.Equal(new FingeredNote(new Spot(1, 0), Finger.None), default);
    }

    [Fact]
    public void A_request_is_whole()
    {
        Assert.Throws<ArgumentNullException>(() => new FingeringRequest(null!, FingeringKind.Line, Notes));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FingeringRequest(Guitarist, (FingeringKind)3, Notes));
        Assert.Throws<ArgumentException>(() => new FingeringRequest(Guitarist, FingeringKind.Line, [null!]));
        Assert.Throws<ArgumentException>(() => new FingeringRequest(Guitarist, FingeringKind.Line, Notes, [null!]));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            new FingeringRequest(Guitarist, FingeringKind.Line, Notes, [], 0)
        );
        Assert.Throws<ArgumentNullException>(() => new Player(null!));
        Assert.Throws<ArgumentNullException>(() => Guitarist with { Instrument = null! });
    }

    [Fact]
    public void An_answer_has_lengths_costs_and_reasons_that_can_be()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new Fingering([], [], -1, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Fingering([], [], double.NaN, null));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CostTerm("apart", -0.1, ""));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CostTerm("apart", double.PositiveInfinity, ""));
        Assert.Throws<ArgumentException>(() => new CostTerm("", 1, ""));
        Assert.Throws<ArgumentNullException>(() => new CostTerm("apart", 1, null!));
        Assert.Throws<ArgumentException>(() => new FingeringRefusal(""));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FingeringRefusal("No.", Note: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new FingeringRefusal("No.", Rule: -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => ((Width)3).Words());
    }
}
