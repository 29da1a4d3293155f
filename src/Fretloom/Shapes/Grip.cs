using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>One note on each string of a run of neighbours, all held at once, as the fretting hand finds it.</summary>
/// <remarks>
/// The counts are simple and necessary, not sufficient: which finger goes where, and whether a hand of a given size reaches,
/// is worked out elsewhere. Common practice, no source.
/// </remarks>
internal sealed class Grip
{
    public const int MostFingers = 4;

    /// <summary>
    /// How many strings apart two fingers at the lowest fret may be, with another further up between them and a trapped open string.
    /// </summary>
    private const int WidestArch = 3;

    private readonly ValueList<SoundingSpot> _places;

    /// <summary>Makes a grip.</summary>
    /// <param name="places">From string to neighbouring string; at least one.</param>
    public Grip(ValueList<SoundingSpot> places)
    {
        _places = places;
        var (bits, lowest) = (0, int.MaxValue);
        foreach (var place in places.AsSpan())
        {
            bits |= 1 << place.PitchClass.Number;
            lowest = Math.Min(lowest, place.Midi);
        }

        PitchClasses = new PitchClassSet(bits);
        Bass = PitchClass.FromSemitones(lowest);
        (Lowest, Highest, HasOpen) = Pressed(places.AsSpan());
    }

    /// <summary>Where it lies, in the order of the strings.</summary>
    public ValueList<Spot> Spots => _places.Select(place => place.Spot).ToValueList();

    /// <summary>How many strings sound.</summary>
    public int Count => _places.Count;

    /// <summary>What sounds.</summary>
    public PitchClassSet PitchClasses { get; }

    /// <summary>What sounds lowest.</summary>
    public PitchClass Bass { get; }

    /// <summary>The lowest fret that is pressed; 0 when all strings are open.</summary>
    public int Lowest { get; }

    /// <summary>The highest fret that is pressed; 0 when all strings are open.</summary>
    public int Highest { get; }

    /// <summary>Whether an open string rings; the short string of a banjo does not count.</summary>
    public bool HasOpen { get; }

    /// <summary>Frets covered, inclusively, open strings left out.</summary>
    public int Span => Highest == 0 ? 0 : Highest - Lowest + 1;

    /// <summary>
    /// Fingers that press: one for each note, but one index finger laid across for all notes at the lowest fret. It lies across
    /// every string from the farthest of them to the floor, so that none of those may be open.
    /// </summary>
    public int Fingers
    {
        get
        {
            var (pressed, atLowest) = (0, 0);
            foreach (var place in _places.AsSpan())
            {
                pressed += place.Pressed > 0 ? 1 : 0;
                atLowest += place.Pressed > 0 && place.Pressed == Lowest ? 1 : 0;
            }

            return atLowest > 1 && IsBarrePossible() ? pressed - atLowest + 1 : pressed;
        }
    }

    /// <summary>
    /// Whether a hand can hold it: with four fingers, and not with two at the lowest fret four or more strings apart while
    /// another presses further up between them and an open string is trapped: 1-0-2-2-1-0, 2-0-4-3-2.
    /// </summary>
    public bool IsHoldable => Fingers <= MostFingers && !IsArchedTooWide();

    /// <summary>Open strings that ring between two pressed neighbours, which both fingers have to keep clear of.</summary>
    public int TrappedOpenStrings
    {
        get
        {
            var count = 0;
            for (var at = 1; at < Count - 1; at++)
            {
                var isTrapped = _places[at].Pressed == 0 && _places[at - 1].Pressed > 0 && _places[at + 1].Pressed > 0;
                count += isTrapped ? 1 : 0;
            }

            return count;
        }
    }

    /// <summary>How far the frets go up and down from string to string, all told: 2 for 2-2-1-2.</summary>
    public int UpsAndDowns => _places.Zip(_places.Skip(1), (one, next) => Math.Abs(next.Pressed - one.Pressed)).Sum();

    /// <summary>Whether a grip that begins like this covers no more frets than asked, and has open strings only in first position.</summary>
    public static bool IsWithin(int span, ReadOnlySpan<SoundingSpot> places)
    {
        var (lowest, highest, hasOpen) = Pressed(places);
        return highest - lowest < span && (highest <= Reach.FretsInPosition || !hasOpen);
    }

    /// <summary>Semitones from the lowest note up to each note of a pitch class.</summary>
    public IEnumerable<int> HeightsOf(PitchClass pitchClass) =>
        _places
            .Where(place => place.PitchClass == pitchClass)
            .Select(place => place.Midi - _places.Min(one => one.Midi));

    /// <summary>Whether it is another grip with strings muted.</summary>
    public bool IsPartOf(Grip other) => other.Count > Count && other._places.AsSpan().IndexOf(_places.AsSpan()) >= 0;

    /// <summary>How many strings sound a pitch class.</summary>
    public int CountOf(PitchClass pitchClass) => _places.Count(place => place.PitchClass == pitchClass);

    private static (int Lowest, int Highest, bool HasOpen) Pressed(ReadOnlySpan<SoundingSpot> places)
    {
        var (lowest, highest, hasOpen) = (int.MaxValue, 0, false);
        foreach (var place in places)
        {
            hasOpen |= place.Spot.Fret == 0;
            highest = Math.Max(highest, place.Pressed);
            lowest = place.Pressed == 0 ? lowest : Math.Min(lowest, place.Pressed);
        }

        return (Math.Min(lowest, highest), highest, hasOpen);
    }

    private bool IsBarrePossible()
    {
        var pressed = PressedFrets();
        return !pressed.AsSpan(Array.IndexOf(pressed, Lowest)).Contains(0);
    }

    private bool IsArchedTooWide()
    {
        var pressed = PressedFrets();
        var (first, last) = (Array.IndexOf(pressed, Lowest), Array.LastIndexOf(pressed, Lowest));
        return last - first > WidestArch
            && TrappedOpenStrings > 0
            && pressed.AsSpan(first, last - first).ContainsAnyExcept(0, Lowest);
    }

    private int[] PressedFrets() => [.. _places.Select(place => place.Pressed)];
}
