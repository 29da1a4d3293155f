using System.Globalization;
using System.Xml.Linq;
using Fretloom.Hand;
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

    [Theory]
    [InlineData("play the scale, 3 notes a string, in D major, up and down, in eighths", A4)]
    [InlineData("play the seventh chords from I to IV, up and down, in eighths, at 72", 130.0)]
    [InlineData("play the seventh chords from I to IV, up and down, in eighths, at 72", Phone)]
    public void Systems_hold_as_many_bars_as_each_other(string sentence, double width)
    {
        var systems = warm.Engraver.Engrave(Played.Of(sentence), width).Systems;

        var counts = systems.Select(system => system.LastBar - system.FirstBar + 1).ToList();
        Assert.True(systems.Count > 1, "It is to have several systems.");
        Assert.InRange(counts.Max() - counts.Min(), 0, 1);
    }

    [Theory]
    [InlineData(A4)]
    [InlineData(Phone)]
    public void Through_the_keys_a_signature_stands_only_where_its_key_begins(double width)
    {
        var exercise = Played.Of("play the triads from I to IV, up, in every key, by fourths");
        var beginnings = exercise.Sections.Select(section => section.At / exercise.Metre.Bar + 1).ToList();
        var systems = warm.Engraver.Engrave(exercise, width).Systems;

        foreach (var system in systems)
        {
            Assert.True(
                beginnings.Contains(system.FirstBar)
                    || !beginnings.Exists(bar => bar > system.FirstBar && bar <= system.LastBar)
            );
            // A courtesy signature would stand after the last bar line, and after all notes.
            var picture = XElement.Parse(system.Svg);
            foreach (var bar in picture.Descendants().Where(part => part.Attribute("data-bar") is not null))
            {
                var last = Places(bar, "note").Max();
                Assert.All(Places(bar, "keySig"), signature => Assert.True(signature < last));
            }
        }
    }

    [Fact]
    public void The_names_of_keys_stand_in_one_row_above_all_chord_symbols_over_the_first_note()
    {
        var exercise = Played.Of("play the triads from I to IV, up, in every key, by fourths");
        foreach (var system in warm.Engraver.Engrave(exercise, A4).Systems)
        {
            var picture = XElement.Parse(system.Svg);
            var names = Words(picture, "reh");
            var symbols = Words(picture, "harm").Where(word => word.Attribute("font-weight") is not null);
            Assert.NotEmpty(names);
            Assert.Single(names.Select(name => name.Attribute("y")!.Value).Distinct());
            var line = Number(names[0].Attribute("y")!.Value);
            Assert.All(symbols, symbol => Assert.True(Number(symbol.Attribute("y")!.Value) > line + 300));
            foreach (var (name, section) in names.Zip(exercise.Sections.Where(section => IsIn(section.At))))
            {
                Assert.Equal(section.Heading, name.Value);
                var bar = picture
                    .Descendants()
                    .Single(part => (int?)part.Attribute("data-bar") == section.At / exercise.Metre.Bar + 1);
                Assert.Equal(Places(bar, "note").Min(), Number(name.Attribute("x")!.Value), 1);
            }

            bool IsIn(Fretloom.Exercises.Beats at) =>
                at / exercise.Metre.Bar + 1 >= system.FirstBar && at / exercise.Metre.Bar + 1 <= system.LastBar;
        }
    }

    [Theory]
    [InlineData("play the chords Am F C G7, strummed, down down-up up-down-up, at 50, sustained", 130.0)]
    [InlineData("play the chords Am F C G7, strummed, down down-up up-down-up, at 50, sustained", A4)]
    public void The_tempo_stands_above_everything_and_alone(string sentence, double width)
    {
        var picture = XElement.Parse(warm.Engraver.Engrave(Played.Of(sentence), width).Systems[0].Svg);

        var tempo = Assert.Single(Words(picture, "tempo"));
        Assert.Equal("= 50, let ring", tempo.Value);
        var line = Number(tempo.Attribute("y")!.Value);
        var others = picture.Descendants(Svg + "text").Where(word => word != tempo);
        Assert.All(others, word => Assert.True(Letters.Of(word).Top > line));
    }

    /// <summary>G7 on a ukulele: F and G are neighbours on the staff, and their fingers must still stand in the order of the strings.</summary>
    [Fact]
    public void Fingers_of_a_chord_stand_one_above_the_other_by_string()
    {
        var exercise = Played.Of("play the chords G7 C, on a ukulele, strummed, down down-up up-down-up");
        var picture = XElement.Parse(warm.Engraver.Engrave(exercise, A4).Systems[0].Svg);

        var chord = exercise.Notes.TakeWhile(note => note.At == default).ToList();
        var seconds = chord.Select(note => note.Note.Pitch.MidiNumber).Order().ToList();
        Assert.Contains(seconds.Zip(seconds.Skip(1)), pair => pair.Second - pair.First <= 2);
        var wanted = chord.Where(note => note.Finger != Finger.None).Select(note => note.Finger.ToLabel()).ToList();
        var fingers = Words(picture, "fing").Take(wanted.Count).ToList();
        Assert.Single(fingers.Select(word => word.Attribute("x")!.Value).Distinct());
        Assert.Equal(
            wanted,
            fingers.OrderByDescending(word => Number(word.Attribute("y")!.Value)).Select(word => word.Value)
        );
    }

    /// <summary>A tenth of a millimetre between a figure and a stem reads as one sign; ours, without source.</summary>
    [Theory]
    [InlineData(
        "play the seventh chords from IV to III, on a low-G ukulele, in F major, on strings 4-1, frets 0-17, in quarters"
    )]
    [InlineData("play the scale, up and down, in G major, in quarters")]
    public void No_finger_touches_a_stem_and_no_numeral_the_staff(string sentence)
    {
        const double Apart = 40;
        var exercise = Played.Of(sentence);
        foreach (
            var picture in warm.Engraver.Engrave(exercise, A4).Systems.Select(system => XElement.Parse(system.Svg))
        )
        {
            var stems = Groups(picture, "stem").Elements(Svg + "path").Select(EndsOf).ToList();
            Assert.NotEmpty(stems);
            var fingers = Words(picture, "fing").Select(Letters.Of).ToList();
            Assert.NotEmpty(fingers);
            Assert.All(
                fingers,
                finger =>
                    Assert.DoesNotContain(
                        stems,
                        stem =>
                            stem.Top < finger.Bottom && stem.X > finger.Left - Apart && stem.X < finger.Right + Apart
                    )
            );

            var staff = Groups(picture, "staff").First().Elements(Svg + "path").Max(line => EndsOf(line).Top);
            var numerals = Words(picture, "harm").Where(word => word.Attribute("font-weight") is null);
            Assert.All(numerals, numeral => Assert.True(Letters.Of(numeral).Top > staff + Apart));
        }

        static (double X, double Top) EndsOf(XElement path)
        {
            var ends = path.Attribute("d")!
                .Value.Split('M', 'L', ' ')
                .Where(part => part.Length > 0)
                .Select(Number)
                .ToList();
            return (ends[0], Math.Min(ends[1], ends[3]));
        }
    }

    [Fact]
    public void The_figure_of_a_triplet_stands_below_where_no_fingers_are()
    {
        var exercise = Played.Of("play the scale, 3 notes a string, in C major, up, in triplets");
        foreach (
            var picture in warm.Engraver.Engrave(exercise, A4).Systems.Select(system => XElement.Parse(system.Svg))
        )
        {
            var fingers = Words(picture, "fing").Max(word => Number(word.Attribute("y")!.Value));
            var figures = Groups(picture, "tupletNum").SelectMany(figure => figure.Descendants(Svg + "use")).ToList();
            Assert.NotEmpty(figures);
            Assert.All(figures, figure => Assert.True(Down(figure) > fingers));
        }

        static double Down(XElement use) => Number(use.Attribute("transform")!.Value.Split(',', ')')[1]);
    }

    [Fact]
    public void The_counts_of_a_strum_stand_again_where_a_system_begins()
    {
        var exercise = Played.Of("play the chords Am F C G7, strummed, down down-up up-down-up");
        var systems = warm.Engraver.Engrave(exercise, Phone).Systems;

        Assert.True(systems.Count > 1);
        Assert.All(
            systems,
            system =>
                Assert.Equal(
                    ["1", "2", "&", "&", "4", "&"],
                    Words(XElement.Parse(system.Svg), "dir")
                        .Select(word => word.Value)
                        .Where(word => word is not ("↓" or "↑"))
                )
        );
    }

    private static IEnumerable<XElement> Groups(XElement within, string kind) =>
        within.Descendants(Svg + "g").Where(group => group.Attribute("class")?.Value == kind);

    private static List<XElement> Words(XElement within, string kind) =>
        [.. Groups(within, kind).SelectMany(group => group.Descendants(Svg + "text"))];

    // Where the signs of a kind lie from left to right.
    private static IEnumerable<double> Places(XElement within, string kind) =>
        Groups(within, kind)
            .SelectMany(group => group.Descendants(Svg + "use"))
            .Select(use => Number(use.Attribute("transform")!.Value.Split('(', ',')[1]));

    private static IEnumerable<int> BarsOf(EngravedSystem system) =>
        XElement.Parse(system.Svg).Descendants().Attributes("data-bar").Select(bar => (int)bar);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
