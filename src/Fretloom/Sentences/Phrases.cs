using Fretloom.Sentences.Show;

namespace Fretloom.Sentences;

/// <summary>The phrases of show sentences: the one list that reading, error messages and the guide are made from.</summary>
public static class Phrases
{
    /// <summary>What to show.</summary>
    public static PhraseKind Subject => SubjectPhrase.Kind;

    /// <summary>How many notes of a scale each string has.</summary>
    public static PhraseKind NotesPerString => NotesPerStringPhrase.Kind;

    /// <summary>The instrument with its tuning.</summary>
    public static PhraseKind Instrument => InstrumentPhrase.Kind;

    /// <summary>The capo.</summary>
    public static PhraseKind Capo => CapoPhrase.Kind;

    /// <summary>The key.</summary>
    public static PhraseKind Key => KeyPhrase.Kind;

    /// <summary>The strings.</summary>
    public static PhraseKind Strings => StringsPhrase.Kind;

    /// <summary>The frets.</summary>
    public static PhraseKind Frets => FretsPhrase.Kind;

    /// <summary>The inversions of chords.</summary>
    public static PhraseKind Inversions => InversionPhrase.Kind;

    /// <summary>The position of the hand.</summary>
    public static PhraseKind Position => PositionPhrase.Kind;

    /// <summary>What stands on the marks.</summary>
    public static PhraseKind Labels => LabelsPhrases.Labels;

    /// <summary>For which hand the pictures are drawn.</summary>
    public static PhraseKind Player => HandPhrases.Player;

    /// <summary>Every kind, in the order of a canonical sentence.</summary>
    public static ValueList<PhraseKind> All { get; } =
    [
        Subject,
        NotesPerString,
        Instrument,
        Capo,
        Key,
        Strings,
        Frets,
        VoicingPhrases.Sounding,
        VoicingPhrases.Arrangement,
        Inversions,
        Position,
        VoicingPhrases.Easy,
        OneShapePhrase.Kind,
        Labels,
        LabelsPhrases.Fingers,
        HandPhrases.Hand,
        Player,
        PlayingPhrases.TurnedOver,
        PlayingPhrases.Thumb,
    ];
}
