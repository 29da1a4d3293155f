using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Shapes;

namespace Fretloom.Exhibits.Playing;

/// <summary>Chooses for each chord of a row the shape to play, so that the hand moves little from one to the next.</summary>
/// <remarks>
/// The cheapest row of shapes, by dynamic programming (Bellman 1957). Between two shapes the middle of the notes moves so many
/// millimetres along the neck, and each string further across counts as much as ten; a shape costs for its place in the order of
/// the finder, for being wide, and a little for being far up. All of this is set by hand, without source.
/// </remarks>
internal static class ChordWalk
{
    private const double MmPerString = 10;
    private const double PerPlace = 4;
    private const double Wide = 60;
    private const double VeryWide = 200;
    private const double PerMmUp = 0.02;

    /// <summary>The shapes to choose from: of one chord, in one inversion.</summary>
    /// <param name="Chord">The chord.</param>
    /// <param name="Shapes">At least one, each with a fingering, in the order of the finder.</param>
    internal sealed record Step(ShapeSource.OfChord Chord, ValueList<ShapeInHand> Shapes);

    /// <summary>The steps of some chords, or what stands in the way.</summary>
    public static (ValueList<Step> Steps, PlayError? Error) Steps(
        ShowSentence complete,
        Subject subject,
        IEnumerable<ShapeSource.OfChord> chords,
        NeckMap map,
        Player player
    )
    {
        var voicing = ShapeQuery.VoicingOf(complete.Voicing, subject);
        var isStrummed = voicing is not Voicing.OneNotePerString;
        var steps = new List<Step>();
        foreach (var chord in chords)
        {
            if (ShapeQuery.WhyNot(map, chord.Chord, voicing) is { } wrong)
            {
                return ([], new(wrong.Message, wrong.Phrase));
            }

            var shapes = ShapeFinder
                .Find(map, chord, voicing)
                .Select(shape => ShapeFingering.Of(player, shape, !isStrummed))
                .ToList();
            var held = shapes.FindAll(shape => shape.WhyNot is null);
            if (held.Count == 0)
            {
                return ([], new(WhyNone(chord, shapes), ShowPhrase.Frets));
            }

            steps.AddRange(ByInversion(complete, chord, held));
        }

        return (steps.ToValueList(), null);
    }

    /// <summary>One shape for each step.</summary>
    public static IEnumerable<ShapeInHand> Choose(ValueList<Step> steps)
    {
        var layers = steps
            .Select(step => step.Shapes.Select((shape, at) => new Place(shape, Own(shape, at))).ToArray())
            .ToArray();
        for (var at = 1; at < layers.Length; at++)
        {
            foreach (var place in layers[at])
            {
                place.Before = layers[at - 1].MinBy(before => before.Total + Move(before, place));
                place.Total += place.Before!.Total + Move(place.Before, place);
            }
        }

        var chosen = new Stack<ShapeInHand>();
        for (
            var place = layers.Length == 0 ? null : layers[^1].MinBy(last => last.Total);
            place is not null;
            place = place.Before
        )
        {
            chosen.Push(place.Shape);
        }

        return chosen;
    }

    private sealed class Place(ShapeInHand shape, double total)
    {
        public ShapeInHand Shape { get; } = shape;

        public double AlongMm { get; } = shape.Shape.Spots.Average(AlongOf);

        public double String { get; } = shape.Shape.Spots.Average(spot => spot.String);

        public double Total { get; set; } = total;

        public Place? Before { get; set; }
    }

    // On a neck of a guitar's length, whatever the instrument: only how the distances compare counts.
    private static double AlongOf(Spot spot) => NeckGeometry.FretMm(648, spot.Fret);

    private static double Move(Place one, Place other) =>
        Math.Abs(one.AlongMm - other.AlongMm) + MmPerString * Math.Abs(one.String - other.String);

    private static double Own(ShapeInHand shape, int place) =>
        PerPlace * place
        + PerMmUp * shape.Shape.Spots.Max(AlongOf)
        + shape.Width switch
        {
            Width.VeryWide => VeryWide,
            Width.Wide => Wide,
            _ => 0,
        };

    // Where inversions were asked for, each is a step of its own, root position first.
    private static IEnumerable<Step> ByInversion(
        ShowSentence complete,
        ShapeSource.OfChord chord,
        List<ShapeInHand> shapes
    )
    {
        if (complete.Voicing.Inversions is not { Count: not 1 })
        {
            return [new(chord, shapes.ToValueList())];
        }

        return shapes
            .GroupBy(shape => Lowest(shape.Shape).Member)
            .OrderBy(same => chord.Chord.IndexOf(Lowest(same.First().Shape).Pitch.PitchClass))
            .Select(same => new Step(chord, same.ToValueList()));
    }

    private static ShapeNote Lowest(Shape shape) => shape.Notes.MinBy(note => note.Pitch.MidiNumber);

    private static string WhyNone(ShapeSource.OfChord chord, List<ShapeInHand> shapes)
    {
        var name = chord.Roman is { } roman ? $"{roman} ({chord.Name})" : chord.Name;
        return shapes.Count == 0
            ? $"no shape of {name} fits these strings and frets; look at more frets, or on other strings"
            : $"no hand can hold {name} here: {shapes[0].WhyNot}";
    }
}
