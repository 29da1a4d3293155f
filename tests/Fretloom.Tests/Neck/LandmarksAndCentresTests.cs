using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Tests.Neck;

/// <summary>
/// What the landmarks and the half-turns of major keys have to do with each other on the string sets that claims call listed. Frets 0 to 11
/// stand for the endless neck. The statements were worked out for this project by a separate program.
/// </summary>
public class LandmarksAndCentresTests
{
    private static readonly string[] Palindromic =
    [
        "guitar 4-1",
        "guitar 6-3",
        "guitar in fourths 6-1",
        "guitar in fourths 4-1",
        "low-G ukulele 4-1",
        "baritone ukulele 4-1",
        "bass 4-1",
        "five-string bass 5-1",
        "mandolin 4-1",
    ];

    public static TheoryData<string> PalindromicSets => [.. Palindromic];

    [Theory]
    [MemberData(nameof(PalindromicSets))]
    public void Steps_that_read_the_same_both_ways_give_every_major_key_two_centres_in_twelve_frets(string set)
    {
        foreach (var map in MajorKeysOn(set, "0-12"))
        {
            Assert.Equal(2, SymmetryFinder.Of(map).HalfTurnCentres.Count(centre => centre < 12));
        }
    }

    [Fact]
    public void Every_major_key_has_three_full_frets_and_one_empty_fret_on_a_centre_on_the_near_guitar_strings()
    {
        foreach (var map in MajorKeysOn("guitar 4-1", "0-11"))
        {
            var landmarks = Landmarks.Of(map);

            Assert.Equal(3, landmarks.FullFrets.Count);
            Assert.Contains(
                Assert.Single(landmarks.EmptyFrets),
                SymmetryFinder.Of(map).HalfTurnCentres.Select(centre => (int)centre)
            );
        }
    }

    [Fact]
    public void The_half_turn_carries_full_frets_to_full_frets()
    {
        foreach (var map in Palindromic.SelectMany(set => MajorKeysOn(set, "0-11")))
        {
            var full = Landmarks.Of(map).FullFrets;
            var centre = SymmetryFinder.Of(map).HalfTurnCentres[0];

            Assert.Equal(full, full.Select(fret => ((int)(2 * centre) - fret + 24) % 12).Order());
        }
    }

    [Fact]
    public void Over_an_octave_and_a_fret_three_of_the_twelve_major_keys_show_a_full_fret_twice() =>
        Assert.Equal(3, MajorKeysOn("guitar 4-1", "0-12").Count(map => Landmarks.Of(map).FullFrets.Count != 3));

    [Fact]
    public void On_the_whole_guitar_the_full_frets_are_those_of_the_near_strings_and_each_empty_fret_lies_just_above_one()
    {
        foreach (var (all, near) in MajorKeysOn("guitar 6-1", "0-11").Zip(MajorKeysOn("guitar 4-1", "0-11")))
        {
            var landmarks = Landmarks.Of(all);

            Assert.Equal(Landmarks.Of(near).FullFrets, landmarks.FullFrets);
            Assert.All(landmarks.EmptyFrets, fret => Assert.Contains((fret + 11) % 12, landmarks.FullFrets));
        }
    }

    /// <summary>The twelve major keys, each tonic once.</summary>
    private static IEnumerable<NeckMap> MajorKeysOn(string set, string frets)
    {
        var space = set.LastIndexOf(' ');
        return "C Db D Eb E F Gb G Ab A Bb B"
            .Split(' ')
            .Select(tonic => Necks.Map(set[..space], $"{tonic} major", set[(space + 1)..], frets));
    }
}
