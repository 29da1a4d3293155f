using System.Globalization;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Testing;

namespace Fretloom.Tests.Shapes;

public class CloseTriadTests
{
    private static readonly string[][] Rows =
    [
        .. File.ReadAllLines(Repository.PathTo("tests", "Fretloom.Tests", "Data", "closed_triads_guitar.csv"))
            .Skip(2)
            .Select(line => line.Split(',')),
    ];

    public static TheoryData<string, int, string, string> Table =>
        [
            .. Rows.Select(fields =>
                (fields[0], int.Parse(fields[1], CultureInfo.InvariantCulture), fields[2], fields[3])
            ),
        ];

    [Theory]
    [MemberData(nameof(Table))]
    public void Close_triads_on_neighbouring_guitar_strings_are_those_of_the_table(
        string quality,
        int inversion,
        string strings,
        string relativeFrets
    )
    {
        var run = new StringSet(strings.Split('-').Select(number => int.Parse(number, CultureInfo.InvariantCulture)));
        var suffix = quality switch
        {
            "maj" => "",
            "min" => "m",
            _ => quality,
        };
        foreach (var root in "C C# D Eb E F F# G Ab A Bb B".Split(' '))
        {
            var map = Find.Map("guitar", run.ToString(), "0-22");
            var voicing = new Voicing.OneNotePerString(Arrangement.Close, [inversion]);

            var shapes = Find.Shapes(map, root + suffix, voicing);

            Assert.NotEmpty(shapes);
            Assert.All(shapes, shape => Assert.Equal(relativeFrets, RelativeFrets(shape)));
        }
    }

    private static string RelativeFrets(Shape shape) =>
        string.Join(' ', shape.Spots.Select(spot => spot.Fret - shape.Notes[0].Spot.Fret));
}
