using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>What stands on and beside the notes of one shape.</summary>
internal sealed class ShapeLabels
{
    private readonly Exhibit _exhibit;
    private readonly Shape _shape;
    private readonly ShapeInHand? _inHand;

    public ShapeLabels(Exhibit exhibit, Shape shape)
    {
        (_exhibit, _shape) = (exhibit, shape);
        _inHand = exhibit.InHand.FirstOrDefault(one => one.Shape == shape);
    }

    /// <summary>How the hand takes it; null where nobody asked.</summary>
    public ShapeInHand? InHand => _inHand;

    /// <summary>In reach, wide or very wide; in reach where nobody asked.</summary>
    public Width Width => _inHand?.Width ?? Width.InReach;

    /// <summary>The best fingering, whether its fingers are shown or not; null without one.</summary>
    public Fingering? Fingering => _inHand?.Fingering;

    /// <summary>What stands on a note: its label, or where fingers stand inside the marks its finger; empty for an open string then.</summary>
    public string On(ShapeNote note) =>
        _exhibit.LabelOf(note.Pitch, note.Degree, note.Member, Fingering?.FingerAt(note.Spot));

    /// <summary>The finger beside a note; empty for an open string, and where fingers are not shown or stand inside.</summary>
    public string Beside(ShapeNote note) => _exhibit.HasFingersBeside() ? FingerOf(note) : "";

    /// <summary>The finger of a note, wherever it stands; empty for an open string, and where fingers are not shown.</summary>
    public string Shown(ShapeNote note) => _exhibit.ShowsFingers ? FingerOf(note) : "";

    /// <summary>The fingers string by string, <c>0</c> for an open one and <c>x</c> for one that is not played: <c>x-3-2-0-1-0</c>.</summary>
    /// <param name="strings">The strings, far one first.</param>
    public string FingersOn(IEnumerable<int> strings) =>
        Fingering is null ? "" : string.Join('-', strings.Select(FingersOn));

    /// <summary>Whether a note's mark is hollow: an open string, where fingers stand inside the others.</summary>
    public bool IsHollow(ShapeNote note) => _exhibit.HasFingersInside() && _exhibit.Map.Instrument.IsOpen(note.Spot);

    private string FingersOn(int number) =>
        string.Concat(
            _shape
                .Notes.Where(note => note.Spot.String == number)
                .Select(note => FingerOf(note) is { Length: > 0 } finger ? finger : "0")
                .DefaultIfEmpty("x")
        );

    private string FingerOf(ShapeNote note) => Fingering?.FingerAt(note.Spot)?.ToLabel() ?? "";
}
