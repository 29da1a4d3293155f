using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Finds every shape of a chord that a voicing allows.</summary>
/// <remarks>
/// <para>
/// <see cref="Voicing.OneNotePerString"/>: a chord with fewer notes than strings is placed on every run of neighbours of its own
/// size; in drop 3 also on such a run with the string above the lowest-sounding one left out. Every placement inside the range is
/// listed, octave repeats too; there is no limit to the span.
/// </para>
/// <para>
/// <see cref="Voicing.Strummed"/>: a run of neighbouring strings sounds, the others are muted. At most four frets and four
/// fingers, one of which may lie across the lowest fret and then across every string from there to the floor; no two fingers at
/// the lowest fret four or more strings apart with another further up between them and an open string between two pressed
/// neighbours. A shape that is merely another with strings muted is dropped, unless it sounds at least four strings and takes
/// fewer fingers. Open strings join in first position only, frets 1 to 4. The short string of a banjo is never pressed: it rings
/// in every position when it sounds a member, else it is left out. The lowest-sounding note is the root, the inversion's member
/// or the bass after the slash; on re-entrant instruments, and on those of four strings or fewer that do not reach below C2, root
/// position means any member. From four members on the perfect fifth may be left out, and what <see
/// cref="ChordQuality.Omissible"/> says; <see cref="Shape.MembersLeftOut"/> tells. A bass foreign to the chord sounds once.
/// </para>
/// <para>
/// <see cref="Voicing.Easy"/>: a run of so many neighbours, all sounding, at most three frets, in first position unless another is
/// named; any member lowest unless a slash says which; members may be left out as in strummed shapes.
/// </para>
/// <para>
/// A position is four frets from its number on, one for each finger; open strings belong to first position. The rules are common
/// practice, no source; where players differ the choice is ours.
/// </para>
/// </remarks>
public static class ShapeFinder
{
    /// <summary>Why a chord cannot be voiced so on these strings and frets, in a sentence for the person who asked; null when it can.</summary>
    /// <remarks>Null does not promise a shape: the range may be too small for one.</remarks>
    public static string? WhyNot(NeckMap map, Chord chord, Voicing voicing)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(chord);
        ArgumentNullException.ThrowIfNull(voicing);
        var source = new ShapeSource.OfChord(chord, null);
        return voicing switch
        {
            Voicing.OneNotePerString each => OneNotePerStringFinder.WhyNot(map, source, each)
                ?? new Reach(map, each.Position).WhyNot(),
            Voicing.Strummed strummed => StrummedFinder.WhyNot(map, source, strummed)
                ?? new Reach(map, strummed.Position).WhyNot(),
            Voicing.Easy easy => EasyFinder.WhyNot(map, source, easy) ?? EasyFinder.ReachOf(map, easy).WhyNot(),
            _ => throw new ArgumentException($"There is no voicing {voicing}.", nameof(voicing)),
        };
    }

    /// <summary>Every shape, from the nut on; always in the same order.</summary>
    /// <returns>
    /// One note per string: by the lowest fret, then the highest, then the string set from the far side; each shape's strings are
    /// its own run. Strummed: open shapes over at most three frets that sound the string nearest the floor; the others with the
    /// index finger at frets 1 to 3; then fret by fret, shapes over four frets one later. Among those what a teacher would show
    /// first: sevenths, ninths and other colour tones not doubled, and a ninth a ninth above the root in the bass; no member left
    /// out, most strings, smallest span, few fingers. Easy: likewise, but the strings nearest the floor first of all. The strings
    /// of strummed and easy shapes are those of the map. Empty when none fits.
    /// </returns>
    /// <exception cref="ArgumentException"><see cref="WhyNot"/> gives a reason.</exception>
    public static ValueList<Shape> Find(NeckMap map, ShapeSource.OfChord chord, Voicing voicing)
    {
        ArgumentNullException.ThrowIfNull(chord);
        if (WhyNot(map, chord.Chord, voicing) is { } reason)
        {
            throw new ArgumentException(reason, nameof(voicing));
        }

        return voicing switch
        {
            Voicing.OneNotePerString each => OneNotePerStringFinder.Find(map, chord, each).ToValueList(),
            Voicing.Strummed strummed => StrummedFinder.Find(map, chord, strummed).ToValueList(),
            Voicing.Easy easy => EasyFinder.Find(map, chord, easy).ToValueList(),
            _ => throw new ArgumentException($"There is no voicing {voicing}.", nameof(voicing)),
        };
    }
}
