using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;
using Fretloom.Pages.Svg;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Pictures;

public class ChordBoxTests
{
    [Fact]
    public void Chords_of_the_guitar_in_first_position() =>
        Approve(
            First(
                Shown.Map("guitar", "C major", frets: "0-4"),
                LabelStyle.Members,
                "C",
                "F",
                "G7",
                "Am",
                "Dm",
                "E7",
                "Bb"
            ),
            "guitar-first-position"
        );

    [Fact]
    public void A_box_above_first_position_says_where_it_begins()
    {
        var map = Shown.Map("guitar", "C major", frets: "0-12");
        var shapes = Shown.Strummed(map, "C", 8).Take(1).Concat(Shown.Strummed(map, "Dm7", 5).Take(1)).ToValueList();
        Approve(Shown.Empty(map) with { Labels = LabelStyle.Names, Shapes = shapes }, "guitar-higher");
    }

    [Fact]
    public void Boxes_of_a_left_handed_ukulele_are_mirrored() =>
        Approve(
            First(Shown.Map("ukulele", "C major", frets: "0-4"), LabelStyle.Names, "C", "F", "G7", "Bb") with
            {
                IsLeftHanded = true,
            },
            "ukulele-left-handed"
        );

    [Theory]
    [InlineData("capo", "show G, with a capo at 3, in first position, on a guitar")]
    [InlineData("banjo", "show D7, in first position, on a banjo")]
    [InlineData("mandolin", "show C, in first position, on a mandolin")]
    [InlineData(
        "some-strings",
        "show C and F, one note per string, in every inversion, on a guitar, on strings 3-1, frets 0-4"
    )]
    public void Boxes_tell_what_instrument_they_are_for(string name, string sentence) =>
        Approve(Shown.By(sentence)!, name);

    [Fact]
    public void Inversions_are_told_apart_by_their_bass()
    {
        var exhibit = Shown.By(
            "show C, one note per string, in every inversion, on a guitar, on strings 3-1, frets 0-12"
        )!;
        Assert.Equal(
            ["C/G", "C", "C/E"],
            exhibit.Shapes!.Value.Take(3).Select(shape => ChordBox.NameOf(exhibit, shape))
        );
    }

    [Theory]
    [InlineData("show C, F and G, one note per string, in every inversion, on a guitar, on strings 3-1, as names")]
    [InlineData("show C, Eb and G7, in first position, on a ukulele, as names")]
    [InlineData("show C and G, in first position, on a mandolin")]
    public void Marks_leave_air_between_them(string sentence)
    {
        foreach (var picture in PicturePlan.For(Shown.By(sentence)!))
        {
            var marks = picture.Drawing.Leaves.OfType<Node.Circle>().ToList();
            for (var at = 0; at < marks.Count; at++)
            {
                var mark = marks[at];
                Assert.All(
                    marks.Skip(at + 1),
                    other =>
                        Assert.InRange(
                            Math.Sqrt(Math.Pow(mark.X - other.X, 2) + Math.Pow(mark.Y - other.Y, 2)),
                            mark.Radius + other.Radius + 3,
                            1000
                        )
                );
            }
        }
    }

    private static Exhibit First(Neck.NeckMap map, LabelStyle labels, params string[] chords) =>
        Shown.Empty(map) with
        {
            Labels = labels,
            Shapes = chords.SelectMany(chord => Shown.Strummed(map, chord).Take(1)).ToValueList(),
        };

    private static void Approve(Exhibit exhibit, string name)
    {
        var at = 0;
        foreach (var picture in PicturePlan.For(exhibit))
        {
            at++;
            Approved.Matches(
                SvgWriter.Write(picture.Drawing, SvgTheme.Print),
                "Fretloom.Pages.Tests",
                "Pictures",
                "Expectations",
                "Boxes",
                $"{name}-{at}.svg"
            );
        }
    }
}
