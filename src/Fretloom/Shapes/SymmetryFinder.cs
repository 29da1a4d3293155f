using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>Finds what turning and mirroring do to a key on a string set.</summary>
/// <remarks>
/// The shapes compared are the key's own chords in root position and close position, one note per string, root on the string that
/// sounds lowest: seventh chords on four strings, triads on three, thirds on two (named by the degree of their lower note, as they
/// have no numeral). On more than four strings the seventh chords of every run of four neighbours are compared among themselves;
/// on one string there is nothing to compare. Their forms are those of an endless neck, so the range of frets does not matter.
/// </remarks>
public static class SymmetryFinder
{
    private const int LargestChord = 4;

    /// <summary>The symmetries of a map: centres inside its frets, and pairs of chords.</summary>
    public static Symmetries Of(NeckMap map)
    {
        var open = map.Strings.Numbers.Select(number => PitchClass.FromSemitones(MidiAtNut(map.Instrument, number)));
        return new Symmetries(
            KeySymmetry.HalfTurnCentres(map.Key.PitchClasses, open.ToValueList(), map.Frets.First, map.Frets.Last),
            map.Strings.Neighbours(Math.Min(map.Strings.Count, LargestChord))
                .SelectMany(run => PairsOn(map.Instrument, map.Key, run))
                .ToValueList()
        );
    }

    /// <summary>
    /// The form of a chord in close position, its first member lowest, one note per string; members go to the strings in the
    /// order of their open sound. Frets that would lie behind the nut, or before a short string begins, count like others.
    /// </summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="strings">As many strings as there are members.</param>
    /// <param name="semitones">The members above the lowest, ascending: 0 4 7 10.</param>
    /// <exception cref="ArgumentException">There are not as many members as strings.</exception>
    public static ShapeForm CloseForm(Instrument instrument, StringSet strings, IReadOnlyList<int> semitones)
    {
        if (semitones.Count != strings.Count)
        {
            throw new ArgumentException("Each string sounds one member.", nameof(semitones));
        }

        var bySound = instrument.FromLowestOpen(strings).ToList();
        return ShapeForm.OneNotePerString(
            strings.Numbers.Select(number => semitones[bySound.IndexOf(number)] - MidiAtNut(instrument, number))
        );
    }

    private static IEnumerable<ShapePair> PairsOn(Instrument instrument, Key key, StringSet run)
    {
        var shapes = ChordsOf(key, run.Count)
            .Select(chord => (chord.Name, Form: CloseForm(instrument, run, chord.Semitones)))
            .ToList();
        for (var a = 0; a < shapes.Count; a++)
        {
            for (var b = a; b < shapes.Count; b++)
            {
                foreach (var motion in MotionsBetween(shapes[a].Form, shapes[b].Form, isOne: a == b))
                {
                    yield return new ShapePair(shapes[a].Name, shapes[b].Name, motion, run);
                }
            }
        }
    }

    private static IEnumerable<string> MotionsBetween(ShapeForm a, ShapeForm b, bool isOne)
    {
        if (a == b && !isOne)
        {
            yield return "same form";
        }

        if (a.HalfTurned() == b)
        {
            yield return "half-turn";
        }

        if (a.Mirrored() == b)
        {
            yield return "mirror";
        }
    }

    private static IEnumerable<(string Name, int[] Semitones)> ChordsOf(Key key, int members) =>
        members switch
        {
            4 => Named(key.Sevenths()),
            3 => Named(key.Triads()),
            2 => key.Triads().Select(triad => (triad.Degree.ToString(), Semitones(triad)[..2])),
            _ => [],
        };

    private static IEnumerable<(string, int[])> Named(IEnumerable<DiatonicChord> chords) =>
        chords.Select(chord => (chord.Numeral.ToString(), Semitones(chord)));

    private static int[] Semitones(DiatonicChord chord) =>
        chord.Chord.Quality.Intervals.Select(interval => interval.Semitones).ToArray();

    private static int MidiAtNut(Instrument instrument, int number) =>
        instrument.String(number).Open.MidiNumber - instrument.String(number).StartsAtFret;
}
