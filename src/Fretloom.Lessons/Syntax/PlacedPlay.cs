using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Lessons.Syntax;

/// <summary>A parsed play sentence that knows where its phrases stand in the file.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="OffsetOf">
/// The place in the file, counted from 0, of the phrase that an error is about; the beginning of the sentence when it does not hold the phrase.
/// </param>
public sealed record PlacedPlay(PlaySentence Sentence, Func<PlayError?, int> OffsetOf);
