namespace Fretloom.Exercises;

/// <summary>How notes end.</summary>
public enum Touching
{
    /// <summary>Each at the end of its length.</summary>
    Plain,

    /// <summary>Each rings on until its string is needed again or the chord changes: <c>sustained</c>.</summary>
    Sustained,

    /// <summary>Each stops halfway: <c>short</c>.</summary>
    Short,
}
