using Fretloom.Claims;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Tests.Claims;

/// <summary>A shape put on its strings one member after the other.</summary>
/// <param name="Strings">The strings, far first.</param>
/// <param name="Frets">A fret for each, somewhere on a neck that runs on both ways.</param>
/// <param name="RootFret">Where its root is.</param>
/// <param name="HasRoot">Whether the root is a note of the key, or any.</param>
/// <param name="Window">The frets that are looked at.</param>
internal sealed record SlowShape(
    List<SlowString> Strings,
    List<int> Frets,
    int RootFret,
    bool HasRoot,
    FretRange? Window
)
{
    /// <summary>By how many frets it can be moved to lie where it is seen.</summary>
    public IEnumerable<int> Places =>
        Window is { } range
            ? Enumerable
                .Range(-150, 300)
                .Where(shift => (!HasRoot || shift % 12 == 0) && Frets.TrueForAll(fret => range.Contains(fret + shift)))
            : [0];

    public static IEnumerable<SlowShape> Of(Key key, ShapeSet set, List<SlowString> strings, FretRange? window) =>
        Chords(key, set).Select(chord => Put(chord.Root, chord.Members, set.Voicing, strings, window));

    public int End(ShapeEnd end) =>
        end == ShapeEnd.Root ? RootFret
        : end == ShapeEnd.First ? Frets.Min()
        : Frets.Max();

    public bool LooksLike(SlowShape other) => IsImage(other.Frets);

    public bool IsHalfTurnOf(SlowShape other) => IsImage(other.Frets.Select(fret => -fret).Reverse().ToList());

    public bool IsMirrorOf(SlowShape other) => IsImage(other.Frets.Select(fret => -fret).ToList());

    public bool IsCarriedTo(SlowShape other, List<SlowString> all, double c)
    {
        var image = Strings
            .Zip(Frets, (s, fret) => (String: all[^(all.IndexOf(s) + 1)], Fret: (int)(2 * c) - fret))
            .Reverse()
            .ToList();
        if (!image.Select(spot => spot.String).SequenceEqual(other.Strings))
        {
            return false;
        }

        var from = image.Select(spot => spot.Fret).ToList();
        if (!HasRoot || !other.HasRoot)
        {
            return other.IsImage(from);
        }

        var shifts = Window is null ? Enumerable.Range(-20, 40).Select(octave => 12 * octave) : [0];
        return Places.Any(mine =>
            other.Places.Any(theirs =>
                shifts.Any(shift =>
                    from.Select(fret => fret - mine + shift).SequenceEqual(other.Frets.Select(fret => fret + theirs))
                )
            )
        );
    }

    private bool IsImage(List<int> frets) =>
        frets.Count == Frets.Count
        && Enumerable.Range(-300, 600).Any(shift => Frets.SequenceEqual(frets.Select(fret => fret + shift)));

    private static IEnumerable<(int? Root, List<int> Members)> Chords(Key key, ShapeSet set) =>
        set switch
        {
            ShapeSet.Several several => Enumerable.Range(1, 7).Select(degree => Stack(key, several.Family, degree)),
            ShapeSet.OnDegree on => [Stack(key, on.Family, on.Degree)],
            ShapeSet.OfQuality of => [(null, of.Quality.Semitones.ToList())],
            ShapeSet.ByNumeral by => [Named(by.Numeral.InKey(key))],
            _ => throw new ArgumentOutOfRangeException(nameof(set)),
        };

    private static (int?, List<int>) Named(Chord chord) =>
        (chord.Root.PitchClass.Number, chord.Quality.Intervals.Select(interval => interval.Semitones).ToList());

    /// <summary>Every second note of the scale from a degree; a sixth chord ends a step above its fifth. Of two notes, the second is so many steps higher.</summary>
    private static (int?, List<int>) Stack(Key key, ShapeFamily family, int degree)
    {
        int[] steps = family switch
        {
            ShapeFamily.Third => [0, 2],
            ShapeFamily.Triad => [0, 2, 4],
            ShapeFamily.Seventh => [0, 2, 4, 6],
            ShapeFamily.Sixth => [0, 2, 4, 5],
            ShapeFamily.TwoNoteSixth => [0, 5],
            ShapeFamily.Octave => [0, 7],
            ShapeFamily.Tenth => [0, 9],
            _ => throw new ArgumentOutOfRangeException(nameof(family)),
        };
        var root = Scale(key, degree - 1);
        return (
            key.Notes[degree - 1].PitchClass.Number,
            steps.Select(step => Scale(key, degree - 1 + step) - root).ToList()
        );
    }

    private static int Scale(Key key, int at) => key.Kind.Intervals[at % 7].Semitones + 12 * (at / 7);

    private static SlowShape Put(
        int? root,
        List<int> members,
        ShapeVoicing voicing,
        List<SlowString> strings,
        FretRange? window
    )
    {
        var voices = Voices(members, voicing);
        var bySound = strings.OrderBy(s => s.Midi).ThenByDescending(s => s.Number).ToList();
        var frets = strings.Select(s => 60 + (root ?? 0) + voices[bySound.IndexOf(s)].Midi - s.Midi).ToList();
        var rootString = bySound[voices.FindIndex(voice => voice.Member == 0)];
        return new SlowShape(strings, frets, frets[strings.IndexOf(rootString)], root is not null, window);
    }

    /// <summary>Members stacked upward from one of them, the voice asked for then dropped; tried for every lowest member until the right one comes out lowest.</summary>
    private static List<(int Member, int Midi)> Voices(List<int> members, ShapeVoicing voicing)
    {
        for (var start = 0; start < members.Count; start++)
        {
            var voices = new List<(int Member, int Midi)>();
            for (var at = 0; at < members.Count; at++)
            {
                var member = (start + at) % members.Count;
                var midi = members[member];
                while (at > 0 && midi <= voices[^1].Midi)
                {
                    midi += 12;
                }

                // A tenth stays a tenth; what lies below it is put as near above it as it can be.
                while (member < start && midi - 12 > voices[^1].Midi)
                {
                    midi -= 12;
                }

                voices.Add((member, midi));
            }

            var dropped = voicing.Arrangement switch
            {
                Arrangement.DropTwo => voices.Count - 2,
                Arrangement.DropThree => voices.Count - 3,
                _ => -1,
            };
            if (dropped >= 0)
            {
                voices[dropped] = (voices[dropped].Member, voices[dropped].Midi - 12);
            }

            voices = voices.OrderBy(voice => voice.Midi).ToList();
            if (voices[0].Member == voicing.Inversion)
            {
                // Where the lowest one lies within the octave above the root does not matter: frets an octave apart are one, or both are looked at.
                return voices;
            }
        }

        throw new InvalidOperationException("Every member can lie lowest.");
    }
}
