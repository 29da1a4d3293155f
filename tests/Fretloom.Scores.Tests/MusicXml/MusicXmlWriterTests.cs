using System.IO.Compression;
using System.Xml.Linq;
using Fretloom.Exercises;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Scores.Engraving;
using Fretloom.Scores.MusicXml;
using Fretloom.Scores.Scripting;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.MusicXml;

public class MusicXmlWriterTests
{
    public static TheoryData<string> Sentences => [.. Repertoire.All];

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Files_fit_the_schema(string sentence)
    {
        Assert.SkipWhen(MusicXmlSchema.WhyNot is not null, MusicXmlSchema.WhyNot ?? "");
        Assert.Empty(MusicXmlSchema.Errors(MusicXmlWriter.Write(Played.Of(sentence))));
    }

    // MusicXML 4.0, element staccato: a dot, once for a chord, and not on what a note is tied to.
    [Theory]
    [InlineData("play C, F and G7, strummed, in quarters, short", 1)]
    [InlineData("play C, F and G7, strummed, in quarters", 0)]
    public void What_is_short_has_a_dot(string sentence, int dots)
    {
        var exercise = Played.Of(sentence);
        var places = exercise.Notes.Select(note => note.At).Distinct().Count();
        var score = XDocument.Parse(MusicXmlWriter.Write(exercise));
        Assert.Equal(dots * places, score.Descendants("staccato").Count());
        Assert.Empty(score.Descendants("note").Where(note => (int)note.Element("staff")! == 2).Descendants("staccato"));
    }

