using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>Scales that are not named note first: <c>the blues scale in A</c>, <c>the chromatic scale</c>, which begins on the tonic of the key unless it says from where; and chord symbols taken for scales.</summary>
internal static class ScaleWords
{
    /// <summary>Reads a kind of scale, which must stand here, and the tonic behind it.</summary>
    public static (Subject? Subject, Failure? Failure) ReadKindFirst(Cursor at)
    {
        var (kind, count) = Notes.ReadKind(at, 0);
        at.Skip(count);
        at.Accept("scale");
        var ahead = at.Current.Kind == TokenKind.Comma ? 1 : 0;
        var lead = ahead + (at.Peek(ahead + 1).Is("the") && at.Peek(ahead + 2).Is("key") ? 4 : 1);
        NoteName tonic = default;
        var length =
            at.Peek(ahead).IsAny("in", "from") && at.Peek(lead).Text != "a" ? Notes.Read(at, lead, out tonic) : 0;
        var isKey = length > 0 && Notes.ReadKind(at, lead + length).Kind is not null;
        if (kind == ScaleKind.Chromatic && (length == 0 || isKey))
        {
            return (new Subject.TheChromaticScale(null), null);
        }

        if (length == 0)
        {
            return (null, Failure.Expected($"its tonic, such as 'in A', after '{at.Previous.Text}'", at.Current));
        }

        // The blues scale, in A minor: the key is named as well, and its tonic is that of the scale.
        at.Skip(isKey ? 0 : lead + length);
        return (new Subject.ScaleShapes(new Scale(tonic, kind!), null), null);
    }

    /// <summary>The failure for chord symbols followed by a word that makes them a scale: <c>Gmaj scale</c>, <c>Am pentatonic</c>.</summary>
    /// <param name="at">The place behind the symbols.</param>
    /// <param name="chord">The last of them.</param>
    /// <param name="first">Where it begins.</param>
    /// <param name="hasArticle">Whether <c>the</c> stands before it.</param>
    public static Failure? Misnamed(Cursor at, Chord chord, Token first, bool hasArticle)
    {
        if (!at.Current.IsAny("scale", "scales", "pentatonic", "blues"))
        {
            return null;
        }

        var last = at.Peek(at.Peek(1).Is("scale") ? 1 : 0);
        var name = $"{chord.Root} {KindFor(chord, at.Current)} scale";
        return Failure.At(
            first,
            last,
            $"expected a note and a kind of scale before '{at.Current.Text}', found the chord '{chord}'",
            Edit.Of(first, last, hasArticle ? name : $"the {name}")
        );
    }

    // The plainest scale that holds the chord.
    private static ScaleKind KindFor(Chord chord, Token word) =>
        word.Is("pentatonic")
            ? chord.Quality.IsMinorThird
                ? ScaleKind.MinorPentatonic
                : ScaleKind.MajorPentatonic
            : word.Is("blues")
                ? ScaleKind.Blues
                : ScaleKind.All.FirstOrDefault(kind => Holds(kind, chord)) ?? ScaleKind.Major;

    private static bool Holds(ScaleKind kind, Chord chord) =>
        PitchClassSet
            .Of(kind.Intervals.Select(interval => PitchClass.FromSemitones(interval.Semitones)))
            .Includes(chord.Quality.PitchClasses);
}
