using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The legend of fingers on necks and cards.</summary>
internal static class FingerLegend
{
    private const string Counted = "finger, 1 index to 4 little";

    private static readonly Measures Small = new(20);
    private static readonly TextStyle Below = new(Face.SansBold, 10);

    /// <summary>What stands inside the marks of an exhibit's shapes or beside them.</summary>
    public static IEnumerable<LegendItem> ForShapes(Exhibit exhibit) =>
        For(
            exhibit,
            MarkKind.OfChord,
            exhibit.InHand.SelectMany(one =>
                one.Shape.Spots.Select(spot => (one.FingerAt(spot) ?? Finger.None, exhibit.Map.Instrument.IsOpen(spot)))
            )
        );

    /// <summary>What stands inside some marks or beside them.</summary>
    /// <param name="exhibit">What is shown.</param>
    /// <param name="kind">The kind of mark that is the sample.</param>
    /// <param name="notes">The finger of every mark, and whether it is that of an open string.</param>
    public static IEnumerable<LegendItem> For(
        Exhibit exhibit,
        MarkKind kind,
        IEnumerable<(Finger Finger, bool IsOpen)> notes
    )
    {
        var shown = notes.ToHashSet();
        var fingers = shown.Select(note => note.Finger).ToHashSet();
        if (!exhibit.ShowsFingers)
        {
            yield break;
        }

        if (fingers.Any(finger => finger is not (Finger.None or Finger.Thumb)))
        {
            yield return exhibit.HasFingersInside()
                ? Dot("1", kind, true, Words(fingers))
                : new LegendItem((x, y) => Beside(x, y, kind), 20, Words(fingers));
        }

        if (exhibit.HasFingersInside() && shown.Any(note => note.IsOpen))
        {
            yield return Dot("", kind, false, "open string");
        }
    }

    /// <summary>The same for chord boxes, where fingers beside the labels stand below the strings.</summary>
    public static IEnumerable<LegendItem> ForBoxes(Exhibit exhibit) =>
        ForShapes(exhibit)
            .Select(item =>
                exhibit.HasFingersInside()
                    ? item
                    : new LegendItem(
                        (x, y) => new Node.Label(x, y + 3.2, "1", Below, Tone.Ink, Anchor.Middle),
                        6,
                        item.Words + ", below the strings"
                    )
            );

    /// <summary>What the numbers mean; the thumb where it occurs.</summary>
    private static string Words(HashSet<Finger> fingers) =>
        Counted + (fingers.Contains(Finger.Thumb) ? ", T thumb" : "");

    private static LegendItem Dot(string label, MarkKind kind, bool isSolid, string words) =>
        new(
            (x, y) => new Mark(label, kind, false, false) { IsSolid = isSolid }.DrawnAt(x, y, Small),
            2 * Small.MarkRadius,
            words
        );

    private static Node.Group Beside(double x, double y, MarkKind kind)
    {
        var mark = new Mark("", kind, false, false);
        var numerals = new FingerNumerals([(x - 3, y + 1.5, mark.RadiusOf(Small), "1")], []);
        return new("finger", [mark.DrawnAt(x - 3, y + 1.5, Small), .. numerals.Numerals]);
    }
}
