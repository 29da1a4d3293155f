using Fretloom.Claims;
using Fretloom.Theory;

namespace Fretloom.Sentences.Claims;

/// <summary>Chords by numeral that are chords of the key, and so shapes on a degree.</summary>
internal static class KeyChords
{
    /// <summary>A numeral that names the key's own chord in every key spoken of, as the shape on that degree: <c>V7</c> in major keys; others as they are.</summary>
    public static ShapeSet OnDegree(ShapeSet shapes, KeyScope keys)
    {
        if (shapes is not ShapeSet.ByNumeral { Numeral: { Target: null, Degree: { IsDiatonic: true } degree } numeral })
        {
            return shapes;
        }

        ShapeFamily? family =
            keys.Keys.All(key => key.Triad(degree).Chord.Quality == numeral.Quality) ? ShapeFamily.Triad
            : keys.Keys.All(key => key.Seventh(degree).Chord.Quality == numeral.Quality) ? ShapeFamily.Seventh
            : null;
        return family is { } own ? new ShapeSet.OnDegree(own, degree.Number, shapes.Voicing, shapes.Of) : shapes;
    }
}
