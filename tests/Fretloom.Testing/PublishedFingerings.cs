using System.Text.Json;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Testing;

/// <summary>A published chord shape with its fingers.</summary>
/// <param name="Frets">From the string farthest from the floor: -1 not played, 0 open, else the fret on the neck.</param>
/// <param name="Fingers">A finger for each string; none where it is open or not played.</param>
/// <param name="Part">What the shape may be used for.</param>
public sealed record PublishedFingering(ValueList<int> Frets, ValueList<Finger> Fingers, FingeringPart Part)
{
    /// <summary>The notes, the string farthest from the floor first.</summary>
    public ValueList<Spot> Spots =>
        Frets
            .Select((fret, at) => (fret, String: Frets.Count - at))
            .Where(note => note.fret >= 0)
            .Select(note => new Spot(note.String, note.fret))
            .ToValueList();

    /// <summary>The fingers of <see cref="Spots"/>.</summary>
    public ValueList<Finger> PlayedFingers => Fingers.Where((_, at) => Frets[at] >= 0).ToValueList();

    /// <summary>The shape wherever it lies: equal for two shapes of which one is the other moved along the neck.</summary>
    public ValueList<int> Slide
    {
        get
        {
            var lowest = Frets.Where(fret => fret > 0).Min();
            return Frets.Select(fret => fret > 0 ? fret - lowest + 1 : fret).ToValueList();
        }
    }
}

/// <summary>The halves of the published shapes.</summary>
public enum FingeringPart
{
    /// <summary>Filed under a root that weights may be fitted to, if not only there.</summary>
    Tuning,

    /// <summary>Filed under the other roots only, but moved along the neck it stands in the tuning half.</summary>
    HeldOut,

    /// <summary>Held out, and no shape of the tuning half is the same moved along the neck.</summary>
    New,
}

/// <summary>The fingerings of the package chords-db, cleaned.</summary>
/// <remarks>
/// Left out: shapes with a fretted note without a finger or a finger on no note, a finger on two frets, a higher finger on a
/// lower fret, a finger laid across a string that sounds lower, and shapes of open strings only. A shape that stands more than
/// once is taken once, with its most frequent fingers, the first of them in the file when two are as frequent; where it stands in
/// both halves, it belongs to the tuning half and only that half's fingers count.
/// </remarks>
public static class PublishedFingerings
{
    private static readonly int[] TuningRoots = [.. "C D E F# Ab Bb".Split(' ').Select(PitchClassNumber)];

    private sealed record Row(ValueList<int> Frets, ValueList<Finger> Fingers, bool IsTuning);

    /// <summary>All clean shapes, in the order of the file.</summary>
    /// <param name="instrument"><c>guitar</c> or <c>ukulele</c>.</param>
    public static ValueList<PublishedFingering> Of(string instrument)
    {
        var shapes = Rows(instrument).Where(IsClean).GroupBy(row => row.Frets).Select(Merged).ToList();
        var seen = shapes.Where(shape => shape.Part == FingeringPart.Tuning).Select(shape => shape.Slide).ToHashSet();
        return shapes
            .Select(shape =>
                shape.Part == FingeringPart.HeldOut && !seen.Contains(shape.Slide)
                    ? shape with
                    {
                        Part = FingeringPart.New,
                    }
                    : shape
            )
            .ToValueList();
    }

    private static PublishedFingering Merged(IEnumerable<Row> rows)
    {
        var isTuning = rows.Any(row => row.IsTuning);
        var fingers = rows.Where(row => row.IsTuning == isTuning)
            .GroupBy(row => row.Fingers)
            .MaxBy(same => same.Count())!;
        return new(rows.First().Frets, fingers.Key, isTuning ? FingeringPart.Tuning : FingeringPart.HeldOut);
    }

    private static IEnumerable<Row> Rows(string instrument) =>
        from key in Oracle.PublishedChords(instrument).GetProperty("chords").EnumerateObject()
        from filed in key.Value.EnumerateArray()
        let isTuning = TuningRoots.Contains(PitchClassNumber(filed.GetProperty("key").GetString()!))
        from position in filed.GetProperty("positions").EnumerateArray()
        let first = position.GetProperty("baseFret").GetInt32()
        select new Row(
            Numbers(position, "frets").Select(fret => fret > 0 ? fret + first - 1 : fret).ToValueList(),
            Numbers(position, "fingers").Select(finger => (Finger)finger).ToValueList(),
            isTuning
        );

    private static IEnumerable<int> Numbers(JsonElement position, string name) =>
        position.GetProperty(name).EnumerateArray().Select(number => number.GetInt32());

    private static bool IsClean(Row row)
    {
        var pressed = row.Frets.Select((fret, at) => (Fret: fret, Finger: row.Fingers[at], At: at)).ToList();
        var down = pressed.Where(note => note.Finger != Finger.None).ToList();
        return down.Count > 0
            && pressed.All(note => note.Fret > 0 == (note.Finger != Finger.None))
            && down.All(one => down.All(other => one.Finger != other.Finger || one.Fret == other.Fret))
            && down.All(one => down.All(other => one.Finger >= other.Finger || one.Fret <= other.Fret))
            && down.All(one =>
                down.All(other =>
                    one.Finger != other.Finger
                    || pressed.All(note =>
                        note.At <= one.At || note.At >= other.At || note.Fret < 0 || note.Fret >= one.Fret
                    )
                )
            );
    }

    private static int PitchClassNumber(string root) => Chord.Parse(root).Root.PitchClass.Number;
}
