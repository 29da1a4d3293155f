using Fretloom.Exhibits;
using Fretloom.Exhibits.Playing;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Tests.Exhibits;

public class ChordWalkTests
{
    [Theory]
    [InlineData("the triads from I to III, on strings 3-1")]
    [InlineData("the seventh chords from V to VII, in drop 2")]
    [InlineData("C, F and G7")]
    [InlineData("Dm and G7, on a ukulele")]
    public void The_cheapest_row_of_shapes_is_that_of_trying_them_all(string text)
    {
        var complete = ShowResolver.Completed(ShowParser.Parse(text).Value!, ShowDefaults.Standard);
        var map = ShowResolver.MapOf(complete);
        var subject = complete.Subjects[0];
        var (steps, error) = ChordWalk.Steps(
            complete,
            subject,
            ShapeQuery.ChordsOf(subject, map.Key)!,
            map,
            new Player(map.Instrument)
        );
        Assert.Null(error);
        var rows = steps.Aggregate(
            new List<List<int>> { new() },
            (rows, step) =>
                [
                    .. rows.SelectMany(row =>
                        Enumerable.Range(0, step.Shapes.Count).Select(at => row.Append(at).ToList())
                    ),
                ]
        );

        var chosen = ChordWalk.Choose(steps).Select((shape, at) => steps[at].Shapes.ToList().IndexOf(shape)).ToList();

        Assert.Equal(rows.Min(row => Cost(steps, row)), Cost(steps, chosen), 9);
    }

    private static double Cost(ValueList<ChordWalk.Step> steps, List<int> row)
    {
        var places = row.Select((choice, at) => new ChordWalk.Place(steps[at], choice)).ToList();
        return row.Select((choice, at) => ChordWalk.Own(steps[at], choice)).Sum()
            + places.Zip(places.Skip(1), ChordWalk.Move).Sum();
    }
}
