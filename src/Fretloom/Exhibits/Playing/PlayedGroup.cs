using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Exhibits.Playing;

/// <summary>A note with what stops it.</summary>
internal readonly record struct PlayedNote(NeckNote Note, Finger Finger);

/// <summary>Notes that are played as one thing: a chord, a third, or a whole row.</summary>
/// <param name="Notes">From the lowest sound to the highest; given spots in the order given.</param>
/// <param name="Widest">The pair of fingers that works hardest; null when no two are down at one time.</param>
/// <param name="Shape">The shape that is held, if it is one of a chord.</param>
/// <param name="Chord">The chord as it is named over the notes; null for none.</param>
internal sealed record PlayedGroup(
    ValueList<PlayedNote> Notes,
    Stretch? Widest,
    Shape? Shape = null,
    ShapeSource.OfChord? Chord = null
)
{
    /// <summary>A shape of a chord, named with its lowest note where inversions were asked for.</summary>
    public static PlayedGroup Of(ShapeInHand inHand, ShapeSource.OfChord chord, bool isInverted)
    {
        var inversion = isInverted ? ChordWalk.InversionOf(chord, inHand) : 0;
        return Of(inHand) with
        {
            Chord = inversion <= 0 ? chord : new(chord.Chord.Inverted(inversion), Inverted(chord.Roman, inversion)),
        };
    }

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

    // Figures tell the inversions of triads and seventh chords only.
    private static RomanNumeral? Inverted(RomanNumeral? roman, int inversion) =>
        roman is null || !(roman.Quality.IsTriad || roman.Quality.IsSeventh)
            ? roman
            : new RomanNumeral(roman.Degree, roman.Quality, inversion, roman.Target);
}
