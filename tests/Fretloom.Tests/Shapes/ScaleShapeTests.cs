using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Shapes;

public class ScaleShapeTests
{
    /// <summary>Common practice, no source: G major on guitar from the root on string 6, three notes a string.</summary>
    [Fact]
    public void Three_notes_a_string_from_the_root_are_the_pattern_players_know()
    {
        var shapes = ScaleShapeFinder.NotesPerString(Find.Map("guitar", key: "G major"), Scale.Parse("G major"), 3);

        Assert.Contains(
            "6:3 6:5 6:7 5:3 5:5 5:7 4:4 4:5 4:7 3:4 3:5 3:7 2:5 2:7 2:8 1:5 1:7 1:8",
            shapes.Select(Spots)
        );
    }

    /// <summary>Common practice, no source: the first shape of A minor pentatonic, two notes a string.</summary>
    [Fact]
    public void Two_notes_a_string_of_the_pentatonic_are_the_box_players_know()
    {
        var shapes = ScaleShapeFinder.NotesPerString(Find.Map("guitar"), Scale.Parse("A minor pentatonic"), 2);

        Assert.Contains("6:5 6:8 5:5 5:7 4:5 4:7 3:5 3:7 2:5 2:8 1:5 1:8", shapes.Select(Spots));
        Assert.Equal(
            "1 3 4 5 7 1 3 4 5 7 1 3",
            string.Join(' ', shapes.Single(At(6, 5)).Notes.Select(note => note.Member))
        );
    }

    [Fact]
    public void There_is_one_shape_for_each_note_of_the_far_string_from_which_all_fits()
    {
        var shapes = ScaleShapeFinder.NotesPerString(Find.Map("guitar", frets: "0-15"), Scale.Parse("C major"), 3);

        Assert.Equal([0, 1, 3, 5, 7, 8, 10], shapes.Select(shape => shape.Notes[0].Spot.Fret));
    }

    /// <summary>Common practice, no source: C major in first position; the B of string 3 is left to the open string 2.</summary>
    [Fact]
    public void First_position_includes_the_open_strings()
    {
        var shape = Assert.Single(ScaleShapeFinder.InPosition(Find.Map("guitar"), Scale.Parse("C major"), 1));

        Assert.Equal("6:0 6:1 6:3 5:0 5:2 5:3 4:0 4:2 4:3 3:0 3:2 2:0 2:1 2:3 1:0 1:1 1:3", Spots(shape));
    }

    /// <summary>Common practice, no source: G major in second position needs no stretch, C major in fifth takes B at string 3, fret 4.</summary>
    [Theory]
    [InlineData("G major", 2, "6:2 6:3 6:5 5:2 5:3 5:5 4:2 4:4 4:5 3:2 3:4 3:5 2:3 2:5 1:2 1:3 1:5")]
    [InlineData("C major", 5, "6:5 6:7 6:8 5:5 5:7 5:8 4:5 4:7 3:4 3:5 3:7 2:5 2:6 2:8 1:5 1:7 1:8")]
    public void A_missing_note_is_taken_by_a_stretch(string scale, int position, string spots) =>
        Assert.Equal(
            spots,
            Spots(ScaleShapeFinder.InPosition(Find.Map("guitar"), Scale.Parse(scale), position).Single())
        );

    /// <summary>Common practice, no source: C major in first position on a re-entrant ukulele leaves the high string alone.</summary>
    [Fact]
    public void On_a_re_entrant_ukulele_the_scale_is_taken_on_the_nearer_strings() =>
        Assert.Equal(
            "3:0 3:2 2:0 2:1 2:3 1:0 1:2 1:3",
            Spots(ScaleShapeFinder.InPosition(Find.Map("ukulele"), Scale.Parse("C major"), 1).Single())
        );

