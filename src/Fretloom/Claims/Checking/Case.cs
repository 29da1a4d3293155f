using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>One key on one string set: what a claim is true or false of.</summary>
internal sealed class Case(Place place, Key key, NeckLine neck, HandsTried? hands = null)
{
    public Place Place => place;

    public Key Key => key;

    public NeckLine Neck => neck;

    /// <summary>What hands were found to do with its shapes; shared by the keys of a place where that is asked of many.</summary>
    public HandsTried Hands { get; } = hands ?? new HandsTried();

    /// <summary>Pitch classes of the key, as bits.</summary>
    public int Notes { get; } = key.PitchClasses.Mask;

    /// <summary>The pitch class of a degree, 1 to 7.</summary>
    public int DegreeNote(int degree) => key.Notes[degree - 1].PitchClass.Number;

    public bool IsInKey(int open, int fret) => (Notes >> Modulo.Of(open + fret, 12) & 1) != 0;

    /// <summary>The frets of a noun, in half frets.</summary>
    public ValueList<int> FretsOf(FretNoun noun)
    {
        var strings = StringsOf(noun.Of);
        return noun.Kind == FretKind.HalfTurnCentre
            ? neck.HalfFrets.Where(centre => IsCentre(strings, centre)).ToValueList()
            : neck
                .Frets.Where(fret => strings.Opens.All(open => IsInKey(open, fret) == (noun.Kind == FretKind.Full)))
                .Select(fret => 2 * fret)
                .ToValueList();
    }

    /// <summary>Places about which the half-turn of the whole string set carries the key pattern onto itself, in half frets.</summary>
    public ValueList<int> Centres => FretsOf(new FretNoun(FretKind.HalfTurnCentre));

    /// <summary>The frets of a degree on a string, in half frets.</summary>
    public ValueList<int> FretsOfDegree(int degree, int number)
    {
        var fretOfOctave = Modulo.Of(DegreeNote(degree) - place.OpenOf(number), 12);
        return neck.Frets.Where(fret => fret % 12 == fretOfOctave).Select(fret => 2 * fret).ToValueList();
    }

    public OpenStrings StringsOf(OtherStrings? other) =>
        place.Resolve(other) ?? throw new InvalidOperationException("Asked only where the claim applies.");

    /// <summary>The key pattern of some strings, a set of frets as bits for each.</summary>
    public ValueList<int> Pattern(OpenStrings strings) =>
        Enumerable.Range(0, strings.Count).Select(at => strings.FretsOf(at, Notes)).ToValueList();

    /// <summary>See the remarks of <see cref="Shapes.KeySymmetry"/>.</summary>
    private bool IsCentre(OpenStrings strings, int centre) =>
        Enumerable
            .Range(0, strings.Count)
            .All(at => Twelve.Reversed(Notes, strings.Opens[at] + strings.Opens[^(at + 1)] + centre) == Notes);
}
