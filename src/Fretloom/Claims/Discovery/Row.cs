using System.Numerics;

namespace Fretloom.Claims.Discovery;

/// <summary>Yes or no for every case tried: kind of key by kind of key, string set by string set.</summary>
/// <remarks>Each kind begins a new word of 64 bits, so that kinds can be looked at alone. Equal when all bits are.</remarks>
internal sealed class Row : IEquatable<Row>
{
    private readonly ulong[] _words;

    /// <summary>Makes a row of no.</summary>
    /// <param name="kinds">How many kinds of key.</param>
    /// <param name="places">How many string sets.</param>
    public Row(int kinds, int places)
    {
        (Kinds, Places, WordsInKind) = (kinds, places, (places + 63) / 64);
        _words = new ulong[kinds * WordsInKind];
    }

    private Row(Row like, ulong[] words) =>
        (Kinds, Places, WordsInKind, _words) = (like.Kinds, like.Places, like.WordsInKind, words);

    public int Kinds { get; }

    public int Places { get; }

    private int WordsInKind { get; }

    public bool this[int kind, int place]
    {
        get => (_words[kind * WordsInKind + place / 64] >> place % 64 & 1) != 0;
        set
        {
            var bit = 1ul << place % 64;
            ref var word = ref _words[kind * WordsInKind + place / 64];
            word = value ? word | bit : word & ~bit;
        }
    }

    public bool IsAny => _words.AsSpan().ContainsAnyExcept(0ul);

    /// <summary>How often yes stands.</summary>
    public int Total => _words.Sum(BitOperations.PopCount);

    /// <summary>Writes a row of one kind into a kind of this one.</summary>
    public void CopyInto(int kind, Row places) => places._words.CopyTo(_words, kind * WordsInKind);

    public Row And(Row other) => new(this, [.. _words.Zip(other._words, (a, b) => a & b)]);

    /// <summary>Whether every yes of this row is one of the other.</summary>
    public bool IsWithin(Row other)
    {
        for (var at = 0; at < _words.Length; at++)
        {
            if ((_words[at] & ~other._words[at]) != 0)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a kind has a yes in common with some string sets.</summary>
    /// <param name="kind">The kind's index.</param>
    /// <param name="places">String sets, as a row of one kind.</param>
    public bool Meets(int kind, Row places)
    {
        for (var at = 0; at < WordsInKind; at++)
        {
            if ((_words[kind * WordsInKind + at] & places._words[at]) != 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>How often yes stands in all kinds, and how often among some string sets.</summary>
    /// <param name="places">String sets, as a row of one kind.</param>
    public (int All, int Among) Count(Row places)
    {
        var (all, among) = (0, 0);
        for (var at = 0; at < _words.Length; at++)
        {
            all += BitOperations.PopCount(_words[at]);
            among += BitOperations.PopCount(_words[at] & places._words[at % WordsInKind]);
        }

        return (all, among);
    }

    public Row Or(Row other) => new(this, [.. _words.Zip(other._words, (a, b) => a | b)]);

    public Row Without(Row other) => new(this, [.. _words.Zip(other._words, (a, b) => a & ~b)]);

    /// <summary>Whether some kind says yes to some string sets and not to others.</summary>
    public bool DependsOnPlace
    {
        get
        {
            for (var kind = 0; kind < Kinds; kind++)
            {
                var yes = 0;
                foreach (var word in _words.AsSpan(kind * WordsInKind, WordsInKind))
                {
                    yes += BitOperations.PopCount(word);
                }

                if (yes > 0 && yes < Places)
                {
                    return true;
                }
            }

            return false;
        }
    }

    public bool Equals(Row? other) => other is not null && _words.AsSpan().SequenceEqual(other._words);

    public override bool Equals(object? obj) => Equals(obj as Row);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var word in _words)
        {
            hash.Add(word);
        }

        return hash.ToHashCode();
    }
}
