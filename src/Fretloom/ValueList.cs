using System.Collections;
using System.Runtime.CompilerServices;

namespace Fretloom;

/// <summary>An unchangeable list that is equal to another when both hold equal items in the same order.</summary>
/// <remarks>The <c>default</c> value is the empty list. Indexes count from 0.</remarks>
/// <typeparam name="T">What the list holds.</typeparam>
[CollectionBuilder(typeof(ValueList), nameof(ValueList.Create))]
public readonly struct ValueList<T> : IReadOnlyList<T>, IEquatable<ValueList<T>>
{
    private readonly T[]? _items;

    internal ValueList(T[] items) => _items = items;

    private T[] Items => _items ?? [];

    /// <summary>How many items there are.</summary>
    public int Count => Items.Length;

    /// <summary>The item at <paramref name="index"/>, counted from 0.</summary>
    /// <exception cref="IndexOutOfRangeException">There is no such item.</exception>
    public T this[int index] => Items[index];

    /// <summary>Where the first item equal to <paramref name="item"/> stands; -1 when there is none.</summary>
    public int IndexOf(T item) => Array.IndexOf(Items, item);

    /// <summary>The items as a span, in order.</summary>
    public ReadOnlySpan<T> AsSpan() => Items;

    /// <inheritdoc/>
    public bool Equals(ValueList<T> other) => Items.AsSpan().SequenceEqual(other.Items);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is ValueList<T> other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var item in Items)
        {
            hash.Add(item);
        }

        return hash.ToHashCode();
    }

    /// <summary>Whether two lists hold equal items in the same order.</summary>
    public static bool operator ==(ValueList<T> left, ValueList<T> right) => left.Equals(right);

    /// <summary>Whether two lists differ.</summary>
    public static bool operator !=(ValueList<T> left, ValueList<T> right) => !left.Equals(right);

    /// <inheritdoc/>
    public IEnumerator<T> GetEnumerator() => ((IEnumerable<T>)Items).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>The items, separated by a comma and a space.</summary>
    public override string ToString() => string.Join(", ", Items);
}

/// <summary>Makes a <see cref="ValueList{T}"/>.</summary>
public static class ValueList
{
    /// <summary>A list of the items given, in their order.</summary>
    public static ValueList<T> Create<T>(ReadOnlySpan<T> items) => new(items.ToArray());

    /// <summary>A list of the items of a sequence, in its order.</summary>
    public static ValueList<T> ToValueList<T>(this IEnumerable<T> items) => new([.. items]);
}
