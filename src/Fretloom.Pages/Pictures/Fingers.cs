using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Pages.Pictures;

/// <summary>Fingers as they are printed.</summary>
internal static class Fingers
{
    /// <summary>A finger in a sentence: <c>finger 4</c>, <c>thumb</c>.</summary>
    /// <param name="text">The finger as printed, not empty.</param>
    public static string Words(string text) => text == "T" ? "thumb" : $"finger {text}";

    /// <summary>The same after a place: <c> finger 4</c>; empty without a finger.</summary>
    public static string After(string text) => text.Length == 0 ? "" : " " + Words(text);

    /// <summary>Whether fingers stand beside the marks, which keep their labels.</summary>
    public static bool HasFingersBeside(this Exhibit exhibit) =>
        exhibit.ShowsFingers && exhibit.Labels != LabelStyle.Fingers;

    /// <summary>Whether fingers stand inside the marks, and open strings are hollow ones.</summary>
    public static bool HasFingersInside(this Exhibit exhibit) => exhibit.Labels == LabelStyle.Fingers;
}
