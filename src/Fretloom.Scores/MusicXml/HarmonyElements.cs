using Fretloom.Exercises;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Scores.MusicXml;

/// <summary>Writes chord symbols with their boxes, and Roman numerals.</summary>
internal sealed class HarmonyElements(Elements xml, Exercise exercise)
{
    private readonly FrameElements _frame = new(xml, exercise);

    /// <summary>Writes a chord: the symbol above the staff, the numeral below it.</summary>
    public void Write(ChordMark mark)
    {
        xml.Within(
            "harmony",
            () =>
            {
                xml.Within("root", () => Note("root", mark.Chord.Root));
                var degrees = Kind(mark.Chord.Quality);
                if (mark.Chord.Bass != mark.Chord.Root)
                {
                    xml.Within("bass", () => Note("bass", mark.Chord.Bass));
                }

                Degrees(degrees);
                if (mark.Shape is { } shape)
                {
                    _frame.Write(mark, shape);
                }

                xml.Leaf("staff", 1);
            },
            ("placement", "above")
        );
        if (mark.Roman is { } roman)
        {
            xml.Within("harmony", () => Numeral(roman, exercise.SectionAt(mark.At).Key), ("placement", "below"));
        }
    }

    private void Numeral(RomanNumeral roman, Key key)
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

                if (roman.Target is { } target)
                {
                    xml.Within("numeral-key", () => KeyOf(target.InKey(key)));
                }
            }
        );
        var degrees = Kind(roman.Quality);
        if (roman.Inversion > 0)
        {
            xml.Leaf("inversion", roman.Inversion);
        }

        Degrees(degrees);
        xml.Leaf("staff", 1);
    }

    // A chord leads to another as it would in the major or minor key of that.
    private void KeyOf(Chord target)
    {
        var kind = target.Quality.IsMinorThird ? ScaleKind.NaturalMinor : ScaleKind.Major;
        xml.Leaf("numeral-fifths", KeySignature.Of(new Key(target.Root, kind)));
        xml.Leaf("numeral-mode", kind.Name);
    }

    private ValueList<ChordDegree> Kind(ChordQuality quality)
    {
        var (kind, degrees) = ChordKinds.Of(quality);
        xml.Leaf("kind", kind, ("text", quality.Symbol));
        return degrees;
    }

    // The text of the kind says them already.
    private void Degrees(ValueList<ChordDegree> degrees)
    {
        foreach (var degree in degrees)
        {
            xml.Within(
                "degree",
                () =>
                {
                    xml.Leaf("degree-value", degree.Number);
                    xml.Leaf("degree-alter", degree.Alteration);
                    xml.Leaf("degree-type", degree.Type);
                },
                ("print-object", "no")
            );
        }
    }

    private void Note(string name, NoteName note)
    {
        xml.Leaf($"{name}-step", note.Step);
        if (note.Alteration != 0)
        {
            xml.Leaf($"{name}-alter", note.Alteration);
        }
    }
}
