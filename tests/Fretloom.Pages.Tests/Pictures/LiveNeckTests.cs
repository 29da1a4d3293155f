using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Tests.Pictures;

public class LiveNeckTests
{
    public static TheoryData<string> Sentences =>
        [
            "the notes of the key, on a guitar, in D major, frets 0-22",
            "the notes of the key, on a guitar, in D major, frets 0-22, for a left-handed player",
            "the seventh chords, on a low-G ukulele, in Bb major",
            "every D, on a banjo, frets 0-7",
            "the notes of the key, on a bass, frets 5-9",
            "the notes of the key, on a mandolin, frets 0-0",
            "the notes of the key, on a banjo, on string 5, frets 0-3",
            "the notes of the key, on a guitar, on strings 6, 4 and 2, frets 0-12",
        ];

    private static LiveNeck Of(string sentence, double width = 900) =>
        LiveNeck.Of(ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!, null, width);

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Every_spot_of_the_neck_has_one_cell_inside_the_drawing(string sentence)
    {
        var map = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!.Map;

        var neck = Of(sentence);

        Assert.Equal(map.Spots.Order(BySpot), neck.Cells.Select(cell => cell.Spot).Order(BySpot));
        Assert.All(
            neck.Cells,
            cell =>
            {
                Assert.InRange(cell.Left, 0, neck.Drawing.Width - cell.Width);
                Assert.InRange(cell.Top, 0, neck.Drawing.Height - cell.Height);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void No_fret_is_narrower_than_asked_for_and_a_legend_moves_no_cell(string sentence)
    {
        var exhibit = ShowQuestion.Answer(sentence, ShowDefaults.Standard).Value!;

        var neck = LiveNeck.Of(exhibit, null, 0, narrowestFret: 24);
        var explained = LiveNeck.Of(exhibit, null, 0, narrowestFret: 24, hasLegend: true);

        Assert.All(
            neck.FretColumns.Where(column => column.Fret > 0),
            column => Assert.InRange(column.Width, 24 - 1e-6, 1000)
        );
        Assert.Equal(neck.Cells, explained.Cells);
        Assert.True(explained.Drawing.Height >= neck.Drawing.Height);
        Assert.Equal(neck.Drawing.Nodes, explained.Drawing.Nodes.Take(neck.Drawing.Nodes.Count));
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void No_two_cells_overlap(string sentence)
    {
        var cells = Of(sentence).Cells;

        foreach (var (at, one) in cells.Index())
        {
            Assert.DoesNotContain(
                cells.Skip(at + 1),
                other =>
                    one.Left < other.Left + other.Width - 1e-6
                    && other.Left < one.Left + one.Width - 1e-6
                    && one.Top < other.Top + other.Height - 1e-6
                    && other.Top < one.Top + one.Height - 1e-6
            );
        }
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Every_mark_lies_in_the_cell_of_a_note(string sentence)
    {
        var neck = Of(sentence);
        var middles = neck
            .Drawing.Nodes.OfType<Node.Group>()
            .Where(group => group.Name == "marks")
            .SelectMany(marks => marks.Children.OfType<Node.Group>())
            .Select(mark => mark.Children.OfType<Node.Circle>().First());

        Assert.All(
            middles,
            mark =>
                Assert.Contains(
                    neck.Cells,
                    cell =>
                        mark.X > cell.Left
                        && mark.X < cell.Left + cell.Width
                        && Math.Abs(mark.Y - cell.Top - cell.Height / 2) < 1e-6
                )
        );
    }

    [Fact]
    public void Many_frets_take_more_room_than_there_is_rather_than_touch() =>
        Assert.True(Of("the notes of the key, on a guitar, frets 0-22", 300).Drawing.Width > 600);

    private static Comparer<Spot> BySpot { get; } =
        Comparer<Spot>.Create((one, other) => (one.String, one.Fret).CompareTo((other.String, other.Fret)));
}
