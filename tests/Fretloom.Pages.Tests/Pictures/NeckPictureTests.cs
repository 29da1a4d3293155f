using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Pictures;

public class NeckPictureTests
{
    [Fact]
    public void D_major_on_four_guitar_strings() =>
        Approve(Shown.NotesOfKey(Shown.Map("guitar", "D major", "4-1")), "guitar-d-major-strings-4-1");

    [Fact]
    public void A_shape_in_focus_has_a_band()
    {
        var map = Shown.Map("low-G ukulele", "Bb major", frets: "0-15");
        var exhibit = Shown.NotesOfKey(map) with
        {
            Shapes = Shown.OneNotePerString(map, map.Key.Seventh(new Degree(5))),
            Symmetries = SymmetryFinder.Of(map),
        };
        Approve(exhibit, "low-g-ukulele-b-flat-major-f7-in-focus");
        Approved.Matches(
            SvgWriter.Write(PicturePlan.For(exhibit)[0].Drawing, SvgTheme.BlackAndWhite),
            Folder("low-g-ukulele-b-flat-major-f7-in-focus-black-and-white.svg")
        );
    }

    [Fact]
    public void Six_strings_as_names() =>
        Approve(
            Shown.NotesOfKey(Shown.Map("guitar", "Eb major")) with
            {
                Labels = LabelStyle.Names,
            },
            "guitar-e-flat-major-names"
        );

    [Fact]
    public void The_short_string_of_a_banjo_begins_at_fret_5() =>
        Approve(Shown.NotesOfKey(Shown.Map("banjo", "G major")), "banjo-g-major");

    [Fact]
    public void A_left_handed_neck_is_mirrored_but_its_writing_is_not() =>
        Approve(
            Shown.NotesOfKey(Shown.Map("guitar", "A minor", "6-1", "0-5")) with
            {
                IsLeftHanded = true,
            },
            "guitar-a-minor-left-handed"
        );

    [Fact]
    public void Twenty_four_frets_take_two_rows()
    {
        var frets24 = new Instrument(
            "long guitar",
            Shown.Named("guitar").Strings,
            648,
            24,
            new StringSpacing(7.1, 10.4)
        );
        var map = new NeckMap(frets24, Key.Parse("F# minor"), frets24.AllStrings, new FretRange(0, 24));
        Approve(Shown.NotesOfKey(map), "guitar-24-frets");
    }

    [Fact]
    public void A_range_above_the_nut_shows_no_nut() =>
        Approve(Shown.NotesOfKey(Shown.Map("guitar", "C major", "3-1", "5-9")), "guitar-c-major-frets-5-9");

    [Fact]
    public void A_capo_takes_the_place_of_the_nut() =>
        Approve(Shown.NotesOfKey(Shown.Map("guitar", "E major", "6-4", "0-7", capo: 2)), "guitar-e-major-capo-2");

    [Fact]
    public void Landmarks_alone_are_a_strip() =>
        Approve(
            Shown.NotesOfKey(Shown.Map("guitar", "G major", "4-1")) with
            {
                Notes = null,
            },
            "landmarks-guitar-g-major-strings-4-1"
        );

    [Fact]
    public void A_scale_in_one_position_lies_on_the_neck()
    {
        var map = Shown.Map("guitar", "A minor", frets: "0-12");
        var scale = Scale.Parse("A minor pentatonic");
        var shapes = ScaleShapeFinder.InPosition(map, scale, 5);
        Approve(
            Shown.Empty(map) with
            {
                Notes = map.NotesNamed(scale.Notes).ToValueList(),
                Labels = LabelStyle.Intervals,
                Shapes = shapes,
            },
            "a-minor-pentatonic-in-fifth-position"
        );
    }

    private static void Approve(Exhibit exhibit, string name) =>
        Approved.Matches(SvgWriter.Write(PicturePlan.For(exhibit)[0].Drawing, SvgTheme.Print), Folder(name + ".svg"));

    private static string[] Folder(string file) => ["Fretloom.Pages.Tests", "Pictures", "Expectations", "Neck", file];
}
