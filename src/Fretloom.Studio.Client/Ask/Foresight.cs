using Fretloom.Exhibits;
using Fretloom.Sentences;
using Fretloom.Studio.Client.State;

namespace Fretloom.Studio.Client.Ask;

/// <summary>What the choices of pickers come to. A list takes time to read: in that time it is made ready, so that a pick is seen at once.</summary>
internal sealed class Foresight(State.Studio studio)
{
    private readonly Kept<(string Sentence, PhraseKind Kind, string Words), string> _sentences = new();
    private readonly Kept<(Exhibit Exhibit, string Said), ValueList<Chip>> _chips = new(new SameExhibit());
    private ShowDefaults _defaults = ShowDefaults.Standard;

    /// <summary>The sentence that is seen, with a phrase said, said otherwise or, where it has no words, left unsaid.</summary>
    public string Said(PhraseKind kind, string words)
    {
        if (studio.Defaults != _defaults)
        {
            _sentences.Clear();
            _defaults = studio.Defaults;
        }

        return _sentences.Of(
            (studio.ReadText, kind, words),
            () => SentenceEdit.With(studio.Said.ToString(), kind, words, studio.Answer)
        );
    }

    /// <summary>The phrases of a sentence as they stand in the bar.</summary>
    public ValueList<Chip> Chips(Exhibit exhibit, string said) =>
        _chips.Of((exhibit, said), () => Chip.Of(exhibit, said));

    /// <summary>Makes ready what would be seen.</summary>
    public void Foresee(PhraseKind kind, string words)
    {
        var said = Said(kind, words);
        if (studio.Foresee(said) is { } exhibit)
        {
            Chips(exhibit, said);
        }
    }

    private sealed class SameExhibit : IEqualityComparer<(Exhibit Exhibit, string Said)>
    {
        public bool Equals((Exhibit Exhibit, string Said) one, (Exhibit Exhibit, string Said) other) =>
            ReferenceEquals(one.Exhibit, other.Exhibit) && one.Said == other.Said;

        public int GetHashCode((Exhibit Exhibit, string Said) key) => key.Said.GetHashCode(StringComparison.Ordinal);
    }
}
