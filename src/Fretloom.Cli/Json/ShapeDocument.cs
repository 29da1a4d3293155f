using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Shapes;

namespace Fretloom.Cli.Json;

/// <summary>A shape.</summary>
/// <param name="Span">Frets covered, inclusively, open strings left out.</param>
/// <param name="StretchMm">Millimetres between the outermost landing points, to a tenth.</param>
/// <param name="Spots">The notes, far string first.</param>
/// <param name="Chord">The chord symbol; left out for a stretch of scale.</param>
/// <param name="Roman">The Roman numeral; left out when the chord was named by its symbol.</param>
/// <param name="Scale">The scale; left out for a chord.</param>
/// <param name="MutedStrings">Strings of the set that must not sound, descending; left out when there are none.</param>
/// <param name="Width"><c>in reach</c>, <c>wide</c> or <c>very wide</c> for the hand.</param>
/// <param name="Cost">What the fingering costs, the less the better, to a thousandth; left out when there is none.</param>
/// <param name="WhyNot">Why there is no fingering; left out when there is one.</param>
/// <param name="Instead">What to do instead, the nearest first; left out when nothing was looked for or found.</param>
/// <param name="Cautions">What is to be said beside it; left out when there is nothing.</param>
public sealed record ShapeDocument(
    int Span,
    double StretchMm,
    IReadOnlyList<ShapeSpotDocument> Spots,
    string? Chord = null,
    string? Roman = null,
    string? Scale = null,
    IReadOnlyList<int>? MutedStrings = null,
    string? Width = null,
    double? Cost = null,
    string? WhyNot = null,
    IReadOnlyList<InsteadDocument>? Instead = null,
    IReadOnlyList<string>? Cautions = null
)
{
    internal static ShapeDocument Of(ShapeInHand inHand, HandSize hand)
    {
        var (shape, fingering) = (inHand.Shape, inHand.Fingering);
        var chord = shape.Source as ShapeSource.OfChord;
        return new(
            shape.Span,
            Math.Round(shape.StretchMm, 1),
            ShapeSpotDocument.Of(shape, fingering),
            chord?.Chord.ToString(),
            chord?.Roman?.ToString(),
            (shape.Source as ShapeSource.OfScale)?.Name,
            OrNull(shape.MutedStrings),
            inHand.Width.Words(),
            fingering is null ? null : Math.Round(fingering.Cost, 3),
            inHand.WhyNot,
            OrNull(inHand.Instead.Select(InsteadDocument.Of)),
            fingering is null ? [Hand.Cautions.General(hand)] : OrNull(Hand.Cautions.Of(fingering, hand))
        );
    }

    private static List<T>? OrNull<T>(IEnumerable<T> items) => items.ToList() is { Count: > 0 } list ? list : null;
}

/// <summary>A note of a shape.</summary>
/// <param name="String">The string, 1 nearest the floor.</param>
/// <param name="Fret">The fret, 0 open.</param>
/// <param name="Pitch">The spelled pitch.</param>
/// <param name="Midi">The MIDI number.</param>
/// <param name="Degree">The place in the key's own scale.</param>
/// <param name="Member">The place in the chord: 1 for the root, 3, 5, 7.</param>
/// <param name="Finger">0 for an open string, 1 to 4 from index to little finger, 5 the thumb; left out when the shape has no fingering.</param>
public sealed record ShapeSpotDocument(
    int String,
    int Fret,
    string Pitch,
    int Midi,
    string Degree,
    string Member,
    int? Finger = null
)
{
    internal static List<ShapeSpotDocument> Of(Shape shape, Fingering? fingering) =>
        [
            .. shape.Notes.Select(note => new ShapeSpotDocument(
                note.Spot.String,
                note.Spot.Fret,
                note.Pitch.ToString(),
                note.Pitch.MidiNumber,
                note.Degree.ToString(),
                note.Member,
                (int?)fingering?.FingerAt(note.Spot)
            )),
        ];
}

/// <summary>Another way to the same chord, in reach of the hand.</summary>
/// <param name="Way">What is changed: <c>higher up</c>, <c>other strings</c>, <c>inversion</c>, <c>fewer strings</c> or <c>capo</c>.</param>
/// <param name="Words">The way with its place.</param>
/// <param name="Span">Frets covered, inclusively, open strings left out.</param>
/// <param name="StretchMm">Millimetres between the outermost landing points, to a tenth.</param>
/// <param name="Spots">The notes, far string first; with a capo their frets are counted from it.</param>
/// <param name="Capo">The fret of the capo; left out when it stays as it is.</param>
public sealed record InsteadDocument(
    string Way,
    string Words,
    int Span,
    double StretchMm,
    IReadOnlyList<ShapeSpotDocument> Spots,
    int? Capo = null
)
{
    internal static InsteadDocument Of(Instead instead) =>
        new(
            instead.Way.Words(),
            instead.Words,
            instead.Shape.Span,
            Math.Round(instead.Shape.StretchMm, 1),
            ShapeSpotDocument.Of(instead.Shape, instead.Fingering),
            instead.Capo
        );
}
