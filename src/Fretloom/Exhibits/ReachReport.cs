using System.Globalization;
using Fretloom.Exhibits.Comparing;
using Fretloom.Hand;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits;

/// <summary>Which shapes of an exhibit a hand reaches and what to do instead, in plain words for every page and screen.</summary>
/// <param name="Summary">How many are in reach: <c>12 of 15 shapes are in reach of a hand of 165 mm, 2 are wide, 1 is very wide.</c></param>
/// <param name="Lines">One for each shape that is not, in the order of the exhibit.</param>
public sealed record ReachReport(string Summary, ValueList<string> Lines)
{
    private const string BeyondFingers = "beyond any fingering";

    /// <summary>The report; null when no shape is shown, or no hand was named.</summary>
    public static ReachReport? Of(Exhibit exhibit)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        if (!exhibit.ComparesReach || exhibit.InHand.Count == 0)
        {
            return null;
        }

        return new ReachReport(
            SummaryOf(exhibit.InHand, exhibit.Player.Hand),
            exhibit
                .InHand.Where(shape => shape.Width != Width.InReach)
                .Select(shape => LineOf(shape, exhibit.Player))
                .ToValueList()
        );
    }

    // V7, frets 5-4-3-1 on strings 4-1: very wide, 128 mm between fingers 1 and 4. Instead: higher up, frets 13-17.
    private static string LineOf(ShapeInHand shape, Player player)
    {
        var instead =
            shape.Shape.Source is ShapeSource.OfScale
                ? ""
                : $" Instead: {ReachWords.Instead(shape, shape.Instead.Count)}.";
        return $"{NameOf(shape.Shape.Source)}, {PlaceOf(shape.Shape, player)}: {ReachWords.Judged([shape])}.{Reason(shape)}{instead}";
    }

    // A chord fret by fret; a stretch of scale by its outermost frets.
    private static string PlaceOf(Shape shape, Player player) =>
        shape.Source is ShapeSource.OfScale
            ? $"{InsteadPhrases.FretsOf(player.Instrument, shape)} on strings {InsteadPhrases.StringsOf(shape)}"
            : shape.FretByFret(player.Instrument);

    private static string Reason(ShapeInHand shape) => shape.WhyNot is { } reason ? $" {reason}" : "";

    private static string NameOf(ShapeSource source) =>
        Accidentals.Pretty(source is ShapeSource.OfChord { Roman: { } roman } ? roman.ToString() : source.Name);

    private static string SummaryOf(ValueList<ShapeInHand> shapes, HandSize hand)
    {
        var reached = shapes.Count(shape => shape.Width == Width.InReach);
        if (shapes.Count == 1)
        {
            var words = shapes[0].WhyNot is not null ? BeyondFingers : shapes[0].Width.Words();
            return $"The shape is {words} {(reached == 1 ? "of" : "for")} a hand of {hand}.";
        }

        if (reached == shapes.Count)
        {
            return string.Create(
                CultureInfo.InvariantCulture,
                $"All {reached} shapes are in reach of a hand of {hand}."
            );
        }

        var parts = new[]
        {
            Part(shapes.Count(shape => shape.Width == Width.Wide), "wide"),
            Part(shapes.Count(shape => shape is { Width: Width.VeryWide, WhyNot: null }), "very wide"),
            Part(shapes.Count(shape => shape.WhyNot is not null), BeyondFingers),
        };
        var (count, verb) =
            reached == 0 ? ("None", "is") : (reached.ToString(CultureInfo.InvariantCulture), Verb(reached));
        return string.Create(
                CultureInfo.InvariantCulture,
                $"{count} of {shapes.Count} shapes {verb} in reach of a hand of {hand}"
            ) + $"{string.Concat(parts)}.";
    }

    private static string Part(int count, string words) =>
        count == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", {count} {Verb(count)} {words}");

    private static string Verb(int count) => count == 1 ? "is" : "are";
}
