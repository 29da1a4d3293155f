using Fretloom.Scores.MusicXml;
using Fretloom.Theory;

namespace Fretloom.Scores.Tests.MusicXml;

/// <summary>Chord kinds put together again from what is written, by the words of the MusicXML 4.0 schema.</summary>
public class ChordKindsTests
{
    // The kinds with their notes as semitones above the root, after the documentation of the type kind-value in the schema. The
    // eleventh of a major thirteenth is in the schema's kind and is left out by players.
    private static readonly Dictionary<string, int[]> Schema = new(StringComparer.Ordinal)
    {
        ["major"] = [0, 4, 7],
        ["minor"] = [0, 3, 7],
        ["augmented"] = [0, 4, 8],
        ["diminished"] = [0, 3, 6],
        ["dominant"] = [0, 4, 7, 10],
        ["major-seventh"] = [0, 4, 7, 11],
        ["minor-seventh"] = [0, 3, 7, 10],
        ["diminished-seventh"] = [0, 3, 6, 9],
        ["augmented-seventh"] = [0, 4, 8, 10],
        ["half-diminished"] = [0, 3, 6, 10],
        ["major-minor"] = [0, 3, 7, 11],
        ["major-sixth"] = [0, 4, 7, 9],
        ["minor-sixth"] = [0, 3, 7, 9],
        ["dominant-ninth"] = [0, 4, 7, 10, 14],
        ["major-ninth"] = [0, 4, 7, 11, 14],
        ["minor-ninth"] = [0, 3, 7, 10, 14],
        ["dominant-11th"] = [0, 4, 7, 10, 14, 17],
        ["major-11th"] = [0, 4, 7, 11, 14, 17],
        ["minor-11th"] = [0, 3, 7, 10, 14, 17],
        ["dominant-13th"] = [0, 4, 7, 10, 14, 21],
        ["major-13th"] = [0, 4, 7, 11, 14, 21],
        ["minor-13th"] = [0, 3, 7, 10, 14, 21],
        ["suspended-second"] = [0, 2, 7],
        ["suspended-fourth"] = [0, 5, 7],
        ["power"] = [0, 7],
    };

    // Semitones of the major and perfect intervals by number; an added seventh is reckoned from the minor one (type degree-alter).
    private static readonly Dictionary<int, int> Plain = new()
    {
        [1] = 0,
        [2] = 2,
        [3] = 4,
        [4] = 5,
        [5] = 7,
        [6] = 9,
        [7] = 10,
        [9] = 14,
        [10] = 16,
        [11] = 17,
        [13] = 21,
    };

    public static TheoryData<string> Symbols => [.. ChordQuality.All.Select(quality => quality.Symbol)];

    [Theory]
    [MemberData(nameof(Symbols))]
    public void Kind_and_degrees_give_the_notes_of_the_chord(string symbol)
    {
        var quality = ChordQuality.Parse(symbol);
        var (kind, degrees) = ChordKinds.Of(quality);
        var notes = Schema[kind].ToList();
        foreach (var (number, alteration, type) in degrees)
        {
            if (type == "add")
            {
                notes.Add(Plain[number] + alteration);
                continue;
            }

            // The note of the kind that has this number: the nearest to the plain one.
            var there = notes.MinBy(note => Math.Abs(note - Plain[number]));
            notes.Remove(there);
            if (type == "alter")
            {
                notes.Add(there + alteration);
            }
        }

        Assert.Equal(quality.Intervals.Select(interval => interval.Semitones).Order(), notes.Order());
    }

    [Theory]
    [InlineData("", "major", 0)]
    [InlineData("m7b5", "half-diminished", 0)]
    [InlineData("7#5", "augmented-seventh", 0)]
    [InlineData("sus4", "suspended-fourth", 0)]
    [InlineData("add9", "major", 1)]
    [InlineData("7b9", "dominant", 1)]
    [InlineData("7sus4", "suspended-fourth", 1)]
    public void A_chord_is_written_as_the_nearest_kind(string symbol, string kind, int degrees)
    {
        var found = ChordKinds.Of(ChordQuality.Parse(symbol));
        Assert.Equal((kind, degrees), (found.Kind, found.Degrees.Count));
    }
}
