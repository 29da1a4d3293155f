using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Pages.Tests.Scene;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Pictures;

/// <summary>Fingers in and beside marks, and what is wide for a hand. The fingerings are given, so that they are no matter here.</summary>
public class FingersTests
{
    public static TheoryData<string, LabelStyle> Boxes =>
        new(
            from name in new[] { "guitar", "guitar-barre", "ukulele", "banjo", "left-handed" }
            from labels in new[] { LabelStyle.Fingers, LabelStyle.Members }
            select (name, labels)
        );

    [Theory]
    [MemberData(nameof(Boxes))]
    public void Fingers_in_chord_boxes(string name, LabelStyle labels) =>
        Approve(
            BoxesOf(name) with
            {
                Labels = labels,
            },
            "Boxes",
            $"fingers-{name}-{(labels == LabelStyle.Fingers ? "inside" : "below")}"
        );

    [Theory]
    [InlineData(LabelStyle.Fingers, "inside")]
    [InlineData(LabelStyle.Degrees, "beside")]
    public void Fingers_on_cards(LabelStyle labels, string name)
    {
        var exhibit = Shown.Sevenths(Shown.Map("guitar", "C major", "4-1", "0-12"));
        var widest = Given.OneFingerEach(exhibit, HandSize.Small);
        Approve(widest with { Labels = labels }, "Cards", $"fingers-{name}");
    }

    [Theory]
    [InlineData(LabelStyle.Fingers, "inside")]
    [InlineData(LabelStyle.Degrees, "beside")]
    public void Fingers_on_a_neck(LabelStyle labels, string name)
    {
        var map = Shown.Map("guitar", "C major", frets: "0-3");
        var exhibit = Shown.Empty(map) with
        {
            Labels = labels,
            ShowsFingers = true,
            Notes = map.NotesOfKey.ToValueList(),
            NoteFingers = map
                .NotesOfKey.Select(note => new FingeredNote(note.Spot, (Finger)note.Spot.Fret))
                .ToValueList(),
        };
        Approve(exhibit, "Neck", $"fingers-{name}");
    }

    [Theory]
    [InlineData(LabelStyle.Fingers, "inside")]
    [InlineData(LabelStyle.Degrees, "beside")]
    public void Fingers_of_a_chosen_shape_on_a_left_handed_neck(LabelStyle labels, string name)
    {
        var map = Shown.Map("guitar", "A minor", frets: "4-9");
        var shapes = ScaleShapeFinder.InPosition(map, map.Key.Scale, 5);
        var exhibit = Shown.Empty(map) with
        {
            Labels = labels,
            IsLeftHanded = true,
            Shapes = shapes.Take(1).ToValueList(),
        };
        Approve(Given.FingerPerFret(exhibit, 5), "Neck", $"fingers-left-handed-{name}");
    }

    private static Exhibit BoxesOf(string name) =>
        name switch
        {
            "guitar" => Given.Boxes(
                "guitar",
                ("C", "x32010", "x32010"),
                ("Em", "022000", "023000"),
                ("D", "xx0232", "xx0132"),
                ("F", "xx3211", "xx3211")
            ),
            "guitar-barre" => Given.Boxes(
                "guitar",
                ("F", "133211", "134211"),
                ("Bm", "x24432", "x13421"),
                ("A", "x02220", "x01110"),
                ("D", "200232", "T00132"),
                ("C6", "x35555", "x13333")
            ),
            "ukulele" => Given.Boxes(
                "ukulele",
                ("C", "0003", "0003"),
                ("F", "2010", "2010"),
                ("D", "2220", "1110"),
                ("Bb", "3211", "3211")
            ),
            "banjo" => Given.Boxes("banjo", ("C", "02012", "02013"), ("D7", "00210", "00210")),
            _ => Given.Boxes("guitar", ("C", "x32010", "x32010"), ("F", "133211", "134211")) with
            {
                IsLeftHanded = true,
            },
        };

    private static void Approve(Exhibit exhibit, string kind, string name)
    {
        var at = 0;
        foreach (var picture in PicturePlan.For(exhibit))
        {
            at++;
            Assert.Equal("", string.Join("\n", DrawingFaults.Of(picture.Drawing)));
            Approved.Matches(
                SvgWriter.Write(picture.Drawing, SvgTheme.Print),
                "Fretloom.Pages.Tests",
                "Pictures",
                "Expectations",
                kind,
                $"{name}-{at}.svg"
            );
        }
    }
}
