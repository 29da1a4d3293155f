using Fretloom.Hand;

namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom finger --json</c> prints: a fingering, and the next best ones.</summary>
/// <param name="Notes">The notes in the order asked.</param>
/// <param name="Cost">The sum of the terms; the less the better.</param>
/// <param name="Terms">What each term of <c>docs/hand.md</c> adds to the cost.</param>
/// <param name="StretchMm">Millimetres between the outermost fingers that are down at one time, to a tenth.</param>
/// <param name="Width"><c>in reach</c>, <c>wide</c> or <c>very wide</c>.</param>
/// <param name="Why">The terms in words, the dearest first.</param>
/// <param name="Cautions">What is said of a wide stretch; empty when there is none.</param>
/// <param name="Alternatives">The next best fingerings, the best first; left out within an alternative.</param>
public sealed record FingerDocument(
    IReadOnlyList<FingeredNoteDocument> Notes,
    double Cost,
    IReadOnlyDictionary<string, double> Terms,
    double StretchMm,
    string Width,
    IReadOnlyList<string> Why,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FingerDocument>? Alternatives = null
)
{
    internal static FingerDocument Of(HandSize hand, ValueList<Fingering> fingerings) =>
        Of(hand, fingerings[0]) with
        {
            Alternatives = [.. fingerings.Skip(1).Select(next => Of(hand, next))],
        };

    private static FingerDocument Of(HandSize hand, Fingering fingering) =>
        new(
            [.. fingering.Notes.Select(FingeredNoteDocument.Of)],
            Rounded(fingering.Cost),
            fingering
                .Terms.GroupBy(term => term.Name)
                .ToDictionary(same => same.Key, same => Rounded(same.Sum(term => term.Cost))),
            Math.Round(fingering.StretchMm, 1),
            fingering.Width.Words(),
            [.. fingering.Terms.Select(term => term.Words)],
            [.. Fretloom.Hand.Cautions.Of(fingering, hand)]
        );

    private static double Rounded(double cost) => Math.Round(cost, 3);
}

/// <summary>A note with its finger.</summary>
/// <param name="String">The string, 1 nearest the floor.</param>
/// <param name="Fret">The fret, 0 open.</param>
/// <param name="Finger">0 for an open string, 1 to 4 from index to little finger, 5 for the thumb where it is allowed.</param>
public sealed record FingeredNoteDocument(int String, int Fret, int Finger)
{
    internal static FingeredNoteDocument Of(FingeredNote note) =>
        new(note.Spot.String, note.Spot.Fret, (int)note.Finger);
}
