namespace Fretloom.Pages.Scene;

/// <summary>How a line is broken.</summary>
public enum Dash
{
    /// <summary>Unbroken.</summary>
    Solid,

    /// <summary>Even dashes, as of a running stitch.</summary>
    Stitch,

    /// <summary>Long and short by turns, as of an axis.</summary>
    Axis,
}

/// <summary>The line around or along something.</summary>
/// <param name="Tone">What it is for.</param>
/// <param name="Width">Its width in points.</param>
/// <param name="Dash">How it is broken.</param>
/// <param name="IsRound">Whether its ends and corners are round.</param>
public readonly record struct Stroke(Tone Tone, double Width, Dash Dash = Dash.Solid, bool IsRound = false);
