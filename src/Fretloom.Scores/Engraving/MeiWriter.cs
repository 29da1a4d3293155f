using System.Globalization;
using System.Text;
using System.Xml;
using Fretloom.Exercises;
using Fretloom.Exercises.Notation;
using Fretloom.Theory;

namespace Fretloom.Scores.Engraving;

/// <summary>Writes an exercise as the engraver reads it: notation above, tablature without stems below.</summary>
/// <remarks>
/// The Music Encoding Initiative's format, version 5.1 (music-encoding.org), as far as the engraver follows it. Pitches are those that sound. The
/// note at place 3 of the exercise has the id <c>n3</c> on the staff, its figure on the tablature <c>t3</c>; what is tied to it, <c>n3-1</c>.
/// </remarks>
internal static class MeiWriter
{
    /// <summary>The document.</summary>
    /// <param name="exercise">What is written.</param>
    /// <param name="firsts">The bars with which systems begin, counted from 1; null leaves the breaks to the engraver.</param>
    /// <remarks>A key that begins with a system begins a score of its own, for the system before would end with its signature.</remarks>
    public static string Write(Exercise exercise, IReadOnlyCollection<int>? firsts = null)
    {
        var text = new StringBuilder();
        using (
            var writer = XmlWriter.Create(
                new StringWriter(text, CultureInfo.InvariantCulture),
                new XmlWriterSettings { OmitXmlDeclaration = true }
            )
        )
        {
            var xml = new Elements(writer);
            xml.Within(
                "mei",
                () => xml.Within("music", () => xml.Within("body", () => Scores(xml, exercise, firsts ?? []))),
                ("meiversion", "5.1")
            );
        }

        return text.ToString();
    }

    private static void Scores(Elements xml, Exercise exercise, IReadOnlyCollection<int> firsts)
    {
        var bars = BarWriter.Write(exercise);
        var starts = exercise
            .Sections.Select(section => section.At / exercise.Metre.Bar + 1)
            .Where(bar => bar == 1 || firsts.Contains(bar))
            .ToList();
        foreach (var (at, start) in starts.Index())
        {
            var end = at + 1 < starts.Count ? starts[at + 1] : bars.Count + 1;
            xml.Within(
                "mdiv",
                () =>
                    xml.Within(
                        "score",
                        () =>
                        {
                            Head(xml, exercise, exercise.SectionAt(bars[start - 1].At).Key, start == 1);
                            xml.Within("section", () => Bars(xml, exercise, bars, new(start - 1, end - 1), firsts));
                        }
                    )
            );
        }
    }

    private static void Head(Elements xml, Exercise exercise, Key key, bool isFirst) =>
        xml.Within(
            "scoreDef",
            () =>
                xml.Within(
                    "staffGrp",
                    () =>
                    {
                        var clef = StaffClef.For(exercise.Instrument);
                        var isMoved = clef.OctaveChange < 0;
                        xml.Empty(
                            "staffDef",
                            ("n", 1),
                            ("lines", 5),
                            ("clef.shape", clef.Sign),
                            ("clef.line", clef.Line),
                            ("clef.dis", isMoved ? 8 : null),
                            ("clef.dis.place", isMoved ? "below" : null)
                        );
                        Tablature(xml, exercise);
                    },
                    ("bar.thru", "true")
                ),
            ("keysig", Signature(key)),
            ("meter.count", exercise.Metre.Count),
            ("meter.unit", exercise.Metre.Unit),
            ("meter.visible", isFirst ? null : "false")
        );

    private static void Tablature(Elements xml, Exercise exercise)
    {
        var open = exercise.Instrument.OpenPitches;
        xml.Within(
            "staffDef",
            () =>
                xml.Within(
                    "tuning",
                    () =>
                    {
                        for (var at = 0; at < open.Count; at++)
                        {
                            xml.Empty(
                                "course",
                                ("n", at + 1),
                                ("pname", PitchName(open[at])),
                                ("oct", open[at].Octave),
                                ("accid", Sign(open[at]))
                            );
                        }
                    }
                ),
            ("n", 2),
            ("lines", open.Count),
            ("notationtype", "tab.guitar"),
            ("clef.shape", "TAB"),
            ("meter.count", exercise.Metre.Count),
            ("meter.unit", exercise.Metre.Unit),
            ("meter.visible", "false")
        );
    }

    private static void Bars(
        Elements xml,
        Exercise exercise,
        ValueList<WrittenBar> bars,
        Range part,
        IReadOnlyCollection<int> firsts
    )
    {
        var places = exercise
            .Notes.Index()
            .ToDictionary(note => (note.Item.At, note.Item.Note.Spot), note => note.Index);
        var isStart = true;
        foreach (var bar in bars.Take(part))
        {
            if (firsts.Contains(bar.Number))
            {
                xml.Empty("pb");
            }

            var section = exercise.SectionAt(bar.At);
            if (bar.At == section.At && !isStart)
            {
                xml.Empty("scoreDef", ("keysig", Signature(section.Key)));
            }

            isStart = false;
            var isLast = bar.Number == bars.Count;
            var isRepeated = exercise.Passes.Count > 1;
            var endsPart = exercise.Sections.Any(other => other.At == bar.At + exercise.Metre.Bar);
            xml.Within(
                "measure",
                () => new MeiBar(xml, exercise, bar, places, firsts.Contains(bar.Number)).Write(),
                ("xml:id", $"b{bar.Number}"),
                ("n", bar.Number),
                ("left", isRepeated && bar.Number == 1 ? "rptstart" : null),
                (
                    "right",
                    isLast && isRepeated ? "rptend"
                    : isLast ? "end"
                    : endsPart ? "dbl"
                    : null
                )
            );
        }
    }

    /// <summary>The letter of a note.</summary>
    public static string PitchName(Pitch pitch) => pitch.Name.Step.ToString().ToLowerInvariant();

    /// <summary>The accidental of a note; null for none.</summary>
    public static string? Sign(Pitch pitch) =>
        pitch.Name.Alteration switch
        {
            1 => "s",
            -1 => "f",
            2 => "x",
            -2 => "ff",
            3 => "xs",
            -3 => "tf",
            _ => null,
        };

    private static string Signature(Key key) =>
        KeySignature.Of(key) switch
        {
            0 => "0",
            > 0 and var sharps => $"{sharps}s",
            var flats => $"{-flats}f",
        };
}
