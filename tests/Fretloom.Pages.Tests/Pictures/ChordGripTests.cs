using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Shapes;

namespace Fretloom.Pages.Tests.Pictures;

/// <summary>Which shapes need a barre: common practice, no source.</summary>
public class ChordGripTests
{
    [Theory]
    [InlineData("F", "133211", 6, 1)]
    [InlineData("Bm", "x24432", 5, 1)]
    [InlineData("G#m", "466444", 6, 1)]
    public void Six_or_five_fretted_strings_need_a_finger_across(string chord, string frets, int far, int near) =>
        Assert.Equal([(far, near)], Grip(chord, frets).Bars.Select(bar => (bar.Far, bar.Near)));

    [Theory]
    [InlineData("C", "x32010")]
    [InlineData("E", "022100")]
    [InlineData("D", "xx0232")]
    [InlineData("F", "xx3211")]
    public void Four_fingers_need_none(string chord, string frets) => Assert.Empty(Grip(chord, frets).Bars);

    [Fact]
    public void A_box_begins_at_the_nut_as_long_as_it_can()
    {
        Assert.Equal(1, Grip("D", "xx0232").FirstFret);
        Assert.Equal(5, Grip("A", "577655").FirstFret);
        Assert.Equal(4, Grip("A", "577655").Frets);
    }

    /// <summary>The grip of a shape written as frets from string 6 to string 1.</summary>
    private static ChordGrip Grip(string chord, string frets)
    {
        var map = Shown.Map("guitar", "C major");
        var source = new ShapeSource.OfChord(Theory.Chord.Parse(chord), null);
        var notes = frets
            .Select((fret, at) => (String: 6 - at, Fret: fret))
            .Where(note => note.Fret != 'x')
            .Select(note => map.NoteAt(new Spot(note.String, note.Fret - '0'))!.Value)
            .Select(note => new ShapeNote(note.Spot, note.Pitch, note.Degree, "1"));
        return new ChordGrip(map.Instrument, new Shape(source, map.Instrument, map.Strings, notes));
    }
}
