using System.Diagnostics.CodeAnalysis;

namespace Fretloom.Sentences;

/// <summary>What a text says, or why it cannot be read.</summary>
/// <typeparam name="T">What is read.</typeparam>
public sealed class SentenceResult<T>
    where T : notnull
{
    private SentenceResult(T? value, ValueList<SentenceError> errors) => (Value, Errors) = (value, errors);

    /// <summary>What was read; the default when there are <see cref="Errors"/>.</summary>
    public T? Value { get; }

    /// <summary>What is wrong, in reading order; empty when there is a <see cref="Value"/>.</summary>
    public ValueList<SentenceError> Errors { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsRead => Errors.Count == 0;

    internal static SentenceResult<T> Read(T value) => new(value, []);

    internal static SentenceResult<T> Wrong(SentenceError error) => new(default, [error]);
}
