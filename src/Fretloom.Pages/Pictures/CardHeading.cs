using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>The two lines above a card: numeral, and chord symbol with the chord's thirds from the root upward.</summary>
internal static class CardHeading
{
    public const double Height = 31;

    private const double ThirdHeight = 10;
    private const double ThirdGap = 3;

    private static readonly TextStyle Large = new(Face.SerifBold, 12.5);
    private static readonly TextStyle Small = new(Face.Serif, 10);

    /// <summary>The larger line: the numeral, or the chord symbol where there is none, or the frets of a stretch of scale.</summary>
    public static string LargeText(Shape shape) =>
        shape.Source switch
        {
            ShapeSource.OfChord { Roman: { } roman } => roman.ToPrinted(),
            ShapeSource.OfChord => CardWords.SymbolOf(shape),
            _ => shape.Spots.Min(spot => spot.Fret) is var lowest and > 0
                ? $"from fret {Wording.Number(lowest)}"
                : "open position",
        };

    /// <summary>The smaller line; empty for a chord without numeral.</summary>
    public static string SmallText(Shape shape) =>
        shape.Source is ShapeSource.OfChord { Roman: null } ? "" : CardWords.SymbolOf(shape);

    public static double WidthOf(Shape shape) =>
        Math.Max(Large.WidthOf(LargeText(shape)), Small.WidthOf(SmallText(shape)) + 4 + ThirdsWidth(ThirdsOf(shape)));

    /// <summary>Draws it at the top of a card.</summary>
    public static IEnumerable<Node> Draw(Shape shape, double left, double right, Tone tone)
    {
        yield return new Node.Label(left, 12, LargeText(shape), Large, tone, Anchor.Start);
        if (SmallText(shape).Length > 0)
        {
            yield return new Node.Label(left, 25, SmallText(shape), Small, Tone.Quiet, Anchor.Start);
        }

        var thirds = ThirdsOf(shape);
        foreach (var stroke in Strokes(thirds, right - ThirdsWidth(thirds), 25.5, tone))
        {
            yield return stroke;
        }
    }

    /// <summary>Upright strokes for thirds, thick for major ones, from a left end and standing on a line.</summary>
    public static IEnumerable<Node> Strokes(IEnumerable<bool> thirds, double left, double bottom, Tone tone)
    {
        var x = left;
        foreach (var isMajor in thirds)
        {
            var width = ThirdWidth(isMajor);
            yield return new Node.Rect(x, bottom - ThirdHeight, width, ThirdHeight, tone);
            x += width + ThirdGap;
        }
    }

    /// <summary>The thirds a chord is built of, root upward, true for major; empty for other chords and for scales.</summary>
    public static List<bool> ThirdsOf(Shape shape)
    {
        if (shape.Source is not ShapeSource.OfChord { Chord.Notes: var notes })
        {
            return [];
        }

        var steps = notes.Zip(notes.Skip(1), (lower, upper) => lower.IntervalTo(upper)).ToList();
        return steps.TrueForAll(step => step is { Steps: 2, Semitones: 3 or 4 })
            ? steps.ConvertAll(step => step.Semitones == 4)
            : [];
    }

    private static double ThirdWidth(bool isMajor) => isMajor ? 3.4 : 1.1;

    private static double ThirdsWidth(List<bool> thirds) =>
        thirds.Sum(ThirdWidth) + Math.Max(0, thirds.Count - 1) * ThirdGap;
}
