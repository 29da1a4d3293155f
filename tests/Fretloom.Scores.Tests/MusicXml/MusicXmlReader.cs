using System.Globalization;
using System.Xml;
using System.Xml.Linq;

namespace Fretloom.Scores.Tests.MusicXml;

/// <summary>A note as a score says it, with its ties joined. Times are in ticks of 480 to the quarter.</summary>
internal sealed record ReadNote(
    int At,
    int Length,
    string Step,
    int Alter,
    int Octave,
    string? Finger,
    int? String,
    int? Fret,
    string? Pluck
);

/// <summary>A small reader of MusicXML that knows nothing of the writer: it follows the durations and joins the ties.</summary>
internal static class MusicXmlReader
{
    /// <summary>The document.</summary>
    public static XDocument Parse(string text)
    {
        using var reader = XmlReader.Create(
            new StringReader(text),
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null }
        );
        return XDocument.Load(reader);
    }

    /// <summary>The notes of one staff by time, low strings and pitches first as they come.</summary>
    public static List<ReadNote> Notes(XDocument score, int staff)
    {
        var notes = new List<ReadNote>();
        var time = 0;
        var divisions = int.Parse(score.Descendants("divisions").First().Value, CultureInfo.InvariantCulture);
        foreach (var measure in score.Descendants("measure"))
        {
            var (start, end, at, chordAt) = (time, time, time, time);
            foreach (var element in measure.Elements())
            {
                var duration = Number(element.Element("duration")) * 480 / divisions ?? 0;
                switch (element.Name.LocalName)
                {
                    case "backup":
                        at -= duration;
                        break;
                    case "forward":
                        at += duration;
                        break;
                    case "note":
                        chordAt = element.Element("chord") is null ? at : chordAt;
                        at = chordAt + duration;
                        if (Number(element.Element("staff")) == staff && element.Element("pitch") is { } pitch)
                        {
                            Add(notes, element, pitch, chordAt, duration);
                        }

                        break;
                }

                end = Math.Max(end, at);
            }

            time = end;
            Assert.True(time > start, "a bar without time");
        }

        return notes;
    }

    private static void Add(List<ReadNote> notes, XElement element, XElement pitch, int at, int duration)
    {
        var technical = element.Elements("notations").Elements("technical").ToList();
        var note = new ReadNote(
            at,
            duration,
            pitch.Element("step")!.Value,
            Number(pitch.Element("alter")) ?? 0,
            Number(pitch.Element("octave"))!.Value,
            technical.Elements("fingering").SingleOrDefault()?.Value,
            Number(technical.Elements("string").SingleOrDefault()),
            Number(technical.Elements("fret").SingleOrDefault()),
            technical.Elements("pluck").SingleOrDefault()?.Value
        );
        if (element.Elements("tie").All(tie => tie.Attribute("type")!.Value != "stop"))
        {
            notes.Add(note);
            return;
        }

        var before = notes.FindLastIndex(other =>
            other.At + other.Length == at
            && (other.Step, other.Alter, other.Octave, other.String)
                == (note.Step, note.Alter, note.Octave, note.String ?? other.String)
        );
        Assert.True(before >= 0, $"a tie from nothing at {at}");
        notes[before] = notes[before] with { Length = notes[before].Length + duration };
    }

    private static int? Number(XElement? element) =>
        element is null ? null : int.Parse(element.Value, CultureInfo.InvariantCulture);
}
