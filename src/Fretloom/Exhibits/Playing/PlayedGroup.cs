using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;

namespace Fretloom.Exhibits.Playing;

/// <summary>A note with what stops it.</summary>
internal readonly record struct PlayedNote(NeckNote Note, Finger Finger);

/// <summary>Notes that are played as one thing: a chord, a third, or a whole row.</summary>
/// <param name="Notes">From the lowest sound to the highest; given spots in the order given.</param>
/// <param name="Widest">The pair of fingers that works hardest; null when no two are down at one time.</param>
/// <param name="Shape">The shape that is held, if it is one of a chord.</param>
internal sealed record PlayedGroup(ValueList<PlayedNote> Notes, Stretch? Widest, Shape? Shape = null)
{
    /// <summary>A shape with the fingers that a hand takes it with.</summary>
    public static PlayedGroup Of(ShapeInHand inHand) =>
        new(
            inHand
                .Shape.Notes.OrderBy(note => note.Pitch.MidiNumber)
                .ThenByDescending(note => note.Spot.String)
                .Select(note => new PlayedNote(
                    new NeckNote(note.Spot, note.Pitch, note.Degree),
                    inHand.FingerAt(note.Spot) ?? Finger.None
                ))
                .ToValueList(),
            inHand.Fingering?.Widest,
            inHand.Shape
        );
}
