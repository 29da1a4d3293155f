using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Chords named as they look behind a capo: the G shape with a capo at 2 sounds A.</summary>
internal static class CapoShapes
{
    private const int FifthsOfOctave = 12;
    private const int FifthsToRelativeMajor = 3;

    /// <summary>The sentence with the chords that sound; a failure where there is no capo.</summary>
    /// <param name="draft">The sentence.</param>
    /// <param name="capo">The fret of the capo that it names, or that the instrument has; 0 for none.</param>
    public static Failure? Resolve(ShowDraft draft, int capo)
    {
        if (draft.Shapes is not { } place)
        {
            return null;
        }

        if (capo == 0)
        {
            return Failure.At(
                place,
                "shapes are named as they look behind a capo; say where it sits, such as 'with a capo at 2', or name the chords"
            );
        }

        for (var at = 0; at < draft.Subjects.Count; at++)
        {
            if (draft.Subjects[at] is (Subject.ChordsBySymbol shapes, var token))
            {
                draft.Subjects[at] = (Sounding(shapes, capo), token);
            }
        }

        return null;
    }

    // Of the two spellings of a capo's interval the one with the fewest accidentals, as chords of their own major keys.
    private static Subject.ChordsBySymbol Sounding(Subject.ChordsBySymbol shapes, int capo)
    {
        var up = 7 * capo % FifthsOfOctave;
        var fifths = new[] { up, up - FifthsOfOctave }.MinBy(shift =>
            shapes.Chords.Sum(chord =>
                Math.Abs(chord.Root.FifthsFromC + shift - (chord.Quality.IsMinorThird ? FifthsToRelativeMajor : 0))
            )
        );
        var interval = NoteName.FromFifths(0).IntervalTo(NoteName.FromFifths(fifths));
        return new(shapes.Chords.Select(chord => chord.Transpose(interval)).ToValueList());
    }
}
