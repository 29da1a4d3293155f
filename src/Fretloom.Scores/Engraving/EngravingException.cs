namespace Fretloom.Scores.Engraving;

/// <summary>The engraver could not be started, crashed, or could not read a score.</summary>
public sealed class EngravingException : Exception
{
    /// <summary>Says nothing more.</summary>
    public EngravingException() { }

    /// <summary>Says what is wrong, in words that end a sentence, without its stop.</summary>
    public EngravingException(string message)
        : base(message) { }

    /// <summary>Says what is wrong, and what it came from.</summary>
    public EngravingException(string message, Exception? cause)
        : base(message, cause) { }
}
