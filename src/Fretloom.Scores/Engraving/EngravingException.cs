namespace Fretloom.Scores.Engraving;

/// <summary>The engraver could not be started, crashed, or could not read a score.</summary>
internal sealed class EngravingException(string message, Exception? cause = null) : Exception(message, cause);
