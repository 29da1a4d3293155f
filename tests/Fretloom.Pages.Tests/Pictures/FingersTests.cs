using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;
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

    [Fact]
    public void What_is_wide_for_a_hand_is_drawn_below_a_box()
    {
        var exhibit = Given.Boxes(
            "guitar",
            new HandSize(120),
            ("C", "x32010", "x32010"),
            ("F", "133211", "134211"),
            ("A", "x02220", "x01230"),
            ("Am", "5x455x", "2x134x")
        );
        Approve(exhibit, "Boxes", "wide");
    }

    [Fact]
    public void An_instrument_that_is_turned_over_is_drawn_as_it_is_and_named_so()
    {
        var usual = PicturePlan
            .For(Shown.By("show C, in first position, one shape each, on a guitar, as names")!)[0]
            .Drawing;
        var turned = PicturePlan
            .For(Shown.By("show C, in first position, one shape each, on a guitar, as names, turned over")!)[0]
            .Drawing;

        Assert.Equal(
            usual.Leaves.OfType<Node.Circle>().Select(mark => (mark.X, mark.Y)),
            turned.Leaves.OfType<Node.Circle>().Select(mark => (mark.X, mark.Y))
        );
        Assert.Contains(turned.Leaves.OfType<Node.Label>(), label => label.Text == "turned over");
        Assert.DoesNotContain(usual.Leaves.OfType<Node.Label>(), label => label.Text == "turned over");
    }

    [Fact]
    public void A_shape_without_a_fingering_says_so_and_is_not_numbered()
    {
        var fingered = BoxesOf("guitar-barre");
        var exhibit = fingered with
        {
            Labels = LabelStyle.Fingers,
            InHand = fingered
                .InHand.Select(one => new ShapeInHand(one.Shape, null, "No hand holds these notes together.", []))
                .ToValueList(),
        };
        var labels = PicturePlan
            .For(exhibit)
            .SelectMany(picture => picture.Drawing.Leaves.OfType<Node.Label>())
            .Select(label => label.Text)
            .ToList();

        Assert.Equal(exhibit.Shapes!.Value.Count, labels.Count(text => text == "no fingering"));
        Assert.DoesNotContain("1", labels);
    }

    [Theory]
    [InlineData("show the seventh chords, on a guitar, with fingers, for a small hand")]
    [InlineData("show the triads, in every inversion, on a ukulele, as fingers")]
    [InlineData("show the seventh chords, in drop 2, on a guitar, in Eb major, with fingers, for a left-handed player")]
    [InlineData("show the scale, 3 notes a string, on a bass, with fingers, for a child's hand")]
    [InlineData("show the notes of the key, in second position, on a mandolin, with fingers")]
    [InlineData("show A minor pentatonic, on a guitar, in fifth position, as fingers")]
    [InlineData("show C, F, Bb, B7, Em and G7, on a guitar, in first position, with fingers, for a child's hand")]
    [InlineData("show G, C and D7, on a banjo, in first position, as fingers")]
    public void No_numeral_lies_on_other_writing_or_off_the_page_at_any_width(string sentence)
    {
        var exhibit = Shown.By(sentence)!;
        foreach (var width in (double[])[PicturePlan.PageWidth, 300, PicturePlan.SmallestWidth])
        {
            var faults = PicturePlan.For(exhibit, width).SelectMany(picture => DrawingFaults.Of(picture.Drawing));
            Assert.Equal("", string.Join('\n', faults));
        }
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
