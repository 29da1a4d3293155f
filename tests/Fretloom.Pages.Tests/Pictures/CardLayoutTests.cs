using Fretloom.Pages.Pictures;

namespace Fretloom.Pages.Tests.Pictures;

public class CardLayoutTests
{
    [Fact]
    public void Many_cards_flow_into_several_drawings()
    {
        var exhibit = Shown.By("show the triads, in any order, on a guitar, in C major, frets 0-9, on strings 5-1")!;
        Assert.InRange(exhibit.Shapes!.Value.Count, 40, 1000);

        var rows = PicturePlan.For(exhibit);

        Assert.InRange(rows.Count, exhibit.Shapes.Value.Count / 7, exhibit.Shapes.Value.Count);
        Assert.Equal(exhibit.Shapes.Value.Count, rows.Sum(row => row.Table.Rows.Count));
        Assert.All(rows, row => Assert.InRange(row.Drawing.Height, 1, 300));
    }

    [Fact]
    public void The_seven_chords_of_a_key_stand_in_one_row()
    {
        var exhibit = Shown.By("show the seventh chords, on a guitar, in Eb major, on strings 4-1, frets 0-15")!;
        Assert.Equal(7, CardLayout.Of(exhibit, PicturePlan.PageWidth).Columns);
    }
}
