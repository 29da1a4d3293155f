namespace Fretloom.Studio.Client.State;

/// <summary>Things that were worked out, kept because they may be wanted again soon.</summary>
/// <param name="comparer">Tells keys apart; null for their own equality.</param>
internal sealed class Kept<TKey, TValue>(IEqualityComparer<TKey>? comparer = null)
    where TKey : notnull
{
    // Somewhat more than the longest list of a picker.
    private const int Most = 64;

    private readonly Dictionary<TKey, TValue> _known = new(comparer);

    /// <summary>What belongs to a key, worked out if it is not known. When very many are known all are let go first.</summary>
    public TValue Of(TKey key, Func<TValue> workOut)
    {
        if (!_known.TryGetValue(key, out var value))
        {
            value = workOut();
            if (_known.Count == Most)
            {
                _known.Clear();
            }

            _known[key] = value;
        }

        return value;
    }

    /// <summary>Lets all go: something changed that they depend on.</summary>
    public void Clear() => _known.Clear();
}
