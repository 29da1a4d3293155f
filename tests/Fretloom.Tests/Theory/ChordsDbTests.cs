using System.Globalization;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

/// <summary>
/// Published chord fingerings as an outside check of naming: the notes of each shape must have among their names the chord that the
/// shape is filed under, but for the faults listed with their reasons in <c>Data/chords_db_faults.txt</c>. Source: @tombatossals/chords-db 0.5.1, open data (MIT).
/// </summary>
public class ChordsDbTests(ITestOutputHelper output)
{
    private sealed record Shape(
        string Filed,
        Chord Chord,
        bool IsSlash,
        PitchClassSet Notes,
        PitchClass Bass,
        string Frets
    )
    {
        public override string ToString() => $"{Filed} | {Frets} | {Notes.Transpose(-Chord.Root.PitchClass.Number)}";
    }

    [Theory]
    [InlineData("guitar", 2069)]
    [InlineData("ukulele", 2114)]
    public void Notes_of_a_published_shape_are_named_as_it_is_filed(string instrument, int count)
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");

        var shapes = Shapes(instrument).ToList();
        var unlike = shapes.Where(shape => !IsNamedAsFiled(shape)).ToList();
        var rate = 100.0 * (shapes.Count - unlike.Count) / shapes.Count;
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{instrument}: {shapes.Count - unlike.Count} of {shapes.Count} named as filed ({rate:F2} %)"
            )
        );

        Assert.Equal(count, shapes.Count);
        Assert.Equal(KnownFaults(instrument), unlike.Select(shape => shape.ToString()).Order(StringComparer.Ordinal));
    }

    private static IEnumerable<string> KnownFaults(string instrument) =>
        File.ReadLines(Repository.PathTo("tests", "Fretloom.Tests", "Data", "chords_db_faults.txt"))
            .Select(line => line.Split(" | "))
            .Where(fields => fields[0] == instrument)
            .Select(fields => string.Join(" | ", fields[1..4]))
            .Order(StringComparer.Ordinal);

    private static bool IsNamedAsFiled(Shape shape) =>
        ChordNamer
            .Name(shape.Notes, shape.Bass)
            .Any(name =>
                name.Chord.Root.PitchClass == shape.Chord.Root.PitchClass
                && name.Chord.Quality == shape.Chord.Quality
                && (!shape.IsSlash || shape.Chord.Bass.PitchClass == shape.Bass)
            );

    private static IEnumerable<Shape> Shapes(string instrument) =>
        from key in Oracle.PublishedChords(instrument).GetProperty("chords").EnumerateObject()
        from filed in key.Value.EnumerateArray()
        let root = filed.GetProperty("key").GetString()!
        let suffix = filed.GetProperty("suffix").GetString()!
        let chord = Chord.Parse(root + Suffix(suffix))
        from position in filed.GetProperty("positions").EnumerateArray()
        let midi = position.GetProperty("midi").EnumerateArray().Select(note => note.GetInt32()).ToList()
        select new Shape(
            $"{root} {suffix}",
            chord,
            chord.Bass != chord.Root,
            PitchClassSet.Of(midi.Select(PitchClass.FromSemitones)),
            PitchClass.FromSemitones(midi.Min()),
            $"{string.Join(' ', position.GetProperty("frets").EnumerateArray())} from {position.GetProperty("baseFret")}"
        );

    // The data's own suffixes. Its alt is a major triad with a flat fifth (every one of its shapes is {0,4,6}), its 7sg a C7 over G.
    private static string Suffix(string filed) =>
        filed switch
        {
            "major" => "",
            "minor" => "m",
            "alt" => "majb5",
            "7sg" => "7/G",
            "b13b9" => "7b9b13",
            "b13#9" => "7#9b13",
            _ when filed.StartsWith("mmaj", StringComparison.Ordinal) => "mMaj" + filed[4..],
            _ => filed,
        };
}
