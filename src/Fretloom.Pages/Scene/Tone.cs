namespace Fretloom.Pages.Scene;

/// <summary>What a line or surface is for; a theme says how it looks.</summary>
public enum Tone
{
    /// <summary>Nothing is drawn.</summary>
    None,

    /// <summary>The paper.</summary>
    Paper,

    /// <summary>Writing, strings, solid marks.</summary>
    Ink,

    /// <summary>Quieter writing.</summary>
    Quiet,

    /// <summary>Fret wires and other fine lines.</summary>
    Line,

    /// <summary>The faintest lines: rules between cards, inlays.</summary>
    Rule,

    /// <summary>The edge of a thread of the key.</summary>
    ThreadEdge,

    /// <summary>The core of a thick thread of the key.</summary>
    ThreadCore,

    /// <summary>The chosen shape.</summary>
    Focus,

    /// <summary>Writing on the chosen shape.</summary>
    OnFocus,

    /// <summary>The band behind the chosen shape.</summary>
    Band,

    /// <summary>The column of a full fret.</summary>
    Full,

    /// <summary>The column of an empty fret, hatched.</summary>
    Empty,

    /// <summary>A line around what shows that a claim is false.</summary>
    Fail,
}
