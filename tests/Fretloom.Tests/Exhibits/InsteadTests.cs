using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Exhibits;

public class InsteadTests
{
    private static readonly string[] Tonics = "C Db D Eb E F F# G Ab A Bb B".Split(' ');

    private static readonly string[] Instruments = ["guitar", "ukulele", "bass"];

    private static readonly HandSize[] Hands = [HandSize.Child, HandSize.Small, HandSize.Adult, HandSize.Large];

    public static TheoryData<string, string> Everywhere =>
        [.. Instruments.SelectMany(_ => Tonics, (instrument, tonic) => (instrument, tonic))];

    [Theory]
    [MemberData(nameof(Everywhere))]
    public void What_is_said_instead_is_in_reach_and_sounds_the_same_chord(string instrument, string tonic)
    {
        foreach (var hand in Hands)
        {
            foreach (
                var what in new[]
                {
                    "the triads and the seventh chords",
                    $"{tonic}, {tonic}m, {tonic}7 and {tonic}maj7",
                }
            )
            {
                var exhibit = Shown($"{what}, on a {instrument}, in {tonic} major, for a hand of {hand}");
                AssertWellAdvised(exhibit);
            }
        }
    }

    [Theory]
    [InlineData("the seventh chords, in drop 2, frets 0-15, for a hand of 120 mm")]
    [InlineData("the ninth chords, on a guitar, in C major, for a small hand")]
    [InlineData("C/E, D7/F# and Am7/G, for a child's hand")]
    [InlineData("Bb, Eb and F7, easy, four strings, with a capo at 2, for a hand of 110 mm")]
    [InlineData("the sixth chords, in any order, frets 0-7, for a hand of 120 mm")]
    public void Every_voicing_is_helped(string sentence)
    {
        var exhibit = Shown(sentence);

        AssertWellAdvised(exhibit);
        Assert.Contains(exhibit.InHand, shape => shape.Instead.Count > 0);
    }

    [Fact]
    public void The_nearest_of_each_way_is_taken()
    {
        var everywhere = Shown("the seventh chords, in every inversion, frets 0-14, for a small hand");
        var reached = everywhere.InHand.Where(shape => shape.Width == Width.InReach).ToList();
        var tried = 0;
        foreach (var shape in everywhere.InHand.Where(shape => shape.Width != Width.InReach))
        {
            var same = reached.Where(other => Equals(other.Shape.Source, shape.Shape.Source)).ToList();
            AssertNearest(
                InsteadWay.HigherUp,
                same.Where(other => Lowest(other.Shape) > Lowest(shape.Shape) && SameStrings(other) && SameBass(other))
            );
            AssertNearest(InsteadWay.OtherStrings, same.Where(other => !SameStrings(other) && SameBass(other)));
            AssertNearest(InsteadWay.Inversion, same.Where(other => SameStrings(other) && !SameBass(other)));

            bool SameStrings(ShapeInHand other) => other.Shape.Strings == shape.Shape.Strings;
            bool SameBass(ShapeInHand other) => Bass(other.Shape) == Bass(shape.Shape);
            void AssertNearest(InsteadWay way, IEnumerable<ShapeInHand> candidates)
            {
                var said = shape.Instead.FirstOrDefault(one => one.Way == way);
                var distances = candidates.Select(one => Movement(shape.Shape, one.Shape)).ToList();
                Assert.Equal(distances.Count == 0, said is null);
                if (said is not null)
                {
                    tried++;
                    Assert.Equal(distances.Min(), Movement(shape.Shape, said.Shape), 9);
                }
            }
        }

        Assert.True(tried > 30);
    }

    // The seventh chord on the fifth degree of C, strings 4 to 1: its first alternatives by each way.
    [Theory]
    [InlineData(InsteadWay.Capo, "with a capo at 1, frets 2-4", "4:4 3:3 2:2 1:0")]
    [InlineData(InsteadWay.FewerStrings, "on strings 6-4 alone without the fifth, frets 2-3", "6:3 5:2 4:3")]
    public void A_way_says_where_it_leads(InsteadWay way, string words, string spots)
    {
        var shape = Assert.Single(Shown("the chord V7, on strings 4-1, frets 0-8, for a small hand").InHand);
        var instead = Assert.Single(shape.Instead, one => one.Way == way);

        Assert.Equal((words, spots), (instead.Words, string.Join(' ', instead.Shape.Spots)));
    }

