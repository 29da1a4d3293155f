using Fretloom.Sentences.Show;

namespace Fretloom.Sentences;

/// <summary>The phrases of show sentences: the one list that reading, error messages and the guide are made from.</summary>
public static class Phrases
{
    /// <summary>Every kind, in the order of a canonical sentence.</summary>
    public static ValueList<PhraseKind> All { get; } =
    [
        SubjectPhrase.Kind,
        NotesPerStringPhrase.Kind,
        InstrumentPhrase.Kind,
        CapoPhrase.Kind,
        KeyPhrase.Kind,
        StringsPhrase.Kind,
        FretsPhrase.Kind,
        VoicingPhrases.Sounding,
        VoicingPhrases.Arrangement,
        InversionPhrase.Kind,
        PositionPhrase.Kind,
        VoicingPhrases.Easy,
        OneShapePhrase.Kind,
        LabelsPhrases.Labels,
        LabelsPhrases.Fingers,
        HandPhrases.Hand,
        HandPhrases.Player,
        PlayingPhrases.TurnedOver,
        PlayingPhrases.Thumb,
    ];
}
