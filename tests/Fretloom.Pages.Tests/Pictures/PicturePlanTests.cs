using System.Xml.Linq;
using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Svg;
using Fretloom.Pages.Tests.Scene;
using Fretloom.Pages.Text;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Pictures;

public class PicturePlanTests
{
    private static readonly string[] Subjects =
    [
        "the notes of the key, as degrees",
        "the notes of the key, as names",
        "the notes of the key, as intervals",
        "the landmarks",
        "the thirds",
        "the symmetries",
        "the triads",
        "the seventh chords, as members",
        "the notes of the key, the chord V7",
        "the scale, 3 notes a string",
        "the scale, in fifth position",
        "Cmaj7 and Bb7, as names",
        "C, F and G7, easy, three strings",
    ];

    public static TheoryData<string> Instruments => [.. Catalogue.Entries.Select(entry => entry.Instrument.Name)];

    [Theory]
    [MemberData(nameof(Instruments))]
    public void Every_instrument_is_drawn_without_fault(string name)
    {
        var faults = new List<string>();
        var drawn = 0;
        foreach (var key in (string[])["C major", "F# major", "Eb minor", "Bb harmonic minor"])
        {
            foreach (var subject in Subjects)
            {
                var sentence = $"show {subject}, on {name}, in {key}";
                if (Shown.By(sentence) is { } exhibit)
                {
                    drawn++;
                    faults.AddRange(
                        PicturePlan.For(exhibit).SelectMany(Faults).Select(fault => $"{sentence}: {fault}")
                    );
                    faults.AddRange(TextFaults(exhibit, 60).Select(fault => $"{sentence}: {fault}"));
                }
            }
        }

        Assert.Empty(faults);
        Assert.InRange(drawn, 20, 4 * Subjects.Length);
    }

    [Theory]
    [InlineData(233)]
    [InlineData(300)]
    [InlineData(420)]
    [InlineData(700)]
    public void Other_widths_are_kept_without_fault(double width)
    {
        var sentences = Subjects.SelectMany(subject =>
            (string[])
                [
                    $"show {subject}, on a guitar, frets 0-22, in Ab major",
                    $"show {subject}, on a bass, for a left-handed player",
                ]
        );
        foreach (var exhibit in sentences.Select(Shown.By).OfType<Exhibit>())
        {
            foreach (var picture in PicturePlan.For(exhibit, width))
            {
                Assert.InRange(picture.Drawing.Width, 1, width + 0.01);
                Assert.Empty(DrawingFaults.Of(picture.Drawing));
            }
        }
    }

    [Fact]
    public void The_same_exhibit_gives_the_same_text_twice()
    {
        var exhibit = Shown.By("show the notes of the key and the chord V7, on a guitar, in Db major, on strings 4-1")!;
        Assert.Equal(Svg(exhibit), Svg(exhibit));

        static string Svg(Exhibit exhibit) =>
            string.Concat(
                PicturePlan.For(exhibit).Select(picture => SvgWriter.Write(picture.Drawing, SvgTheme.Screen))
            );
    }

    [Fact]
    public void Too_narrow_a_page_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            PicturePlan.For(Shown.By("show every D")!, PicturePlan.SmallestWidth - 1)
        );

    [Fact]
    public void Shapes_that_do_not_exist_give_no_picture() =>
        Assert.Empty(
            PicturePlan.For(Shown.By("show the chord Imaj7, on a guitar, on strings 4-1, frets 1-1, in C major")!)
        );

    private static IEnumerable<string> Faults(Picture picture)
    {
        foreach (var theme in (SvgTheme[])[SvgTheme.Screen, SvgTheme.Print, SvgTheme.BlackAndWhite])
        {
            var text = SvgWriter.Write(picture.Drawing, theme, "p1", isAlone: false);
            var svg = XDocument.Parse(text);
            var ids = svg.Descendants().Attributes("id").Select(id => id.Value).ToList();
            if (
                ids.Distinct().Count() != ids.Count
                || !ids.TrueForAll(id => id.StartsWith("p1-", StringComparison.Ordinal))
            )
            {
                yield return $"ids: {string.Join(' ', ids)}";
            }

            if (text.Contains("NaN", StringComparison.Ordinal) || text.Contains('∞', StringComparison.Ordinal))
            {
                yield return "not a number";
            }
        }

        foreach (var fault in DrawingFaults.Of(picture.Drawing))
        {
            yield return fault;
        }

        if (picture.Table.Rows.Any(row => row.Count != picture.Table.Header.Count))
        {
            yield return "a row of the table is not as long as its header";
        }
    }

    private static IEnumerable<string> TextFaults(Exhibit exhibit, int width) =>
        PlainText.Write(exhibit, width).Split('\n').Where(line => line.Length > width || line.TrimEnd() != line);
}
