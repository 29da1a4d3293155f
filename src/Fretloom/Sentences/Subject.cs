using Fretloom.Theory;

namespace Fretloom.Sentences;

/// <summary>What a show sentence asks to see.</summary>
public abstract record Subject
{
    private Subject() { }

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
    public sealed record ChordsOfTheKey(KeyChords Chords) : Subject;

    /// <summary><c>the chord V7</c>, <c>the chords I vi ii V7</c>.</summary>
    public sealed record ChordsByNumeral(ValueList<RomanNumeral> Numerals) : Subject;

    /// <summary><c>Bm7b5 and E7</c>.</summary>
    public sealed record ChordsBySymbol(ValueList<Chord> Chords) : Subject;

    /// <summary><c>the scale, 3 notes a string</c> (of the key, or a named scale); without a count, in the position of the sentence.</summary>
    /// <param name="Scale">The scale, or null for that of the key.</param>
    /// <param name="NotesPerString">2 to 6, or null when a position is named instead.</param>
    public sealed record ScaleShapes(Scale? Scale, int? NotesPerString) : Subject;

    /// <summary><c>the symmetries</c>.</summary>
    public sealed record TheSymmetries : Subject;
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
