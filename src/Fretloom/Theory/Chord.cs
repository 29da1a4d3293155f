using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Theory;

/// <summary>A chord with its notes spelled: a root, a quality, and the note in the bass.</summary>
/// <remarks>
/// Equal when root, quality and bass are. Text is root, suffix and, when the bass is not the root, a slash and the bass:
/// <c>F#m7</c>, <c>C/E</c>, <c>Am7/G</c>. The root takes the longest run of accidentals: <c>C#5</c> is the power chord on C sharp,
/// <c>Cb9</c> the ninth on C flat; for a C with a sharp fifth write <c>C(#5)</c> or <c>Caug</c>.
/// </remarks>
public sealed record Chord
{
    /// <summary>The largest alteration of a root, in semitones either way; a member or bass may have <see cref="NoteName.MaxAlteration"/>.</summary>
    public const int MaxRootAlteration = 9;

    /// <summary>Makes a chord.</summary>
    /// <param name="root">The root.</param>
    /// <param name="quality">The quality.</param>
    /// <param name="bass">The lowest note, a member or not; the root when not given.</param>
    /// <exception cref="ArgumentOutOfRangeException">The root is altered by more than <see cref="MaxRootAlteration"/>.</exception>
    public Chord(NoteName root, ChordQuality quality, NoteName? bass = null)
    {
        ArgumentNullException.ThrowIfNull(quality);
        if (!IsRoot(root))
        {
            throw new ArgumentOutOfRangeException(nameof(root), root, "A root is altered by at most nine semitones.");
        }

        Root = root;
        Quality = quality;
        Bass = bass ?? root;
        Notes = quality.Intervals.Select(root.Plus).ToValueList();
        PitchClasses = PitchClassSet.Of(Notes.Select(note => note.PitchClass));
    }

    /// <summary>The root.</summary>
    public NoteName Root { get; }

    /// <summary>The quality.</summary>
    public ChordQuality Quality { get; }

    /// <summary>The lowest note: the root, another member in an inversion, or a foreign note.</summary>
    public NoteName Bass { get; }

    /// <summary>The members in the order of <see cref="ChordQuality.Intervals"/>, the root first. A foreign bass is not among them.</summary>
    public ValueList<NoteName> Notes { get; }

    /// <summary>The pitch classes of <see cref="Notes"/>.</summary>
    public PitchClassSet PitchClasses { get; }

    /// <summary>Which member is in the bass: 0 the root, 1 the next (first inversion), and so on; -1 for a bass foreign to the chord.</summary>
    public int Inversion => IndexOf(Bass.PitchClass);

    /// <summary>The index in <see cref="Notes"/> of the first member that sounds a pitch class; -1 when none does.</summary>
    public int IndexOf(PitchClass pitchClass)
    {
        for (var index = 0; index < Notes.Count; index++)
        {
            if (Notes[index].PitchClass == pitchClass)
            {
                return index;
            }
        }

        return -1;
    }

    /// <summary>The number of a member: <c>1</c> for the root, <c>3</c>, <c>5</c>, <c>7</c>, <c>9</c>; with an accidental only where two members share a number.</summary>
    /// <param name="index">The index in <see cref="Notes"/>.</param>
    /// <exception cref="IndexOutOfRangeException">There is no such member.</exception>
    public string MemberText(int index) => Quality.Intervals[index].MemberText(Quality.Intervals);

    /// <summary>The same chord over another bass.</summary>
    public Chord Over(NoteName bass) => new(Root, Quality, bass);

    /// <summary>The chord with the member of an index in the bass; 0 is root position.</summary>
    /// <exception cref="IndexOutOfRangeException">There is no such member.</exception>
    public Chord Inverted(int inversion) => Over(Notes[inversion]);

    /// <summary>The chord an interval higher, bass and all.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A note would need too many accidentals.</exception>
    public Chord Transpose(Interval interval) => new(Root.Plus(interval), Quality, Bass.Plus(interval));

    /// <summary>Reads a chord symbol as described in the remarks; the root and bass letters are capitals.</summary>
    /// <exception cref="FormatException">The text is not a chord symbol.</exception>
    public static Chord Parse(string text) =>
        TryParse(text, out var chord)
            ? chord
            : throw new FormatException($"'{text}' is not a chord such as Cmaj7 or F#m7/E.");

    /// <summary>Reads a chord symbol if the whole text is one.</summary>
    public static bool TryParse([NotNullWhen(true)] string? text, [NotNullWhen(true)] out Chord? chord)
    {
        chord = null;
        if (text is not [>= 'A' and <= 'G', ..])
        {
            return false;
        }

        var length = NoteName.Read(text, out var root);
        var suffix = text[length..];
        NoteName? bass = null;
        if (!ChordQuality.TryParse(suffix, out var quality))
        {
            var slash = suffix.LastIndexOf('/');
            if (
                slash < 0
                || !TryParseBass(suffix[(slash + 1)..], out var below)
                || !ChordQuality.TryParse(suffix[..slash], out quality)
            )
            {
                return false;
            }

            bass = below;
        }

        if (!IsRoot(root))
        {
            return false;
        }

        chord = new Chord(root, quality, bass);
        return true;
    }

    /// <inheritdoc/>
    public bool Equals(Chord? other) =>
        other is not null && Root == other.Root && Quality == other.Quality && Bass == other.Bass;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Root, Quality, Bass);

    /// <summary>Root, suffix, and the bass after a slash when it is not the root.</summary>
    public override string ToString() => Bass == Root ? $"{Root}{Quality}" : $"{Root}{Quality}/{Bass}";

    private static bool TryParseBass(string text, out NoteName bass)
    {
        bass = default;
        return text is [>= 'A' and <= 'G', ..] && NoteName.TryParse(text, out bass);
    }

    private static bool IsRoot(NoteName name) => Math.Abs(name.Alteration) <= MaxRootAlteration;
}
