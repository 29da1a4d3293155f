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
        var number = new Degree(degree);
        var chord = family switch
        {
            ShapeFamily.Third or ShapeFamily.Triad => key.Triad(number),
            ShapeFamily.Seventh => key.Seventh(number),
            ShapeFamily.Sixth => key.Sixth(number),
            _ => throw new ArgumentOutOfRangeException(nameof(family)),
        };
        return new ShapeMembers(
            $"{NameOf(family)} shape on degree {degree}",
            family == ShapeFamily.Third ? $"{chord.Chord.Notes[0]}-{chord.Chord.Notes[1]}" : chord.Chord.ToString(),
            chord.Chord.Root.PitchClass.Number,
            SemitonesOf(chord.Chord).Take(family == ShapeFamily.Third ? 2 : 4).ToValueList()
        );
    }

    public static string NameOf(ShapeFamily family) =>
        family switch
        {
            ShapeFamily.Third => "third",
            ShapeFamily.Triad => "triad",
            ShapeFamily.Seventh => "seventh",
            _ => "sixth",
        };

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

    private static ShapeMembers ByNumeral(Key key, RomanNumeral numeral)
    {
        var chord = numeral.InKey(key);
        return new ShapeMembers($"{numeral} shape", chord.ToString(), chord.Root.PitchClass.Number, SemitonesOf(chord));
    }

    private static ValueList<int> SemitonesOf(Chord chord) =>
        chord.Quality.Intervals.Select(interval => interval.Semitones).ToValueList();

    /// <summary>Which voice from the top lies an octave lower; 0 for none. See <see cref="Arrangement"/>.</summary>
    private static int FromTheTop(Arrangement arrangement) =>
        arrangement switch
        {
            Arrangement.Close => 0,
            Arrangement.DropTwo => 2,
            Arrangement.DropThree => 3,
            _ => throw new ArgumentOutOfRangeException(nameof(arrangement), arrangement, "A claim names one order."),
        };

    /// <summary>Members stacked upward from one of them, each as near above the one before as it can be.</summary>
    private (int Member, int Height)[] Close(int lowest)
    {
        var voices = new (int Member, int Height)[Semitones.Count];
        voices[0] = (lowest, 0);
        for (var at = 1; at < voices.Length; at++)
        {
            var (below, height) = voices[at - 1];
            var member = (below + 1) % voices.Length;
            voices[at] = (member, height + 1 + Modulo.Of(Semitones[member] - Semitones[below] - 1, 12));
        }

        return voices;
    }
}
