using Fretloom.Exhibits;
using Fretloom.Pages.Pictures;
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
