using Fretloom.Sentences.Play;

namespace Fretloom.Sentences;

/// <summary>The phrases of play sentences that are not those of <see cref="Phrases"/>: the one list that reading, error messages and the guide are made from.</summary>
public static class PlayPhrases
{
    /// <summary>Every kind, in the order of a canonical sentence.</summary>
    public static ValueList<PlayPhraseKind> All { get; } =
    [
        OctavesPhrase.Kind,
        SoundingPhrase.Kind,
        StrumPhrase.Kind,
        DirectionPhrase.Kind,
        GroupingPhrase.Kind,
        ThroughPhrase.Kind,
        EveryKeyPhrase.Kind,
        ValuePhrase.Kind,
        MetrePhrase.Kind,
        TempoPhrase.Kind,
        TimesPhrase.Kind,
        CountInPhrase.Kind,
        ClickPhrase.Kind,
        TouchPhrase.Kind,
        PickingPhrase.Kind,
        EchoPhrase.Kind,
        TuningPhrase.Kind,
    ];
}
