using Fretloom.Exercises;

namespace Fretloom.Scores.Engraving;

/// <summary>Engraves exercises: a notation staff with fingers, under it the tablature.</summary>
public interface IEngraver
{
    /// <summary>Engraves one pass of an exercise.</summary>
    /// <param name="exercise">What is engraved.</param>
    /// <param name="widthMm">The width of a system; at least <see cref="EngravedPage.LeastWidthMm"/>.</param>
    /// <returns>The systems or, where it cannot be engraved, plain-text tablature with a warning; also while it is still being engraved.</returns>
    EngravedExercise Engrave(Exercise exercise, double widthMm);
}

/// <summary>A program that sets scores: Verovio, wherever it runs.</summary>
public interface IEngravingEngine
{
    /// <summary>Sets a score.</summary>
    /// <param name="score">The score, in MEI.</param>
    /// <param name="options">Verovio's options, as JSON.</param>
    /// <returns>An SVG picture for each page.</returns>
    /// <exception cref="EngravingException">The score cannot be read, or the engine has crashed.</exception>
    Task<string[]> EngraveAsync(string score, string options);
}
