using System.Globalization;

namespace Fretloom.Sentences;

/// <summary>Why a sentence cannot be read, where, and what would go there.</summary>
/// <param name="Column">Where the offending words begin, counted from 1; one past the last character for the end of the sentence.</param>
/// <param name="Length">How many characters they take; 0 at the end.</param>
/// <param name="Message">What was expected or is wrong, what was found, and the <see cref="Repair"/> if there is one.</param>
public sealed record SentenceError(int Column, int Length, string Message)
{
    /// <summary>
    /// The change that the message suggests, or null. It was tried: the sentence so changed reads well, or at least as far as
    /// beyond the changed words.
    /// </summary>
    public SentenceRepair? Repair { get; init; }

    /// <summary>Column and message.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"column {Column}: {Message}");
}

/// <summary>Some characters of a sentence and what to write in their place.</summary>
/// <param name="Column">Where they begin, counted from 1.</param>
/// <param name="Length">How many there are; 0 to insert.</param>
/// <param name="Text">What to write.</param>
public sealed record SentenceRepair(int Column, int Length, string Text)
{
    /// <summary>The sentence with the change made.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sentence is shorter than the one that the change is for.</exception>
    public string ApplyTo(string sentence) => sentence.Remove(Column - 1, Length).Insert(Column - 1, Text);
}
