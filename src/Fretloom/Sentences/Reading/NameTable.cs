namespace Fretloom.Sentences.Reading;

/// <summary>Things with names of several words, of which a sentence may hold the longest that fits.</summary>
/// <remarks>Case does not count, and hyphens are spaces.</remarks>
internal sealed class NameTable<T>
    where T : class
{
    private readonly Dictionary<string, T> _things = new(StringComparer.OrdinalIgnoreCase);
    private readonly int _mostWords;

    public NameTable(IEnumerable<(string Name, T Thing)> things)
    {
        foreach (var (name, thing) in things)
        {
            _things.TryAdd(Plain(name), thing);
            _mostWords = Math.Max(_mostWords, Plain(name).Count(sign => sign == ' ') + 1);
        }
    }

    /// <summary>The thing whose name stands some tokens ahead, and how many tokens the name takes; null and 0 when there is none.</summary>
    public (T? Thing, int Count) At(Cursor at, int ahead)
    {
        for (var count = _mostWords; count > 0; count--)
        {
            if (_things.TryGetValue(Plain(at.Words(ahead, count)), out var thing))
            {
                return (thing, count);
            }
        }

        return (null, 0);
    }

    private static string Plain(string name) => name.Replace('-', ' ');
}
