using Fretloom.Sentences.Play;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences;

/// <summary>A kind of phrase that a play sentence may hold beside those of show sentences.</summary>
public sealed class PlayPhraseKind
{
    internal PlayPhraseKind(
        string name,
        PlayPhrase part,
        Func<Cursor, bool> begins,
        Func<Cursor, PlayDraft, Failure?> read,
        params ReadOnlySpan<string> examples
    ) => (Name, Part, Begins, Read, Examples) = (name, part, begins, read, ValueList.Create(examples));

    /// <summary>What it names, with the article: <c>the tempo</c>.</summary>
    public string Name { get; }

    /// <summary>The part of the sentence that it is.</summary>
    public PlayPhrase Part { get; }

    /// <summary>Phrases of this kind, as they stand between commas.</summary>
    public ValueList<string> Examples { get; }

    /// <summary>Whether a phrase of this kind begins here.</summary>
    internal Func<Cursor, bool> Begins { get; }

    /// <summary>Reads the phrase that begins here into the sentence; null when it reads well.</summary>
    internal Func<Cursor, PlayDraft, Failure?> Read { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
