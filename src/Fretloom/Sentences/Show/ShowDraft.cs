using Fretloom.Neck;
using Fretloom.Sentences.Reading;
using Fretloom.Theory;

namespace Fretloom.Sentences.Show;

/// <summary>A show sentence while it is read: what was said so far, and where.</summary>
internal sealed class ShowDraft
{
    private readonly Dictionary<PhraseKind, Token> _places = [];
    private readonly List<(PhraseKind Kind, Token Place)> _phrases = [];

    /// <summary>What was said, apart from the subjects.</summary>
    public ShowSentence Sentence { get; set; } = new();

    /// <summary>What to see, with its place. A scale stands here as shapes until the whole sentence is known.</summary>
    public List<(Subject Subject, Token Place)> Subjects { get; } = [];

    /// <summary>Notes on each string for the scales.</summary>
    public int? NotesPerString { get; set; }

    /// <summary>The numbers of the string phrase with their places.</summary>
    public List<(int Number, Token Place)> Strings { get; } = [];

    /// <summary>Where chords are called shapes, which are named as they look behind the capo; null when none are.</summary>
    public Token? Shapes { get; set; }

    /// <summary>Every spot that is given, with its place.</summary>
    public List<(Spot Spot, Token Place)> Spots { get; } = [];

    /// <summary>Every note that is given with its octave, with its place.</summary>
    public List<(Pitch Pitch, Token Place)> Pitches { get; } = [];

    /// <summary>What is said of the voicing.</summary>
    public VoicingPhrase Voicing
    {
        get => Sentence.Voicing;
        set => Sentence = Sentence with { Voicing = value };
    }

    /// <summary>Adds a subject; chords named by symbol join those just before them.</summary>
    public void Add(Subject subject, Token place)
    {
        if (subject is Subject.ChordsBySymbol more && Subjects is [.., (Subject.ChordsBySymbol chords, var first)])
        {
            Subjects[^1] = (new Subject.ChordsBySymbol([.. chords.Chords, .. more.Chords]), first);
            return;
        }

        Subjects.Add((subject, place));
    }

    /// <summary>The first phrase of a kind, as one token; null when there is none.</summary>
    public Token? PlaceOf(PhraseKind kind) => _places.TryGetValue(kind, out var place) ? place : null;

    /// <summary>The first phrase of a part; null when there is none.</summary>
    public Token? PlaceOf(ShowPhrase part)
    {
        var places = _places.Where(said => said.Key.Part == part).Select(said => said.Value).ToList();
        return places.Count == 0 ? null : places.MinBy(place => place.Start);
    }

    /// <summary>Every phrase that was read, in order.</summary>
    public IReadOnlyList<(PhraseKind Kind, Token Place)> Phrases => _phrases;

    /// <summary>Notes that a phrase was read; one that may stand only once fails the second time.</summary>
    public Failure? Note(PhraseKind kind, Token place)
    {
        _phrases.Add((kind, place));
        return _places.TryAdd(kind, place) || kind == SubjectPhrase.Kind ? null : Failure.Again(kind.Name, place);
    }
}
