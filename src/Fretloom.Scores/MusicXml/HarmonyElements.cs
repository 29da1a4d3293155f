using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Scores.MusicXml;

/// <summary>Writes chord symbols with their boxes, and Roman numerals.</summary>
internal sealed class HarmonyElements(Elements xml, Instrument instrument)
{
    private const int LeastFrets = 4;

    private static readonly Dictionary<string, string> Kinds = new(StringComparer.Ordinal)
    {
        [""] = "major",
        ["m"] = "minor",
        ["dim"] = "diminished",
        ["aug"] = "augmented",
        ["7"] = "dominant",
        ["maj7"] = "major-seventh",
        ["m7"] = "minor-seventh",
        ["dim7"] = "diminished-seventh",
        ["m7b5"] = "half-diminished",
        ["aug7"] = "augmented-seventh",
        ["mMaj7"] = "major-minor",
        ["m(maj7)"] = "major-minor",
        ["6"] = "major-sixth",
        ["m6"] = "minor-sixth",
        ["9"] = "dominant-ninth",
        ["maj9"] = "major-ninth",
        ["m9"] = "minor-ninth",
        ["11"] = "dominant-11th",
        ["maj11"] = "major-11th",
        ["m11"] = "minor-11th",
        ["13"] = "dominant-13th",
        ["maj13"] = "major-13th",
        ["m13"] = "minor-13th",
        ["sus2"] = "suspended-second",
        ["sus4"] = "suspended-fourth",
        ["5"] = "power",
    };

    /// <summary>Writes a chord: the symbol above the staff, the numeral below it.</summary>
    public void Write(ChordMark mark)
    {
        xml.Within(
            "harmony",
            () =>
            {
                xml.Within("root", () => Note("root", mark.Chord.Root));
                Kind(mark.Chord.Quality);
                if (mark.Chord.Bass != mark.Chord.Root)
                {
                    xml.Within("bass", () => Note("bass", mark.Chord.Bass));
                }

                if (mark.Shape is { } shape)
                {
                    Frame(shape);
                }

                xml.Leaf("staff", 1);
            },
            ("placement", "above")
        );
        if (mark.Roman is { } roman)
        {
            xml.Within(
                "harmony",
                () =>
                {
                    xml.Within(
                        "numeral",
                        () =>
                        {
                            xml.Leaf("numeral-root", roman.Degree.Number, ("text", roman));
                            if (!roman.Degree.IsDiatonic)
                            {
                                xml.Leaf("numeral-alter", roman.Degree.Alteration);
                            }
                        }
                    );
                    Kind(mark.Chord.Quality);
                    xml.Leaf("staff", 1);
                },
                ("placement", "below")
            );
        }
    }

    private void Kind(ChordQuality quality) =>
        xml.Leaf("kind", Kinds.GetValueOrDefault(quality.Symbol, "other"), ("text", quality.Symbol));

    private void Note(string name, NoteName note)
    {
        xml.Leaf($"{name}-step", note.Step);
        if (note.Alteration != 0)
        {
            xml.Leaf($"{name}-alter", note.Alteration);
        }
    }

    private void Frame(Shape shape)
    {
        var pressed = shape
            .Spots.Where(spot => !instrument.IsOpen(spot))
            .Select(spot => spot.Fret)
            .DefaultIfEmpty(1)
            .ToList();
        var first = pressed.Max() <= LeastFrets ? 1 : pressed.Min();
        xml.Within(
            "frame",
            () =>
            {
                xml.Leaf("frame-strings", instrument.Strings.Count);
                xml.Leaf("frame-frets", Math.Max(LeastFrets, pressed.Max() - first + 1));
                if (first > 1)
                {
                    xml.Leaf("first-fret", first);
                }

                foreach (var spot in shape.Spots)
                {
                    xml.Within(
                        "frame-note",
                        () =>
                        {
                            xml.Leaf("string", spot.String);
                            xml.Leaf("fret", spot.Fret - instrument.String(spot.String).StartsAtFret);
                        }
                    );
                }
            }
        );
    }
}
