using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Sentences;

/// <summary>What a show sentence asks to see.</summary>
public abstract record Subject
{
    private Subject() { }

    /// <summary>Whether it is chords, of the key or named.</summary>
    internal bool IsChords => this is ChordsOfTheKey or ChordsByNumeral or ChordsBySymbol;

    /// <summary>Whether it is a scale that may be laid out with so many notes a string, or in a position.</summary>
    internal bool IsLaidOut => this is ScaleShapes or TheChromaticScale;

    /// <summary>Whether it is single notes in an order of their own.</summary>
    internal bool IsInOrderGiven => this is GivenSpots or GivenNotes or TheOpenStrings;

    /// <summary>Whether it is a scale.</summary>
    internal bool IsScale => this is NotesOfTheKey or NotesOfScale or ScaleShapes or TheChromaticScale;

    /// <summary>The number of notes on each string; null when it is no scale or has none.</summary>
    internal int? NotesAString =>
        this switch
        {
            ScaleShapes scale => scale.NotesPerString,
            TheChromaticScale chromatic => chromatic.NotesPerString,
            _ => null,
        };

    /// <summary>The subject as it stands in a sentence, without the number of notes a string.</summary>
    public sealed override string ToString() => Show.SubjectPrinter.Print(this, isFirst: true);

    /// <summary><c>the notes of the key</c>.</summary>
    public sealed record NotesOfTheKey : Subject;

    /// <summary><c>A minor pentatonic</c>, <c>the A blues scale</c>: every spot of a scale.</summary>
    public sealed record NotesOfScale(Scale Scale) : Subject;

    /// <summary><c>every D</c>.</summary>
    public sealed record EveryNote(NoteName Name) : Subject;

    /// <summary><c>the landmarks</c>.</summary>
    public sealed record TheLandmarks : Subject;

    /// <summary><c>the thirds</c>.</summary>
    public sealed record TheThirds : Subject;

    /// <summary><c>the triads</c>, <c>the sixth chords</c>, <c>the seventh chords</c>, <c>the ninth chords</c> of the key.</summary>
    /// <param name="Chords">Which of them.</param>
    /// <param name="Range">From which degree up to which; null for all seven, from 1 on.</param>
    public sealed record ChordsOfTheKey(KeyChords Chords, DegreeRange? Range = null) : Subject;

    /// <summary><c>the chord V7</c>, <c>the chords I vi ii V7</c>.</summary>
    public sealed record ChordsByNumeral(ValueList<RomanNumeral> Numerals) : Subject;

    /// <summary><c>Bm7b5 and E7</c>.</summary>
    public sealed record ChordsBySymbol(ValueList<Chord> Chords) : Subject;

    /// <summary><c>the scale, 3 notes a string</c> (of the key, or a named scale); without a count, in the position of the sentence.</summary>
    /// <param name="Scale">The scale, or null for that of the key.</param>
    /// <param name="NotesPerString">2 to 6, or null when a position is named instead.</param>
    public sealed record ScaleShapes(Scale? Scale, int? NotesPerString) : Subject;

    /// <summary><c>the chromatic scale</c>, on the tonic of the key.</summary>
    /// <param name="NotesPerString">2 to 6, or null.</param>
    public sealed record TheChromaticScale(int? NotesPerString) : Subject;

    /// <summary><c>the notes C D E</c>, <c>the notes C4 D4 E4</c>.</summary>
    /// <param name="Notes">At least one, in the order said; a note may come again.</param>
    public sealed record GivenNotes(ValueList<GivenNote> Notes) : Subject;

    /// <summary><c>the spots 5:3 4:2 3:0</c>.</summary>
    /// <param name="Spots">At least one, in the order said; a spot may come again.</param>
    public sealed record GivenSpots(ValueList<Spot> Spots) : Subject;

    /// <summary><c>the open strings</c>.</summary>
    public sealed record TheOpenStrings : Subject;

    /// <summary><c>the symmetries</c>.</summary>
    public sealed record TheSymmetries : Subject;
}

/// <summary>A note that is named, with its octave or in any: <c>C</c>, <c>Bb3</c>.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Octave">Its octave, -20 to 20, 4 from middle C on; null when unsaid.</param>
public readonly record struct GivenNote(NoteName Name, int? Octave)
{
    /// <summary>What sounds; null when the octave is unsaid.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The octave is outside -20 to 20.</exception>
    public Pitch? Pitch => Octave is { } octave ? new Pitch(Name, octave) : null;

    /// <summary>Name and octave.</summary>
    public override string ToString() => Pitch?.ToString() ?? Name.ToString();
}

/// <summary>The chords built on every degree of a key.</summary>
public enum KeyChords
{
    /// <summary>Three notes.</summary>
    Triads,

    /// <summary>The triads with the key's sixth above each root.</summary>
    SixthChords,

    /// <summary>Four notes in thirds.</summary>
    SeventhChords,

    /// <summary>Five notes in thirds.</summary>
    NinthChords,
}

/// <summary>Degrees of a key from one up to another: <c>from I to IV</c>; past 7 they go on from 1.</summary>
public sealed record DegreeRange
{
    /// <summary>Names both ends.</summary>
    /// <param name="from">1 to 7.</param>
    /// <param name="to">1 to 7; lower than the first when degree 7 is passed.</param>
    /// <exception cref="ArgumentOutOfRangeException">A key has degrees 1 to 7.</exception>
    public DegreeRange(int from, int to) => (From, To) = (Checked(from), Checked(to));

    /// <summary>The first, 1 to 7.</summary>
    public int From { get; }

    /// <summary>The last, 1 to 7.</summary>
    public int To { get; }

    /// <summary>Every degree in order, from 1 to 7 of them.</summary>
    public IEnumerable<int> Degrees =>
        Enumerable.Range(From, (To - From + 7) % 7 + 1).Select(number => (number - 1) % 7 + 1);

    private static int Checked(int degree)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degree, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(degree, 7);
        return degree;
    }
}