    [Fact]
    public void Nothing_is_advised_where_the_body_is_in_the_way()
    {
        var shown = Shown("the seventh chords, in every inversion, frets 0-22, for a child's hand");

        Assert.All(
            shown.InHand.SelectMany(shape => shape.Instead).SelectMany(way => way.Shape.Spots),
            spot => Assert.InRange(spot.Fret, 0, 14)
        );
    }

    [Theory]
    [InlineData("the seventh chords")]
    [InlineData("F, Bb and B7")]
    public void Without_a_hand_named_nothing_else_is_looked_for(string sentence)
    {
        var exhibit = Shown(sentence);

        Assert.Contains(exhibit.InHand, shape => shape.Width != Width.InReach);
        Assert.All(exhibit.InHand, shape => Assert.Empty(shape.Instead));
    }

    private static void AssertWellAdvised(Exhibit exhibit)
    {
        foreach (var shape in exhibit.InHand)
        {
            AssertWellAdvised(exhibit, shape);
        }
    }

    private static void AssertWellAdvised(Exhibit exhibit, ShapeInHand shape)
    {
        Assert.True(shape.Width != Width.InReach || shape.Instead.Count == 0);
        Assert.Equal(shape.Instead.Count, shape.Instead.Select(instead => instead.Way).Distinct().Count());
        foreach (var instead in shape.Instead)
        {
            var there = exhibit.Map.Instrument.WithCapo(instead.Capo ?? exhibit.Map.Instrument.Capo);
            var chord = ((ShapeSource.OfChord)shape.Shape.Source).Chord;
            var (asked, sounds) = (
                PitchClasses(shape.Shape, exhibit.Map.Instrument),
                PitchClasses(instead.Shape, there)
            );

            Assert.Equal(Width.InReach, instead.Fingering.Width);
            Assert.Equal(instead.Shape.Notes.Count, instead.Fingering.Notes.Count);
            Assert.All(instead.Shape.Spots, spot => Assert.NotNull(instead.Fingering.FingerAt(spot)));
            Assert.Equal(shape.Shape.Source, instead.Shape.Source);
            Assert.Equal(instead.Way == InsteadWay.Capo, instead.Capo is not null);
            if (instead.Way == InsteadWay.FewerStrings)
            {
                Assert.InRange(instead.Shape.Notes.Count, 3, shape.Shape.Notes.Count - 1);
                Assert.Empty(sounds.Except(chord.Notes.Append(chord.Bass).Select(note => note.PitchClass.Number)));
                Assert.True(chord.Notes.Count >= 4 || asked.SetEquals(sounds));
            }
            else
            {
                Assert.True(asked.SetEquals(sounds));
            }

            Assert.Equal(instead.Way != InsteadWay.Inversion, Bass(shape.Shape) == Bass(instead.Shape));
            Assert.Contains(
                instead.Capo is null ? "fret" : $"with a capo at {instead.Capo}, ",
                instead.Words,
                StringComparison.Ordinal
            );
        }
    }

    private static HashSet<int> PitchClasses(Shape shape, Instrument instrument) =>
        [.. shape.Spots.Select(spot => instrument.MidiAt(spot)!.Value % 12)];

    private static string Bass(Shape shape) => shape.Notes.MinBy(note => note.Pitch.MidiNumber).Member;

    private static int Lowest(Shape shape) =>
        shape.Spots.Where(spot => spot.Fret > 0).Select(spot => spot.Fret).DefaultIfEmpty(0).Min();

    private static double Movement(Shape one, Shape other)
    {
        var (from, to) = (Middle(one), Middle(other));
        return Math.Sqrt(((from.X - to.X) * (from.X - to.X)) + ((from.Y - to.Y) * (from.Y - to.Y)));

        static (double X, double Y) Middle(Shape shape)
        {
            var points = shape.Spots.Select(Catalogue.Default.PointMm).ToList();
            return (points.Average(point => point.AlongMm), points.Average(point => point.AcrossMm));
        }
    }

    private static Exhibit Shown(string sentence)
    {
        var answer = ShowQuestion.Answer(sentence, ShowDefaults.Standard);
        Assert.True(answer.IsRead, $"{sentence}\n{answer.Errors}");
        return answer.Value;
    }
}
