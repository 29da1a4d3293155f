namespace Fretloom.Studio.Client.State;

/// <summary>Things that were worked out, kept because they may be wanted again soon.</summary>
/// <param name="comparer">Tells keys apart; null for their own equality.</param>
internal sealed class Kept<TKey, TValue>(IEqualityComparer<TKey>? comparer = null)
    where TKey : notnull
{
    // More than the choices of two pickers.
    private const int Most = 128;

    private readonly Dictionary<TKey, TValue> _known = new(comparer);
    private readonly Queue<TKey> _order = [];

    /// <summary>What belongs to a key, worked out if it is not known. When very many are known the one that is known longest is let go.</summary>
    public TValue Of(TKey key, Func<TValue> workOut)
    {
        if (!_known.TryGetValue(key, out var value))
        {
            value = workOut();
            if (_known.Count == Most)
            {
                _known.Remove(_order.Dequeue());
            }

            _known.Add(key, value);
            _order.Enqueue(key);
        }

        return value;
    }

    /// <summary>Whether what belongs to a key was worked out and is still kept.</summary>
    public bool Knows(TKey key) => _known.ContainsKey(key);

    /// <summary>Lets all go: something changed that they depend on.</summary>
    public void Clear()
    {
        _known.Clear();
        _order.Clear();
    }
}
