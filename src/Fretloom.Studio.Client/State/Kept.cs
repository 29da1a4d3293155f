namespace Fretloom.Studio.Client.State;

/// <summary>Things that were worked out, kept because they may be wanted again soon.</summary>
/// <param name="comparer">Tells keys apart; null for their own equality.</param>
/// <param name="most">How many are kept, at least 1; as a rule more than the choices of two pickers.</param>
internal sealed class Kept<TKey, TValue>(IEqualityComparer<TKey>? comparer = null, int most = 128)
    where TKey : notnull
{
    private readonly Dictionary<TKey, TValue> _known = new(comparer);
    private readonly Queue<TKey> _order = [];

    /// <summary>What belongs to a key, worked out if it is not known. When very many are known the one that is known longest is let go.</summary>
    public TValue Of(TKey key, Func<TValue> workOut)
    {
        if (!_known.TryGetValue(key, out var value))
        {
            value = workOut();
            if (_known.Count == most)
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
