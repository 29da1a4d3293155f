using System.Globalization;
using System.Xml.Linq;
using Fretloom.Scores.Engraving;

namespace Fretloom.Scores.Tests.Engraving;

public sealed class EngraverTests(WarmEngraver warm) : IClassFixture<WarmEngraver>
{
    private const double A4 = 170;
    private const double Phone = 85;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Sentences => [.. Repertoire.Others];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Every_note_stands_on_both_staves_in_bars_in_order(string sentence)
    {
        var engraver = warm.Engraver;
        var exercise = Played.Of(sentence);
        foreach (var width in new[] { A4, Phone })
        {
            var engraved = engraver.Engrave(exercise, width);
            Assert.Null(engraved.Warning);
            Assert.Equal(Enumerable.Range(1, exercise.Bars), engraved.Systems.SelectMany(BarsOf));
            Assert.All(
                engraved.Systems,
                system =>
                    Assert.Equal(
                        Enumerable.Range(system.FirstBar, system.LastBar - system.FirstBar + 1),
                        BarsOf(system)
                    )
            );
            var pictures = engraved.Systems.Select(system => XElement.Parse(system.Svg)).ToList();
            var marked = pictures
                .SelectMany(picture => picture.Descendants(Svg + "g"))
                .Where(group => group.Attribute("data-note") is not null)
                .ToLookup(group => (int)group.Attribute("data-note")!);
            for (var note = 0; note < exercise.Notes.Count; note++)
            {
                var fret = Assert.Single(marked[note], group => group.Elements(Svg + "text").Any());
                Assert.Contains(marked[note], group => group.Descendants(Svg + "use").Any());
                var spot = exercise.Notes[note].Note.Spot;
                Assert.Equal(
                    exercise.Instrument.IsOpen(spot) ? 0 : spot.Fret,
                    int.Parse(fret.Value, CultureInfo.InvariantCulture)
                );
            }

            Assert.Equal(exercise.Notes.Count, marked.Count);
        }
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Everything_lies_within_the_picture_and_words_do_not_touch(string sentence)
    {
        var engraver = warm.Engraver;
        foreach (var width in new[] { A4, Phone })
        {
            foreach (var system in engraver.Engrave(Played.Of(sentence), width).Systems)
            {
                Assert.InRange(system.WidthMm, width - 0.5, width + 0.5);
                Assert.InRange(system.HeightMm, 15, 75);
                var picture = XElement.Parse(system.Svg);
                var size = picture.Attribute("viewBox")!.Value.Split(' ').Select(Number).ToList();
                var down = Number(picture.Element(Svg + "g")!.Attribute("transform")!.Value.Split(' ', ')')[1]);
                var words = picture.Descendants(Svg + "text").Select(Letters.Of).ToList();
                Assert.All(
                    words,
                    word =>
                        Assert.True(
                            word.Left >= 0
                                && word.Right <= size[2]
                                && word.Top + down >= 0
                                && word.Bottom + down <= size[3],
                            $"{word} in {size[2]} by {size[3]}"
                        )
                );
                for (var one = 0; one < words.Count; one++)
                {
                    for (var other = one + 1; other < words.Count; other++)
                    {
                        Assert.False(words[one].Touches(words[other]), $"{words[one]} touches {words[other]}");
                    }
                }
            }
        }
    }

    [Fact]
    public void The_same_exercise_gives_the_same_picture_also_from_another_engine()
    {
        var exercise = Played.Of(Repertoire.Others[0]);
        var pictures = Enumerable.Range(0, 2).Select(_ => Fresh()).ToList();
        Assert.Equal(pictures[0], pictures[1]);

        EngravedExercise Fresh()
        {
            using var engraver = new Engraver();
            var first = engraver.Engrave(exercise, A4);
            Assert.Equal(first, engraver.Engrave(exercise, A4));
            return first;
        }
    }

    [Fact]
    public void Two_pictures_on_one_page_share_no_id()
    {
        var engraver = warm.Engraver;
        var ids = Repertoire
            .Others.Take(4)
            .SelectMany(sentence => engraver.Engrave(Played.Of(sentence), A4).Systems)
            .SelectMany(system => XElement.Parse(system.Svg).DescendantsAndSelf().Attributes("id"))
            .Select(id => id.Value)
            .ToList();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    [Fact]
    public void Without_its_file_the_tablature_is_text_and_a_warning_says_why()
    {
        using var engraver = new Engraver(null, Path.Combine(Path.GetTempPath(), Path.GetRandomFileName()));
        engraver.WarmUp();
        var engraved = engraver.Engrave(Played.Of("play the triads"), A4);
        Assert.Empty(engraved.Systems);
        Assert.Contains("|-", engraved.PlainText, StringComparison.Ordinal);
        Assert.Contains("plain-text tablature", engraved.Warning, StringComparison.Ordinal);
    }

    [Fact]
    public void An_engraver_given_up_engraves_no_more()
    {
        var engraver = new Engraver();
        engraver.Dispose();
        engraver.Dispose();
        Assert.Throws<ObjectDisposedException>(() => engraver.Engrave(Played.Of("play the triads"), A4));
    }

    private static IEnumerable<int> BarsOf(EngravedSystem system) =>
        XElement.Parse(system.Svg).Descendants().Attributes("data-bar").Select(bar => (int)bar);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
