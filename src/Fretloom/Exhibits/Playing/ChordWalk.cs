using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Sentences.Reading;
using Fretloom.Shapes;

namespace Fretloom.Exhibits.Playing;

/// <summary>Chooses for each chord of a row the shape to play, so that the hand moves little from one to the next.</summary>
/// <remarks>
/// The cheapest row of shapes, by dynamic programming (Bellman 1957). Between two shapes the middle of what is stopped moves so
/// many millimetres along the neck (open strings lie at the nut), and each string further across counts as much as sixty; of
/// chords that are not strummed each half-step by which they rise or fall together counts as much as ten, so that a row of them
/// goes on in its direction; a shape costs for its place in the
/// order of the finder (more where that order is the one in which they are taught, as of strummed chords), for being wide, and a
/// little for being far up. All of this is set by hand, without source.
/// </remarks>
internal static class ChordWalk
{
    private const double MmPerString = 60;
    private const double MmPerHalfStep = 10;
    private const double PerPlace = 4;
    private const double PerPlaceStrummed = 60;
    private const double Wide = 60;
    private const double VeryWide = 1_000;
    private const double PerMmUp = 0.1;

    /// <summary>The shapes to choose from: of one chord, in one inversion.</summary>
    /// <param name="Chord">The chord.</param>
    /// <param name="Shapes">At least one, each with a fingering, in the order of the finder.</param>
    /// <param name="IsTaughtInOrder">Whether the first shapes are those that are taught first.</param>
    internal sealed record Step(ShapeSource.OfChord Chord, ValueList<ShapeInHand> Shapes, bool IsTaughtInOrder);

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

            if (voicing is Voicing.OneNotePerString && MissingInversion(complete, chord, held) is { } missing)
            {
                return ([], new(missing, ShowPhrase.Inversion));
            }

            steps.AddRange(ByInversion(complete, chord, held, isStrummed));
        }

        return (steps.ToValueList(), null);
    }

    /// <summary>One shape for each step.</summary>
    public static IEnumerable<ShapeInHand> Choose(ValueList<Step> steps)
    {
        var chosen = new Stack<ShapeInHand>();
        for (var place = Cheapest(steps); place is not null; place = place.Before)
        {
            chosen.Push(place.Shape);
        }

        return chosen;
    }

    /// <summary>The last place of the cheapest row; null when there are no steps.</summary>
    private static Place? Cheapest(ValueList<Step> steps)
    {
        var layers = steps.Select(step => step.Shapes.Select((shape, at) => new Place(step, at)).ToArray()).ToArray();
        for (var at = 1; at < layers.Length; at++)
        {
            foreach (var place in layers[at])
            {
                place.Before = layers[at - 1].MinBy(before => before.Total + Move(before, place));
                place.Total += place.Before!.Total + Move(place.Before, place);
            }
        }

        return layers.Length == 0 ? null : layers[^1].MinBy(last => last.Total);
    }

    internal sealed class Place(Step step, int at)
    {
        public ShapeInHand Shape { get; } = step.Shapes[at];

        /// <summary>The middle of what is stopped.</summary>
        public double AlongMm { get; } =
            step.Shapes[at].Shape.Spots.Where(spot => spot.Fret > 0).Select(AlongOf).DefaultIfEmpty().Average();

        public double String { get; } = step.Shapes[at].Shape.Spots.Average(spot => spot.String);

        /// <summary>What it sounds together, in half-steps; 0 for strummed chords, which may lie high or low.</summary>
        public double Height { get; } =
            step.IsTaughtInOrder ? 0 : step.Shapes[at].Shape.Notes.Average(note => note.Pitch.MidiNumber);

        public double Total { get; set; } = Own(step, at);

        public Place? Before { get; set; }
    }

    // On a neck of a guitar's length, whatever the instrument: only how the distances compare counts.
    private static double AlongOf(Spot spot) => NeckGeometry.FretMm(648, spot.Fret);

    internal static double Move(Place one, Place other) =>
        Math.Abs(one.AlongMm - other.AlongMm)
        + MmPerString * Math.Abs(one.String - other.String)
        + MmPerHalfStep * Math.Abs(one.Height - other.Height);

    internal static double Own(Step step, int place) =>
        (step.IsTaughtInOrder ? PerPlaceStrummed : PerPlace) * place
        + PerMmUp * step.Shapes[place].Shape.Spots.Max(AlongOf)
        + step.Shapes[place].Width switch
        {
            Width.VeryWide => VeryWide,
            Width.Wide => Wide,
            _ => 0,
        };

    // Where inversions were asked for, each is a step of its own: root position first, or whichever lets the hand move least.
    private static ValueList<Step> ByInversion(
        ShowSentence complete,
        ShapeSource.OfChord chord,
        List<ShapeInHand> shapes,
        bool isTaughtInOrder
    )
    {
        if (complete.Voicing.Inversions is not { Count: not 1 })
        {
            return [new(chord, shapes.ToValueList(), isTaughtInOrder)];
        }

        var inversions = shapes
            .GroupBy(shape => Lowest(shape.Shape).Member)
            .OrderBy(same => InversionOf(chord, same.First()))
            .Select(same => new Step(chord, same.ToValueList(), false))
            .ToList();
        return Enumerable
            .Range(0, inversions.Count)
            .Select(first => inversions.Skip(first).Concat(inversions.Take(first)).ToValueList())
            .MinBy(row => Cheapest(row)!.Total);
    }

    private static string? MissingInversion(ShowSentence complete, ShapeSource.OfChord chord, List<ShapeInHand> shapes)
    {
        var asked = complete.Voicing.Inversions switch
        {
            { Count: 0 } => Enumerable.Range(0, chord.Chord.Quality.MemberCount),
            { } said => said,
            null => [],
        };
        var missing = asked.Except(shapes.Select(shape => InversionOf(chord, shape))).ToList();
        return missing.Count == 0
            ? null
            : $"no shape of {chord.Name} in {(missing[0] == 0 ? "root position" : $"{Numbers.OrdinalWord(missing[0])} inversion")} fits these strings and frets; look at more frets, or on other strings";
    }

    /// <summary>Which member lies lowest, counted from 0, the root.</summary>
    public static int InversionOf(ShapeSource.OfChord chord, ShapeInHand shape) =>
        chord.Chord.IndexOf(Lowest(shape.Shape).Pitch.PitchClass);

    private static ShapeNote Lowest(Shape shape) => shape.Notes.MinBy(note => note.Pitch.MidiNumber);

    private static string WhyNone(ShapeSource.OfChord chord, List<ShapeInHand> shapes)
    {
        var name = chord.Roman is { } roman ? $"{roman} ({chord.Name})" : chord.Name;
        return shapes.Count == 0
            ? $"no shape of {name} fits these strings and frets; look at more frets, or on other strings"
            : $"no hand can hold {name} here: {shapes[0].WhyNot}";
    }
}
