using Fretloom.Sentences.Reading;
using Fretloom.Sentences.Show;

namespace Fretloom.Sentences;

/// <summary>A kind of phrase that a show sentence may hold.</summary>
public sealed class PhraseKind
{
    internal PhraseKind(
        string name,
        ShowPhrase part,
        Func<Cursor, bool> begins,
        Func<Cursor, ShowDraft, Failure?> read,
        params ReadOnlySpan<string> examples
    ) => (Name, Part, Begins, Read, Examples) = (name, part, begins, read, ValueList.Create(examples));

    /// <summary>What it names, with the article: <c>the key</c>, <c>the strings</c>.</summary>
    public string Name { get; }

    /// <summary>The part of the sentence that it belongs to; several kinds may share one.</summary>
    public ShowPhrase Part { get; }

    /// <summary>Phrases of this kind, as they stand between commas.</summary>
    public ValueList<string> Examples { get; }

    /// <summary>Whether a phrase of this kind begins here.</summary>
    internal Func<Cursor, bool> Begins { get; }

    /// <summary>Reads the phrase that begins here into the sentence; null when it reads well.</summary>
    internal Func<Cursor, ShowDraft, Failure?> Read { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
