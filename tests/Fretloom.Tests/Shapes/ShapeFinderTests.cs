using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class ShapeFinderTests
{
    private static readonly Voicing[] Voicings =
    [
        Find.EveryClosePosition,
        new Voicing.OneNotePerString(Arrangement.DropTwo, []),
        new Voicing.Strummed(1, [0]),
        new Voicing.Easy(3, null),
    ];

    public static TheoryData<string> Instruments => [.. Catalogue.All.Select(instrument => instrument.Name)];

    /// <summary>The finder names what sounds by its pitch class, which therefore has to tell the members apart.</summary>
    [Fact]
    public void The_members_of_every_chord_quality_differ_in_pitch_class() =>
        Assert.All(ChordQuality.All, quality => Assert.Equal(quality.MemberCount, quality.PitchClasses.Count));

    [Theory]
    [MemberData(nameof(Instruments))]
    public void Every_shape_of_every_quality_lies_on_the_neck_and_names_what_it_sounds(string name)
    {
        var map = Find.Map(name, frets: "0-7", key: "Eb major");
        foreach (var chord in ChordQuality.All.Select(quality => new Chord(NoteName.Parse("F#"), quality)))
        {
            foreach (var voicing in Voicings.Where(voicing => ShapeFinder.WhyNot(map, chord, voicing) is null))
            {
                foreach (var note in ShapeFinder.Find(map, new(chord, null), voicing).SelectMany(shape => shape.Notes))
                {
                    Assert.Equal(map.Instrument.MidiAt(note.Spot), note.Pitch.MidiNumber);
                    Assert.True(map.Frets.Contains(note.Spot.Fret));
                    Assert.True(chord.Notes.IndexOf(note.Pitch.Name) >= 0, $"{note.Pitch} in {chord}");
                    Assert.Equal(note.Pitch.Name, map.Key.NoteOf(note.Degree));
                }
            }
        }
    }

    [Fact]
    public void The_same_question_has_the_same_answer_in_the_same_order() =>
        Gen.Select(ShapeGen.ShortMap, ShapeGen.AnyChord, Gen.OneOf(Voicings))
            .Where((map, chord, voicing) => ShapeFinder.WhyNot(map, chord, voicing) is null)
            .Sample(
                (map, chord, voicing) =>
                    Assert.Equal(
                        ShapeFinder.Find(map, new(chord, null), voicing),
                        ShapeFinder.Find(map, new(chord, null), voicing)
                    ),
                iter: 200
            );
}
