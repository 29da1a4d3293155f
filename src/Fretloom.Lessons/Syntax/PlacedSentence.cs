using Fretloom.Sentences;

namespace Fretloom.Lessons.Syntax;

/// <summary>A parsed sentence that knows where its phrases stand in the file.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="OffsetOf">
/// The place in the file, counted from 0, where a phrase begins; the beginning of the sentence when it does not hold the phrase.
/// </param>
public sealed record PlacedSentence(ShowSentence Sentence, Func<ShowPhrase, int> OffsetOf);
