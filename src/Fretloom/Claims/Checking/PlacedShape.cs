using Fretloom.Neck;

namespace Fretloom.Claims.Checking;

/// <summary>A shape, one note per string, and where it lies on the neck that is looked at.</summary>
/// <param name="Of">The chord.</param>
/// <param name="Strings">The strings, the farthest first.</param>
/// <param name="Frets">A fret for each, from the string's own nut; may be negative. Only differences count when the root is left open.</param>
/// <param name="RootAt">The index of the string that sounds the root.</param>
/// <param name="Neck">The neck.</param>
internal sealed record PlacedShape(
    ShapeMembers Of,
    OpenStrings Strings,
    ValueList<int> Frets,
    int RootAt,
    NeckLine Neck
)
{
    /// <summary>Whether it lies anywhere, or is a form that may lie everywhere.</summary>
    public bool HasPlace => Of.Root is not null;

    /// <summary>Frets covered, inclusively; fret 0 counts like any other.</summary>
    public int Span => Frets.Max() - Frets.Min() + 1;

    /// <summary>By how many frets to move it to each place where it lies, wholly inside the window; ascending.</summary>
    public IEnumerable<int> Placements
    {
        get
        {
            var (lowest, highest) = (Frets.Min(), Frets.Max());
            return HasPlace ? Neck.Octaves(lowest, highest).Select(octave => 12 * octave)
                : Neck.Window is { } window
                    ? Enumerable.Range(window.First - lowest, Math.Max(0, window.Count - Span + 1))
                : [0];
        }
    }

    /// <summary>It at each of those places alone, the lowest first; itself on the endless neck.</summary>
    public IEnumerable<PlacedShape> OneByOne =>
        Neck.Window is null
            ? [this]
            : Placements.Select(moved =>
                this with
                {
                    Neck = new NeckLine(new FretRange(Frets.Min() + moved, Frets.Max() + moved)),
                }
            );

    public static PlacedShape On(Case one, ShapeMembers members, ShapeVoicing voicing, OpenStrings strings)
    {
        var voices = members.Voiced(voicing);
        var frets = new int[strings.Count];
        var (rank, rootAt) = (0, 0);
        var lowestNote = (members.Root ?? 0) + members.Semitones[voices[0].Member];
        foreach (var at in strings.FromLowest)
        {
            frets[at] = lowestNote + voices[rank].Height - strings.Opens[at];
            rootAt = voices[rank].Member == 0 ? at : rootAt;
            rank++;
        }

        return new PlacedShape(members, strings, ValueList.Create<int>(frets), rootAt, one.Neck);
    }

    /// <summary>One of its frets at each place, in half frets.</summary>
    public ValueList<int> Ends(ShapeEnd end)
    {
        var fret = end switch
        {
            ShapeEnd.Root => Frets[RootAt],
            ShapeEnd.First => Frets.Min(),
            _ => Frets.Max(),
        };
        return Neck.Set(Placements.Select(moved => 2 * (fret + moved)));
    }

    /// <summary>Whether both look alike, wherever and on whichever strings they lie.</summary>
    public bool HasFormOf(PlacedShape other) => Forms.AreAlike(Frets, other.Frets);

    public bool IsHalfTurnOf(PlacedShape other) => Forms.AreAlike(Frets, Forms.HalfTurned(other.Frets));

    public bool IsMirrorOf(PlacedShape other) => Forms.AreAlike(Frets, Forms.Mirrored(other.Frets));

    /// <summary>Whether it lies where another does that is moved.</summary>
    public bool Lies(PlacedShape other, int movedFrets) =>
        Strings.Numbers == other.Strings.Numbers
        && HasFormOf(other)
        && Placements.Any(mine =>
            other.Placements.Any(theirs => Meet(Frets[0] + mine, other.Frets[0] + theirs + movedFrets))
        );

    /// <summary>Whether the half-turn about a place carries it to another, in a string set.</summary>
    /// <param name="chosen">The string set that is turned.</param>
    /// <param name="centre">In half frets.</param>
    /// <param name="other">The other.</param>
    public bool IsCarried(OpenStrings chosen, int centre, PlacedShape other)
    {
        var numbers = chosen.Numbers.Numbers;
        var turned = Strings.Numbers.Numbers.Reverse().Select(number => numbers[^(numbers.IndexOf(number) + 1)]);
        if (!turned.SequenceEqual(other.Strings.Numbers.Numbers) || !IsHalfTurnOf(other))
        {
            return false;
        }

        return !HasPlace
            || !other.HasPlace
            || Placements.Any(mine =>
                other.Placements.Any(theirs => Meet(centre - Frets[^1] - mine, other.Frets[0] + theirs))
            );
    }

    private bool Meet(int fret, int other) => Neck.Normal(2 * fret) == Neck.Normal(2 * other);
}

/// <summary>What shapes look like: a fret for each string, of which only the differences count.</summary>
internal static class Forms
{
    public static bool AreAlike(ValueList<int> one, ValueList<int> other) =>
        one.Count == other.Count && one.Zip(other, (a, b) => a - b).Distinct().Count() == 1;

    public static ValueList<int> HalfTurned(ValueList<int> frets) =>
        frets.Reverse().Select(fret => -fret).ToValueList();

    public static ValueList<int> Mirrored(ValueList<int> frets) => frets.Select(fret => -fret).ToValueList();
}
