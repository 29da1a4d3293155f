using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Exhibits;

/// <summary>What a hand changes: the order of the shapes, and nothing else.</summary>
public class ReachTests
{
    private static readonly string[] Sentences =
    [
        "the seventh chords, on strings 4-1",
        "the seventh chords, in drop 3, frets 0-15",
        "the triads, in every inversion, on a ukulele",
        "C, F, Bb and B7",
        "Bm and E7, easy, three strings, on a bass",
        "the scale and the triads, 3 notes a string, frets 0-15",
    ];

    private static readonly string[] Hands = ["a child's hand", "a small hand", "an adult hand", "a large hand"];

    public static TheoryData<string, string> Cases =>
        [.. Sentences.SelectMany(_ => Hands, (said, hand) => (said, hand))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Nothing_is_hidden_from_a_hand(string sentence, string hand)
    {
        var shapes = Shown(sentence).Shapes!.Value;
        var forHand = Shown($"{sentence}, for {hand}").Shapes!.Value;

        Assert.Equal(shapes.Count, forHand.Count);
        Assert.Empty(shapes.Except(forHand));
        Assert.Equal(shapes.Select(shape => shape.Source).Distinct(), forHand.Select(shape => shape.Source).Distinct());
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_each_chord_the_shapes_come_by_what_the_hand_reaches_and_else_as_they_are_found(
        string sentence,
        string hand
    )
    {
        var exhibit = Shown($"{sentence}, for {hand}");
        foreach (var group in exhibit.InHand.GroupBy(shape => shape.Shape.Source))
        {
            var found = Found(exhibit, group.Key, sentence);
            var expected = found
                .Where(shape => Is(shape, Width.InReach))
                .Concat(found.Where(shape => Is(shape, Width.Wide)))
                .Concat(found.Where(shape => Is(shape, Width.VeryWide) && !IsBeyondFingers(shape)))
                .Concat(found.Where(IsBeyondFingers));

            Assert.Equal(expected, group.Select(shape => shape.Shape));

            bool Is(Shape shape, Width width) => group.First(one => one.Shape == shape).Width == width;
            bool IsBeyondFingers(Shape shape) => group.First(one => one.Shape == shape).WhyNot is not null;
        }
    }

    // Frets 5-4-3-1 on strings 4 to 1 are some 126 mm apart (the distances of the table in Data/span_mm.csv): beyond what the
    // model lets fingers 1 and 4 of a hand of 165 mm reach.
    [Fact]
    public void Five_four_three_one_is_very_wide_for_a_hand_of_165_mm_and_comes_last()
    {
        var exhibit = Shown("the chord V7, in C major, on strings 4-1, frets 0-17, for a small hand");
        var last = exhibit.InHand.Last(shape => shape.WhyNot is null);
        var widest = Assert.NotNull(last.Fingering?.Widest);

        Assert.Equal("4:5 3:4 2:3 1:1", string.Join(' ', last.Shape.Spots));
        Assert.Equal((Width.VeryWide, Finger.Index, Finger.Little), (last.Width, widest.Lower, widest.Higher));
        Assert.InRange(widest.DistanceMm, 120, 132);
    }

    [Theory]
    [InlineData("a hand of 189 mm", Width.Wide)]
    [InlineData("a hand of 210 mm", Width.InReach)]
    public void The_same_shape_is_less_for_a_longer_hand(string hand, Width width) =>
        Assert.Equal(
            width,
            Assert.Single(Shown($"the chord V7, in C major, on strings 4-1, frets 0-8, for {hand}").InHand).Width
        );

    // Grips of every beginner's book (common practice, no source). One fret between fingers 2 and 3 near the nut must not push
    // them behind grips across the strings.
    [Theory]
    [InlineData("C", "x32010")]
    [InlineData("D", "xx0232")]
    [InlineData("E", "022100")]
    [InlineData("G", "320003")]
    [InlineData("A", "x02220")]
    [InlineData("Am", "x02210")]
    [InlineData("Em", "022000")]
    [InlineData("Dm", "xx0231")]
    public void First_grips_come_first_for_every_hand(string chord, string grip)
    {
        foreach (var hand in Hands)
        {
            var frets = Shown($"{chord}, one shape each, for {hand}")
                .Shapes!.Value[0]
                .Notes.ToDictionary(note => note.Spot.String, note => note.Spot.Fret);

            Assert.Equal(
                grip,
                string.Concat(
                    Enumerable
                        .Range(1, 6)
                        .Reverse()
                        .Select(number => frets.TryGetValue(number, out var fret) ? $"{fret}" : "x")
                )
            );
        }
    }

    // A shape is told off only when no fingering of it will do.
    [Fact]
    public void A_chord_is_very_wide_only_when_every_fingering_of_it_is()
    {
        var exhibit = Shown("C, F, Bb, B7 and Em, for a child's hand");
        foreach (var shape in exhibit.InHand)
        {
            var all = ChordFingering.Find(exhibit.Player, shape.Shape.Spots.ToValueList(), 10_000);

            Assert.Equal(
                all.Fingerings.All(fingering => fingering.Width == Width.VeryWide),
                shape.Width == Width.VeryWide
            );
            Assert.Contains(shape.Fingering!, all.Fingerings);
        }
    }

    [Theory]
    [InlineData("the triads, on a ukulele, for a small hand", "All 15 shapes are in reach of a hand of 165 mm.")]
    [InlineData(
        "the chord V7, on strings 4-1, frets 0-8, for a small hand",
        "The shape is very wide for a hand of 165 mm."
    )]
    [InlineData(
        "the chord I, on strings 3-1, one shape each, for a small hand",
        "The shape is in reach of a hand of 165 mm."
    )]
    [InlineData(
        "the seventh chords, on strings 4-1, for a hand of 176.5 mm",
        "4 of 6 shapes are in reach of a hand of 176.5 mm, 1 is wide, 1 is very wide."
    )]
    [InlineData("the notes of the key, for a small hand", null)]
    [InlineData("the triads", null)]
    public void What_a_hand_reaches_is_summed_up(string sentence, string? summary) =>
        Assert.Equal(summary, ReachReport.Of(Shown(sentence))?.Summary);

    [Fact]
    public void Each_shape_out_of_reach_has_a_line_with_what_to_do_instead()
    {
        var report = ReachReport.Of(Shown("the chord V7, on strings 4-1, frets 0-8, for a small hand"))!;

        Assert.StartsWith(
            "V7, frets 5-4-3-1 on strings 4-1: very wide, 128 mm between fingers 1 and 4. Instead: with a capo at 1, frets 2-4; ",
            Assert.Single(report.Lines),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("small", $"{report}", StringComparison.Ordinal);
    }

    [Fact]
    public void Where_all_is_in_reach_there_is_nothing_to_warn_of() =>
        Assert.Empty(ReachReport.Of(Shown("the triads, on a ukulele, for a large hand"))!.Lines);

    private static List<Shape> Found(Exhibit exhibit, ShapeSource source, string sentence) =>
        source is ShapeSource.OfChord chord
            ?
            [
                .. ShapeFinder.Find(
                    exhibit.Map,
                    chord,
                    sentence.Contains("easy", StringComparison.Ordinal) ? new Voicing.Easy(3, null)
                        : chord.Roman is null ? new Voicing.Strummed(null, [0])
                        : sentence.Contains("drop 3", StringComparison.Ordinal)
                            ? new Voicing.OneNotePerString(Arrangement.DropThree, [0])
                        : sentence.Contains("every", StringComparison.Ordinal)
                            ? new Voicing.OneNotePerString(Arrangement.Close, [])
                        : new Voicing.OneNotePerString(Arrangement.Close, [0])
                ),
            ]
            : [.. ScaleShapeFinder.NotesPerString(exhibit.Map, exhibit.Map.Key.Scale, 3)];

    private static Exhibit Shown(string sentence)
    {
        var answer = ShowQuestion.Answer(sentence, ShowDefaults.Standard);
        Assert.True(answer.IsRead, $"{sentence}\n{answer.Errors}");
        return answer.Value;
    }
}
