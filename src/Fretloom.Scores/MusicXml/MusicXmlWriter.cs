using System.Globalization;
using System.Text;
using System.Xml;
using Fretloom.Exercises;
using Fretloom.Exercises.Notation;
using Fretloom.Theory;

namespace Fretloom.Scores.MusicXml;

/// <summary>Writes an exercise as MusicXML 4.0, partwise: one part with a notation staff and a tablature staff.</summary>
/// <remarks>
/// Pitches are those that sound; the clef says by how many octaves the staff is written higher. One pass is written, with repeat
/// signs where there are several. Fingers of the fretting hand stand on the notation staff, string and fret on the tablature. MusicXML
/// 4.0, W3C Community Group Final Report 2021.
/// </remarks>
public static class MusicXmlWriter
{
    /// <summary>The document.</summary>
    /// <param name="exercise">What is written.</param>
    public static string Write(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var text = new StringBuilder();
        using (
            var writer = XmlWriter.Create(
                new Utf8Text(text),
                new XmlWriterSettings { Indent = true, NewLineChars = "\n" }
            )
        )
        {
            writer.WriteStartDocument();
            writer.WriteDocType(
                "score-partwise",
                "-//Recordare//DTD MusicXML 4.0 Partwise//EN",
                "http://www.musicxml.org/dtds/partwise.dtd",
                null
            );
            new ScoreElements(new Elements(writer), exercise).Write();
        }

        return text.Append('\n').ToString();
    }

    private sealed class Utf8Text(StringBuilder text) : StringWriter(text, CultureInfo.InvariantCulture)
    {
        public override Encoding Encoding => new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
    }
}