    [Fact]
    public void Notes_a_string_are_consecutive_notes_of_the_scale_and_none_is_missing() =>
        Gen.Select(ShapeGen.ShortMap, Scales, Gen.Int[1, 4])
            .Sample(
                (map, scale, count) =>
                {
                    var strings = map
                        .Strings.Numbers.OrderBy(number => map.Instrument.String(number).Open.MidiNumber)
                        .ToList();
                    var bySound = map.Spots.ToLookup(spot => map.Instrument.MidiAt(spot)!.Value);
                    var ladder = Enumerable
                        .Range(0, 128)
                        .Where(midi => scale.PitchClasses.Contains(PitchClass.FromSemitones(midi)))
                        .ToList();
                    var slow =
                        from start in Enumerable.Range(0, ladder.Count)
                        let wanted = ladder.Skip(start).Take(count * strings.Count).ToList()
                        let spots = wanted
                            .SelectMany(
                                (midi, place) => bySound[midi].Where(spot => spot.String == strings[place / count])
                            )
                            .ToList()
                        where spots.Count == count * strings.Count
                        select string.Join(' ', spots.OrderByDescending(spot => spot.String).ThenBy(spot => spot.Fret));

                    Assert.Equal(slow, ScaleShapeFinder.NotesPerString(map, scale, count).Select(Spots));
                },
                iter: 500
            );

    [Fact]
    public void On_guitar_every_note_of_the_scale_between_the_outer_ones_sounds_once_within_a_fret_of_the_position()
    {
        foreach (var kind in ScaleKind.All)
        {
            foreach (var tonic in "C Db D Eb E F F# G Ab A Bb B".Split(' '))
            {
                for (var position = 1; position <= 14; position++)
                {
                    var scale = new Scale(NoteName.Parse(tonic), kind);
                    var shape = Assert.Single(
                        ScaleShapeFinder.InPosition(Find.Map("guitar", frets: "0-22"), scale, position)
                    );
                    var sounds = shape.Notes.Select(note => note.Pitch.MidiNumber).Order().ToList();

                    Assert.Equal(
                        Enumerable
                            .Range(sounds[0], sounds[^1] - sounds[0] + 1)
                            .Where(midi => scale.PitchClasses.Contains(PitchClass.FromSemitones(midi))),
                        sounds
                    );
                    Assert.All(
                        shape.Spots,
                        spot =>
                            Assert.True(spot.Fret >= position - 1 && spot.Fret <= position + 4, $"{scale} {position}")
                    );
                }
            }
        }
    }

    [Fact]
    public void In_position_every_pitch_of_the_scale_within_the_four_frets_sounds_once() =>
        Gen.Select(ShapeGen.ShortMap, Scales, Gen.Int[1, 8])
            .Sample(
                (map, scale, position) =>
                {
                    var inside = map
                        .Spots.Where(spot =>
                            spot.Fret == map.Instrument.String(spot.String).StartsAtFret
                                ? position == 1
                                : spot.Fret >= position && spot.Fret < position + 4
                        )
                        .Select(spot => map.Instrument.MidiAt(spot)!.Value)
                        .Where(midi => scale.PitchClasses.Contains(PitchClass.FromSemitones(midi)))
                        .ToHashSet();

                    var shapes = ScaleShapeFinder.InPosition(map, scale, position);

                    var sounds = shapes.SelectMany(shape => shape.Notes).Select(note => note.Pitch.MidiNumber).ToList();
                    Assert.Equal(inside.Count > 0, shapes.Count == 1);
                    Assert.Equal(sounds.Count, sounds.Distinct().Count());
                    Assert.Subset(sounds.ToHashSet(), inside);
                },
                iter: 500
            );

    private static readonly Gen<Scale> Scales =
        from tonic in Gen.OneOf("C C# D Eb E F F# G Ab A Bb B".Split(' '))
        from kind in Gen.OneOf(ScaleKind.All.ToArray())
        select new Scale(NoteName.Parse(tonic), kind);

    private static Func<Shape, bool> At(int number, int fret) => shape => shape.Notes[0].Spot == new Spot(number, fret);

    private static string Spots(Shape shape) => string.Join(' ', shape.Spots);
}
