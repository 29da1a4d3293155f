using System.Xml.Linq;
using Fretloom.Lessons;
using Fretloom.Neck;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Html;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Documents;

public class KeysOverviewTests
{
    private static string[][][] Tables(string front, KeyOrder order = KeyOrder.Fourths)
    {
        var home = Lesson.Parse($"---\ntitle: T\n{front}\n---\n");
        Assert.False(home.HasErrors);
        var overview = new KeysOverview(home, TwelveKeys.From(home.HomeKey, order), order, key => $"t {key}");
        var html = HtmlPage.Of(overview.Page(["html", "pdf"]), "", default);
        return
        [
            .. XDocument
                .Parse(html.Replace("<!doctype html>", "", StringComparison.Ordinal))
                .Descendants("table")
                .Select(table =>
                    table.Descendants("tr").Select(row => row.Elements().Select(Marked).ToArray()).ToArray()
                ),
        ];
    }

    private static string Marked(XElement cell) =>
        string.Concat(
                cell.Nodes()
                    .Select(node =>
                        node is XElement { Name.LocalName: "strong" } bold ? $"*{bold.Value}*"
                        : node is XElement { Name.LocalName: "a" } link
                            ? $"[{link.Value}]({link.Attribute("href")!.Value})"
                        : node is XElement other ? other.Value
                        : node.ToString()
                    )
            )
            .Replace('\u00a0', ' ')
            .Trim();

    // Common practice, no source: going from C major to F major, B gives way to B flat, the fourth degree.
    [Fact]
    public void A_row_names_the_notes_of_the_key_what_is_new_and_what_goes()
    {
        var row = Tables("instrument: guitar\nkey: C major")[0][2];

        Assert.Equal("[F major](t%20F%20major.html) · [PDF](t%20F%20major.pdf)", row[0]);
        Assert.Equal(["F", "G", "A", "*B♭*", "C", "D", "E"], row[1..8]);
        Assert.Equal("B", row[^1]);
    }

    // Common practice, no source: in German B flat is B and B natural H.
    [Fact]
    public void Notes_are_named_as_the_lesson_names_them()
    {
        var row = Tables("key: C major\nnote-names: german")[0][2];

        Assert.Equal("*B*", row[4]);
        Assert.Equal("H", row[^1]);
    }

    [Fact]
    public void Twelve_keys_have_twelve_rows_and_eleven_changes()
    {
        var tables = Tables("key: A minor", KeyOrder.HalfSteps);

        Assert.Equal([13, 12], tables.Select(table => table.Length));
        Assert.Equal(["", ""], tables[0][1][^2..]);
        Assert.Equal("B♭ minor", tables[1][1][0]);
    }

    // Counted out by hand: from E to E, F major has E F G A B flat C D E, of which B flat is not in C major.
    [Fact]
    public void What_stays_is_counted_on_the_strings_of_the_lesson() =>
        Assert.Equal("7 of 8", Tables("key: C major\nstrings: 6")[0][2][8]);

    [Theory]
    [InlineData("instrument: guitar\nkey: D major\nfrets: 5-9")]
    [InlineData("instrument: re-entrant ukulele\nkey: G minor")]
    [InlineData("instrument: banjo\nkey: G major\nfrets: 0-17")]
    [InlineData("instrument: bass\nkey: G harmonic minor\ncapo: 2")]
    public void Counts_are_those_of_looking_at_every_spot(string front)
    {
        var defaults = Lesson.Parse($"---\ntitle: T\n{front}\n---\n").Front;
        var instrument = defaults.Defaults.Instrument.WithCapo(defaults.Capo);
        var keys = TwelveKeys.From(defaults.Defaults.Key!, KeyOrder.HalfSteps);
        var spots = new NeckMap(
            instrument,
            keys[0],
            instrument.AllStrings,
            defaults.Defaults.Frets ?? new FretRange(0, 12)
        ).Spots.ToList();

        var rows = Tables(front, KeyOrder.HalfSteps)[0];

        for (var at = 1; at < 12; at++)
        {
            var here = spots.Where(spot => IsIn(keys[at], spot)).ToList();
            Assert.Equal($"{here.Count(spot => IsIn(keys[at - 1], spot))} of {here.Count}", rows[at + 1][8]);
        }

        bool IsIn(Key key, Spot spot) =>
            key.PitchClasses.Contains(PitchClass.FromSemitones(instrument.MidiAt(spot)!.Value));
    }

    // Counted out by hand: five frets up, G, A, E and F sharp stay below fret 12; B, C and D, at frets 7, 8 and 10, pass it.
    [Fact]
    public void Marks_that_pass_the_last_fret_are_counted_apart()
    {
        var row = Tables("instrument: bass\nkey: G major\nstrings: 4\nfrets: 0-11")[1][1];

        Assert.Equal(["C major", "5 up", "1", "1", "0 + 1", "0 + 1", "0 + 1", "1", "1"], row);
    }

    [Fact]
    public void A_mark_without_a_place_stands_in_brackets() =>
        Assert.Contains(
            Tables("instrument: bass\nkey: G major\nstrings: 4\nfrets: 0-4")[1].SelectMany(row => row),
            cell => cell.EndsWith("(1)", StringComparison.Ordinal)
        );
}