    [Fact]
    public void The_schema_refuses_what_is_wrong()
    {
        Assert.SkipWhen(MusicXmlSchema.WhyNot is not null, MusicXmlSchema.WhyNot ?? "");
        var score = MusicXmlWriter.Write(Played.Of("play the triads"));
        Assert.NotEmpty(MusicXmlSchema.Errors(score.Replace("<fret>", "<fred>").Replace("</fret>", "</fred>")));
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Both_staves_carry_exactly_the_notes(string sentence)
    {
        var exercise = Played.Of(sentence);
        var score = MusicXmlReader.Parse(MusicXmlWriter.Write(exercise));
        Assert.Equal(
            exercise.Notes.Select(note => Said(note) with { String = null, Fret = null }).Order(ByTime),
            MusicXmlReader.Notes(score, 1).Order(ByTime)
        );
        Assert.Equal(
            exercise.Notes.Select(note => Said(note) with { Finger = null, Pluck = null }).Order(ByTime),
            MusicXmlReader.Notes(score, 2).Order(ByTime)
        );

        ReadNote Said(ExerciseNote note) =>
            new(
                note.At.Ticks,
                note.Length.Ticks,
                note.Note.Pitch.Name.Step.ToString(),
                note.Note.Pitch.Name.Alteration,
                note.Note.Pitch.Octave,
                note.Finger == Finger.None ? null : note.Finger.ToLabel(),
                note.Note.Spot.String,
                note.Note.Spot.Fret - exercise.Instrument.String(note.Note.Spot.String).StartsAtFret,
                note.Picked > Picked.Up ? "pima"[note.Picked - Picked.Thumb].ToString() : null
            );
    }

    [Theory]
    [MemberData(nameof(Sentences))]
    public void The_tuning_and_the_fret_give_the_pitch(string sentence)
    {
        var score = MusicXmlReader.Parse(MusicXmlWriter.Write(Played.Of(sentence)));
        var tunings = score
            .Descendants("staff-tuning")
            .ToDictionary(line => (int)line.Attribute("line")!, line => Midi(line, "tuning-"));
        var lines = (int)score.Descendants("staff-lines").Single();
        var capo = (int?)score.Descendants("capo").SingleOrDefault() ?? 0;
        Assert.Equal(Enumerable.Range(1, lines), tunings.Keys.Order());
        foreach (var note in MusicXmlReader.Notes(score, 2))
        {
            var sounds = new XElement(
                "pitch",
                new XElement("step", note.Step),
                new XElement("alter", note.Alter),
                new XElement("octave", note.Octave)
            );
            Assert.Equal(Midi(sounds, ""), tunings[lines + 1 - note.String!.Value] + capo + note.Fret!.Value);
        }
    }

    [Fact]
    public void The_engraver_reads_every_file_without_a_warning()
    {
        lock (ScriptRuntime.Gate)
        {
            using var engraver = new EngraverEngine(EngraverEngine.Library);
            foreach (var sentence in Repertoire.All)
            {
                engraver.Engrave(MusicXmlWriter.Write(Played.Of(sentence)), """{"xmlIdSeed": 1}""");
                Assert.True(engraver.Log.Trim().Length == 0, $"{sentence}: {engraver.Log}");
            }
        }
    }

    [Fact]
    public void A_small_score_reads_as_it_should() =>
        Approved.Matches(
            MusicXmlWriter.Write(Played.Of("play the chords V7 I, picked p-i-m-a, in G major, twice")),
            "Fretloom.Scores.Tests",
            "MusicXml",
            "small.musicxml"
        );

    [Fact]
    public void The_packed_file_holds_the_score_and_names_it()
    {
        var exercise = Played.Of("play the triads");
        var bytes = MxlFile.Write(exercise);
        Assert.Equal(bytes, MxlFile.Write(exercise));
        using var zip = new ZipArchive(new MemoryStream(bytes));
        Assert.Equal("META-INF/container.xml", zip.Entries[0].FullName);
        var container = XDocument.Load(zip.Entries[0].Open());
        var path = container.Descendants("rootfile").First().Attribute("full-path")!.Value;
        using var score = new StreamReader(zip.GetEntry(path)!.Open());
        Assert.Equal(MusicXmlWriter.Write(exercise), score.ReadToEnd());
    }

    private static Comparer<ReadNote> ByTime { get; } =
        Comparer<ReadNote>.Create((one, other) => Place(one).CompareTo(Place(other)));

    private static (int, int, int, string, int) Place(ReadNote note) =>
        (note.At, note.String ?? 0, note.Octave, note.Step, note.Alter);

    private static int Midi(XElement pitch, string prefix) =>
        12 * ((int)pitch.Element(prefix + "octave")! + 1)
        + "C D EF G A B".IndexOf(pitch.Element(prefix + "step")!.Value, StringComparison.Ordinal)
        + ((int?)pitch.Element(prefix + "alter") ?? 0);

    // The modes are those of the schema; the signature of E dorian is that of D major.
    [Theory]
    [InlineData("E dorian", "2", "dorian")]
    [InlineData("G mixolydian", "0", "mixolydian")]
    [InlineData("A harmonic minor", "0", "minor")]
    [InlineData("A minor", "0", "minor")]
    [InlineData("C major", "0", "major")]
    [InlineData("C harmonic major", "0", null)]
    public void A_key_says_its_own_mode(string name, string fifths, string? mode)
    {
        var key = MusicXmlReader
            .Parse(MusicXmlWriter.Write(Played.Of($"the scale, in {name}")))
            .Descendants("key")
            .First();
        Assert.Equal((fifths, mode), (key.Element("fifths")!.Value, key.Element("mode")?.Value));
    }

    [Fact]
    public void A_chord_that_leads_to_another_is_read_in_the_key_of_that()
    {
        var score = MusicXmlReader.Parse(MusicXmlWriter.Write(Played.Of("the chords V7/ii V7/V, in C major")));
        Assert.Equal(
            ["5 -1 minor dominant", "5 1 major dominant"],
            score
                .Descendants("harmony")
                .Where(harmony => harmony.Element("numeral") is not null)
                .Select(harmony =>
                    string.Join(
                        ' ',
                        harmony.Descendants("numeral-root").Single().Value,
                        harmony.Descendants("numeral-fifths").Single().Value,
                        harmony.Descendants("numeral-mode").Single().Value,
                        harmony.Element("kind")!.Value
                    )
                )
        );
    }

    [Fact]
    public void A_box_has_the_fingers_and_the_barre()
    {
        var score = MusicXmlReader.Parse(MusicXmlWriter.Write(Played.Of("F, strum down")));
        var notes = score.Descendants("frame-note").ToList();
        Assert.Equal(
            ["6:1:1 start", "5:3:3 ", "4:3:4 ", "3:2:2 ", "2:1:1 ", "1:1:1 stop"],
            notes.Select(note =>
                $"{note.Element("string")!.Value}:{note.Element("fret")!.Value}:{note.Element("fingering")!.Value} {note.Element("barre")?.Attribute("type")!.Value}"
            )
        );
    }

    [Fact]
    public void Swing_is_for_machines_too() =>
        Assert.Equal(
            ["2", "1", "eighth"],
            MusicXmlReader
                .Parse(MusicXmlWriter.Write(Played.Of("the scale, in swing eighths")))
                .Descendants("swing")
                .Single()
                .Elements()
                .Select(element => element.Value)
        );
}
