using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Claims;

/// <summary>A sentence that speaks of many keys, places or both, as it was said.</summary>
/// <param name="Keys">The keys it speaks of.</param>
/// <param name="Places">Where: an instrument's strings, or a list of string sets or tunings.</param>
/// <param name="Window">The frets looked at, on a neck that ends; null for the endless neck, whose frets are classes of twelve.</param>
/// <param name="Claim">What it says.</param>
public sealed record ClaimSentence(KeyScope Keys, PlaceScope Places, FretRange? Window, Claim Claim)
{
    /// <summary>The canonical sentence; parsing it gives an equal one.</summary>
    public override string ToString() => ClaimPrinter.Print(this);
}
