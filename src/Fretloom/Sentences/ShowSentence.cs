using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Sentences;

/// <summary>What stands on the marks of a picture.</summary>
public enum LabelStyle
{
    /// <summary>Degrees of the key's own scale.</summary>
    Degrees,

    /// <summary>Members of the chord: R 3 5 7.</summary>
    Members,

    /// <summary>Note names.</summary>
    Names,

    /// <summary>Distances from the tonic: 1 b3 5.</summary>
    Intervals,

    /// <summary>Fingers of the fretting hand.</summary>
    Fingers,
}

/// <summary>A parsed show sentence. What was left unsaid is null, false or empty.</summary>
/// <remarks>Two sentences are equal when they say the same. <see cref="ToString"/> prints canonically and parses back to an equal value.</remarks>
public sealed record ShowSentence
{
    /// <summary>The instrument named, with its tuning, without capo.</summary>
    public Instrument? Instrument { get; init; }

    /// <summary>The fret of the capo; 0 when the sentence says that there is none, null when it says nothing.</summary>
    public int? Capo { get; init; }

    /// <summary>The sounding key.</summary>
    public Key? Key { get; init; }

    /// <summary>The strings; null when unsaid. <see cref="IsOnAllStrings"/> tells <c>on all strings</c> from silence.</summary>
    public StringSet? Strings { get; init; }

    /// <summary>Whether <c>on all strings</c> was said.</summary>
    public bool IsOnAllStrings { get; init; }

    /// <summary>The frets.</summary>
    public FretRange? Frets { get; init; }

    /// <summary>What to see, in the order said; at least one in a sentence that was parsed.</summary>
    public ValueList<Subject> Subjects { get; init; }

    /// <summary>How chords are voiced.</summary>
    public VoicingPhrase Voicing { get; init; } = VoicingPhrase.Unsaid;

    /// <summary>Whether of each chord and scale only the first shape is wanted, the lowest one that a teacher would show first; false for every shape.</summary>
    public bool IsOneShapeEach { get; init; }

    /// <summary>What stands on the marks.</summary>
    public LabelStyle? Labels { get; init; }

    /// <summary>Whether <c>with fingers</c> was said.</summary>
    public bool IsWithFingers { get; init; }

    /// <summary>The length of the player's hand in millimetres, wrist to tip of the middle finger.</summary>
    public HandSize? Hand { get; init; }

    /// <summary>Whether the pictures are for a left-handed player; false for a right-handed one, null when the sentence says nothing.</summary>
    public bool? IsLeftHanded { get; init; }

    /// <summary>Whether <c>turned over</c> was said: a right-handed instrument is held the other way round, strings and all.</summary>
    public bool IsTurnedOver { get; init; }

    /// <summary>Whether the thumb may stop a string over the edge of the neck; null when the sentence says nothing.</summary>
    public bool? UsesThumb { get; init; }

    /// <summary>The phrases of the canonical sentence, in its order.</summary>
    public ValueList<SaidPhrase> Phrases => Show.ShowPrinter.Phrases(this).ToValueList();

    /// <summary>
    /// The canonical sentence: what to see, instrument, key, strings, frets, voicing, number of shapes, labels, hand; what was left unsaid is
    /// left out. All scales of one sentence share one number of notes a string.
    /// </summary>
    public override string ToString() => Show.ShowPrinter.Print(this);
}

/// <summary>What a sentence says of the voicing; each part may be left unsaid.</summary>
/// <param name="Kind">One note per string, or strummed.</param>
/// <param name="Arrangement">Close, drop 2, drop 3, any order.</param>
/// <param name="Inversions">0 root position, 1 first inversion, to 6; ascending. Null unsaid, empty for every inversion.</param>
/// <param name="Position">First position is 1; to <see cref="LastPosition"/>.</param>
/// <param name="EasyStrings">The number of strings of <c>easy, three strings</c>.</param>
public sealed record VoicingPhrase(
    VoicingKind? Kind,
    Arrangement? Arrangement,
    ValueList<int>? Inversions,
    int? Position,
    int? EasyStrings
)
{
    /// <summary>The highest position that a sentence can name.</summary>
    public const int LastPosition = 20;

    /// <summary>Nothing said.</summary>
    public static VoicingPhrase Unsaid { get; } = new(null, null, null, null, null);
}

/// <summary>The two ways to sound a chord.</summary>
public enum VoicingKind
{
    /// <summary>Each string of the set sounds exactly one member.</summary>
    OneNotePerString,

    /// <summary>All strings that fit sound, members may be doubled, others are muted.</summary>
    Strummed,
}
