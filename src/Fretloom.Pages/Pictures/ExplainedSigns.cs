namespace Fretloom.Pages.Pictures;

/// <summary>The signs that were explained before, so that each is explained once: where it first occurs.</summary>
internal sealed class ExplainedSigns
{
    private readonly HashSet<string> _words;
    private List<string>? _asked;

    /// <summary>Nothing is explained yet.</summary>
    public ExplainedSigns() => _words = [];

    private ExplainedSigns(ExplainedSigns other) => _words = [.. other._words];

    /// <summary>Whether a sign is still to be explained; it then counts as explained.</summary>
    /// <param name="words">What it means.</param>
    public bool Add(string words)
    {
        _asked?.Add(words);
        return _words.Add(words);
    }

    /// <summary>Counts signs as explained.</summary>
    public void AddAll(IEnumerable<string> words) => _words.UnionWith(words);

    /// <summary>The same, to be changed by itself.</summary>
    public ExplainedSigns Copy() => new(this);

    /// <summary>Draws, and notes which signs were asked for.</summary>
    /// <param name="draw">Draws with these signs.</param>
    /// <param name="asked">The words of the signs that were asked for, in order.</param>
    public T Watch<T>(Func<T> draw, out IReadOnlyList<string> asked)
    {
        var list = new List<string>();
        _asked = list;
        var drawn = draw();
        (_asked, asked) = (null, list);
        return drawn;
    }

    /// <summary>Which of some signs were explained: for each in order <c>x</c> if it was, else <c>-</c>.</summary>
    public string StateOf(IEnumerable<string> words) =>
        string.Concat(words.Select(word => _words.Contains(word) ? 'x' : '-'));
}
