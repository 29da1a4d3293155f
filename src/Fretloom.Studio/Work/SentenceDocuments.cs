namespace Fretloom.Studio.Work;

/// <summary>What pictures to draw.</summary>
/// <param name="Sentence">A show sentence.</param>
/// <param name="Format"><c>svg</c> or <c>png</c>.</param>
/// <param name="Ground">What lies behind: <c>paper</c> or <c>none</c>; null for paper.</param>
internal sealed record PictureRequest(string Sentence, string Format, string? Ground = null);

/// <summary>What sheet to print.</summary>
/// <param name="Sentence">A show or play sentence.</param>
/// <param name="Paper"><c>a4</c> or <c>letter</c>; null for A4.</param>
/// <param name="LargePrint">Whether it is set in 18 point.</param>
internal sealed record PrintRequest(string Sentence, string? Paper = null, bool LargePrint = false);

/// <summary>What exercise to write.</summary>
/// <param name="Sentence">A play sentence.</param>
/// <param name="Format"><c>musicxml</c>, <c>mxl</c>, <c>mid</c>, <c>wav</c>, <c>svg</c>, <c>pdf</c> or <c>txt</c>.</param>
internal sealed record ExerciseRequest(string Sentence, string Format);
