using Fretloom.Claims;

namespace Fretloom.Lessons.Syntax;

/// <summary>A parsed claim that knows where it stands in the file.</summary>
/// <param name="Sentence">The claim.</param>
/// <param name="Offset">Where it begins, counted from 0.</param>
/// <param name="Length">How many characters it takes.</param>
public sealed record PlacedClaim(ClaimSentence Sentence, int Offset, int Length);
