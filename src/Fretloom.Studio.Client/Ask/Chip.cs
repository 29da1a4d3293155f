using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Studio.Client.Ask;

/// <summary>A phrase as it stands in the sentence bar.</summary>
/// <param name="Kind">What it names.</param>
/// <param name="Words">What it says.</param>
/// <param name="IsSaid">Whether the teacher said it; false where it is taken for granted.</param>
public readonly record struct Chip(PhraseKind Kind, string Words, bool IsSaid)
{
    /// <summary>The phrases of a sentence, those taken for granted too, in the order of the canonical sentence.</summary>
    public static ValueList<Chip> Of(Exhibit exhibit, string said)
    {
        var kinds = ShowParser.PhrasesOf(said).Select(phrase => phrase.Kind).ToHashSet();
        return exhibit
            .Phrases.Select(phrase => new Chip(phrase.Kind, phrase.Words, kinds.Contains(phrase.Kind)))
            .ToValueList();
    }
}
