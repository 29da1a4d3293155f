namespace Fretloom.Studio;

/// <summary>Why the studio cannot be opened, in words for its user.</summary>
/// <param name="message">What is wrong and what to do.</param>
/// <param name="inner">What the system said; null for nothing.</param>
public sealed class StudioException(string message, Exception? inner = null) : Exception(message, inner);
