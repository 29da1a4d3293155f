using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The tick of a landmark: filled for a full fret, hollow for an empty one.</summary>
internal static class LandmarkTick
{
    /// <summary>A tick whose upper edge has its middle at a point.</summary>
    public static Node At(double x, double top, Measures measures, Tone fill) =>
        new Node.Rect(
            x - measures.TickWidth / 2,
            top,
            measures.TickWidth,
            measures.TickHeight,
            fill,
            new Stroke(Tone.Ink, 0.8)
        );
}
