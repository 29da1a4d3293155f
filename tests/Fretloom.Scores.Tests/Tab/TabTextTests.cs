using CsCheck;
using Fretloom.Neck;
using Fretloom.Scores.Tab;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.Tab;

public class TabTextTests
{
    public static TheoryData<string> Sentences => [.. Repertoire.All];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Tablature_reads_back_to_the_same_spots(string sentence)
    {
        var exercise = Played.Of(sentence);
        var spots = exercise
            .Notes.GroupBy(note => note.At)
            .Select(chord => chord.Select(note => note.Note.Spot).ToValueList());
        foreach (var width in new[] { TabText.LeastWidth, 80, 200 })
        {
            Assert.Equal(spots, TabReader.Read(TabText.Write(exercise, width), exercise.Instrument));
            Assert.Equal(spots, TabReader.Read(TabText.Write(exercise, width, hasFingers: true), exercise.Instrument));
        }
    }

    [Fact]
    public void Any_spots_on_any_instrument_read_back() =>
        (
            from instrument in Gen.Int[0, Catalogue.All.Count - 1].Select(at => Catalogue.All[at])
            from spots in Gen.Select(Gen.Int[1, instrument.Strings.Count], Gen.Int[0, instrument.LastFret])
                .Where(place => instrument.Has(new Spot(place.Item1, place.Item2)))
                .Array[1, 20]
            select (instrument, spots: spots.Select(place => new Spot(place.Item1, place.Item2)).ToList())
        ).Sample(line =>
            Assert.Equal(
                line.spots,
                TabReader
                    .Read(TabText.Write(Played.InTurn(line.instrument, line.spots, 72)), line.instrument)
                    .Select(chord => Assert.Single(chord))
            )
        );

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Lines_of_a_system_are_aligned(string sentence)
    {
        var exercise = Played.Of(sentence);
        var count = exercise.Instrument.Strings.Count;
        var lines = TabText
            .Write(exercise)
            .Split('\n')
            .Where(line => line.Contains("|-", StringComparison.Ordinal))
            .ToList();
        Assert.Equal(0, lines.Count % count);
        foreach (var system in lines.Chunk(count))
        {
            var bars = Bars(system[0]);
            Assert.All(system, line => Assert.Equal(bars, Bars(line)));
            Assert.All(system, line => Assert.True(line.Length <= 80 || bars.Count == 2, line));
        }

        static List<int> Bars(string line) =>
            [.. line.Index().Where(sign => sign.Item == '|').Select(sign => sign.Index)];
    }

    [Theory]
    [InlineData("guitar", "play the seventh chords from I to IV, up and down, in eighths, at 72")]
    [InlineData("ukulele", "play the chords C Am F G7, on a ukulele, strummed, down down-up up-down-up")]
    [InlineData("banjo", "play the triads, on a banjo, in G major, up")]
    [InlineData("banjo-open", "play the open strings, on a banjo")]
    [InlineData("twelve-string", "play the chords C Am, on a twelve-string guitar, picked p-i-m-a")]
    [InlineData("triplets", "play the scale, 3 notes a string, in A minor, in triplets, up and down")]
    [InlineData("capo", "play the chords G D, strummed, down down-up, with a capo at 2, in 3/4")]
    public void Tablature_looks_right(string name, string sentence) =>
        Approved.Matches(
            TabText.Write(Played.Of(sentence), hasFingers: true),
            "Fretloom.Scores.Tests",
            "Tab",
            $"{name}.txt"
        );

    [Fact]
    public void Tablature_for_another_instrument_is_refused()
    {
        var guitar = TabText.Write(Played.Of("play the triads"));
        var error = Assert.Throws<FormatException>(() =>
            TabReader.Read(guitar, Played.Of("play the open strings, on a ukulele").Instrument)
        );
        Assert.Contains("ukulele", error.Message, StringComparison.Ordinal);
    }
}
