using Fretloom.Sentences.Claims;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>A chord that shapes are made of.</summary>
/// <param name="Name">As the claim calls it: <c>seventh shape on degree 5</c>.</param>
/// <param name="Symbol">The chord in this key: <c>G7</c>; null when its root is left open.</param>
/// <param name="Root">The pitch class of the root; null when it is left open.</param>
/// <param name="Semitones">The members above the root, ascending from 0.</param>
internal sealed record ShapeMembers(string Name, string? Symbol, int? Root, ValueList<int> Semitones)
{
    private const int Third = 2;
    private const int Sixth = 5;
    private const int Octave = 7;

    public static ValueList<ShapeMembers> Of(Key key, ShapeSet set) =>
        set switch
        {
            ShapeSet.Several several => Enumerable
                .Range(1, 7)
                .Select(degree => OnDegree(key, several.Family, degree))
                .ToValueList(),
            ShapeSet.OnDegree on => [OnDegree(key, on.Family, on.Degree)],
            ShapeSet.OfQuality of => [new($"{of.Quality} shape", null, null, of.Quality.Semitones)],
            ShapeSet.ByNumeral by => [ByNumeral(key, by.Numeral)],
            _ => throw new ArgumentOutOfRangeException(nameof(set)),
        };

    public static ShapeMembers OnDegree(Key key, ShapeFamily family, int degree)
    {
        var name = $"{ShapeNouns.WordOf(family)} shape on degree {degree}";
        var number = new Degree(degree);
        return family switch
        {
            ShapeFamily.Triad => OfChord(name, key.Triad(number).Chord),
            ShapeFamily.Seventh => OfChord(name, key.Seventh(number).Chord),
            ShapeFamily.Sixth => OfChord(name, key.Sixth(number).Chord),
            ShapeFamily.Third => OfTwo(name, key, degree, Third),
            ShapeFamily.TwoNoteSixth => OfTwo(name, key, degree, Sixth),
            ShapeFamily.Octave => OfTwo(name, key, degree, Octave),
            ShapeFamily.Tenth => OfTwo(name, key, degree, Octave + Third),
            _ => throw new ArgumentOutOfRangeException(nameof(family)),
        };
    }

    /// <summary>Whether the chord has the member that should lie lowest, and a voice that can be dropped below all others.</summary>
    public static bool CanBeVoiced(ShapeSet set) =>
        set.Voicing.Inversion < set.Notes
        && FromTheTop(set.Voicing.Arrangement) <= set.Notes
        && (set.Voicing.Arrangement == Arrangement.Close || !set.IsWide);

    /// <summary>The members from the lowest-sounding up: which one, and how many semitones above the lowest.</summary>
    public ValueList<(int Member, int Height)> Voiced(ShapeVoicing voicing)
    {
        var count = Semitones.Count;
        var dropped = count - FromTheTop(voicing.Arrangement);
        var close = Close(dropped == count ? voicing.Inversion : Modulo.Of(voicing.Inversion - dropped, count));
        if (dropped < count)
        {
            close[dropped].Height -= 12;
        }

        var lowest = close.Min(voice => voice.Height);
        return close
            .OrderBy(voice => voice.Height)
            .Select(voice => (voice.Member, voice.Height - lowest))
            .ToValueList();
    }

    private static ShapeMembers ByNumeral(Key key, RomanNumeral numeral) =>
        OfChord($"{numeral} shape", numeral.InKey(key));

    private static ShapeMembers OfChord(string name, Chord chord) =>
        new(
            name,
            chord.ToString(),
            chord.Root.PitchClass.Number,
            chord.Quality.Intervals.Select(interval => interval.Semitones).ToValueList()
        );

    /// <summary>A degree and the one so many steps of the scale above it.</summary>
    private static ShapeMembers OfTwo(string name, Key key, int degree, int steps)
    {
        var (low, high) = (key.Notes[degree - 1], key.Notes[(degree - 1 + steps) % Octave]);
        return new ShapeMembers(
            name,
            $"{low}-{high}",
            low.PitchClass.Number,
            [0, Height(degree - 1 + steps) - Height(degree - 1)]
        );

        int Height(int step) => key.Kind.Intervals[step % Octave].Semitones + 12 * (step / Octave);
    }

    /// <summary>Which voice from the top lies an octave lower; 0 for none. See <see cref="Arrangement"/>.</summary>
    private static int FromTheTop(Arrangement arrangement) =>
        arrangement switch
        {
            Arrangement.Close => 0,
            Arrangement.DropTwo => 2,
            Arrangement.DropThree => 3,
            _ => throw new ArgumentOutOfRangeException(nameof(arrangement), arrangement, "A claim names one order."),
        };

    /// <summary>Members stacked upward from one of them as they stand, those below it as near above the one before as they can be.</summary>
    private (int Member, int Height)[] Close(int lowest)
    {
        var voices = new (int Member, int Height)[Semitones.Count];
        voices[0] = (lowest, 0);
        for (var at = 1; at < voices.Length; at++)
        {
            var (below, height) = voices[at - 1];
            var member = (below + 1) % voices.Length;
            var step = Semitones[member] - Semitones[below];
            voices[at] = (member, height + (step > 0 ? step : 1 + Modulo.Of(step - 1, 12)));
        }

        return voices;
    }
}
