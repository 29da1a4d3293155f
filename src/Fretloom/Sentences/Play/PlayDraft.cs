using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences.Play;

/// <summary>A play sentence while it is read: what was said so far, and where.</summary>
internal sealed class PlayDraft
{
    private readonly Dictionary<PlayPhraseKind, Token> _places = [];

    /// <summary>What was said in the phrases of play sentences.</summary>
    public PlaySentence Sentence { get; set; } = new();

    /// <summary>What was said in phrases that show sentences have too.</summary>
    public ShowDraft Material { get; } = new();

    /// <summary>Where a part stands; null when it was not said.</summary>
    public Token? PlaceOf(PlayPhrase part)
    {
        foreach (var (kind, place) in _places)
        {
            if (kind.Part == part)
            {
                return place;
            }
        }

        return null;
    }

    /// <summary>Notes that a phrase was read; the second one of its kind fails.</summary>
    public Failure? Note(PlayPhraseKind kind, Token place) =>
        _places.TryAdd(kind, place) ? null : Failure.Again(kind.Name, place);
}
