using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;
using Fretloom.Pages.Svg;
using Fretloom.Sentences;
using Fretloom.Shapes;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Pictures;

public class CardTests
{
    [Fact]
    public void The_seventh_chords_of_a_key_with_their_ties()
    {
        var exhibit = Shown.Sevenths(Shown.Map("low-G ukulele", "Bb major", frets: "0-14"));
        var v7 = exhibit.Shapes!.Value.First(shape => shape.Source.Name == "F7");
        Approve(exhibit, v7, "sevenths-low-g-ukulele-b-flat-major");
        Approved.Matches(
            SvgWriter.Write(PicturePlan.For(exhibit, focus: v7)[1].Drawing, SvgTheme.BlackAndWhite),
            Folder("sevenths-low-g-ukulele-b-flat-major-black-and-white.svg")
        );
    }

    [Fact]
    public void Triads_on_three_of_the_strings_as_members() =>
        Approve(
            Shown.Empty(Shown.Map("guitar", "C major", "4-1", "0-9")) with
            {
                Labels = LabelStyle.Members,
                Shapes = Shown
                    .Map("guitar", "C major", "4-1", "0-9")
                    .Key.Triads()
                    .SelectMany(triad => Shown.OneNotePerString(Shown.Map("guitar", "C major", "4-1", "0-9"), triad))
                    .ToValueList(),
            },
            null,
            "triads-guitar-c-major"
        );

    [Fact]
    public void Three_notes_a_string()
    {
        var map = Shown.Map("guitar", "G major", "6-1", "0-12");
        Approve(
            Shown.Empty(map) with
            {
                Shapes = ScaleShapeFinder.NotesPerString(map, map.Key.Scale, 3),
            },
            null,
            "three-notes-a-string-g-major"
        );
    }

    [Theory]
    [InlineData("show the seventh chords, on a guitar, in C major, on strings 4-1")]
    [InlineData("show the seventh chords, on a guitar, in Eb major, on strings 4-1, frets 0-15")]
    [InlineData("show the seventh chords, in every inversion, on a guitar, in G major, on strings 4-1")]
    public void Every_fret_with_a_mark_has_its_number_and_no_two_touch(string sentence)
    {
        var exhibit = Shown.By(sentence)!;
        var pictures = PicturePlan.For(exhibit);
        var numbers = pictures
            .Select(picture =>
                picture
                    .Drawing.Leaves.OfType<Node.Label>()
                    .Where(label =>
                        label is { Anchor: Anchor.Middle, Style.Face: not Face.Serif } && IsBelow(picture, label)
                    )
                    .ToList()
            )
            .ToList();

        Assert.Equal(
            exhibit.Shapes!.Value.Sum(shape => shape.Spots.Select(spot => spot.Fret).Distinct().Count()),
            numbers.Sum(row => row.Count)
        );
        Assert.All(
            numbers,
            row =>
                Assert.All(
                    row,
                    one =>
                        Assert.DoesNotContain(
                            row,
                            other =>
                                other != one && other.Y == one.Y && other.Left < one.Right && one.Left < other.Right
                        )
                )
        );

        static bool IsBelow(Picture picture, Node.Label label) =>
            label.Text.All(char.IsAsciiDigit)
            && label.Y
                > picture.Drawing.Leaves.OfType<Node.Circle>().Where(mark => mark.Y < 150).Max(mark => mark.Y) + 10;
    }

    [Fact]
    public void Inversions_are_told_apart_by_their_bass()
    {
        var exhibit = Shown.By("show the chord Imaj7, in every inversion, on a guitar, in G major, on strings 4-1")!;
        Assert.Equal(
            ["Gmaj7", "Gmaj7/B", "Gmaj7/D"],
            exhibit.Shapes!.Value.Select(CardHeading.SmallText).Distinct().Order(StringComparer.Ordinal).Take(3)
        );
    }

    private static void Approve(Exhibit exhibit, Shape? focus, string name)
    {
        var at = 0;
        foreach (
            var picture in PicturePlan
                .For(exhibit, focus: focus)
                .Where(picture => picture.Drawing.Title.StartsWith("Shapes", StringComparison.Ordinal))
        )
        {
            at++;
            Approved.Matches(SvgWriter.Write(picture.Drawing, SvgTheme.Print), Folder($"{name}-{at}.svg"));
        }
    }

    private static string[] Folder(string file) => ["Fretloom.Pages.Tests", "Pictures", "Expectations", "Cards", file];

    [Fact]
    public void Cards_of_different_rows_that_are_images_of_one_another_are_named_below_the_last_row()
    {
        // Common practice, no source: on strings 4-1 of a guitar the dominant seventh and the half-diminished are half-turns.
        var rows = PicturePlan
            .For(Shown.By("show the seventh chords and the symmetries, on a guitar, on strings 4-1, in C major")!, 300)
            .Where(picture => picture.Kind == "cards")
            .Select(picture => SvgWriter.Write(picture.Drawing, SvgTheme.Print))
            .ToList();

        Assert.True(rows.Count > 1);
        Assert.Contains("are half-turns of each other</text>", rows[^1], StringComparison.Ordinal);
    }
}
