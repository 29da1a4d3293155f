using Fretloom.Lessons.Syntax;

namespace Fretloom.Lessons;

/// <summary>The fixed words of a lesson file, for whoever helps to write one.</summary>
public static class LessonWords
{
    /// <summary>The words before the colons above a lesson, in the order they are usually written.</summary>
    public static ValueList<string> FrontMatter { get; } = [.. FrontMatterReader.Known];

    /// <summary>The options of each kind of block, by the first word after its fence.</summary>
    public static IReadOnlyDictionary<string, ValueList<string>> Options { get; } =
        new Dictionary<string, ValueList<string>>
        {
            ["show"] = [.. FigureOptions.Names],
            ["claim"] = [.. ClaimOptions.Names],
            ["play"] = [.. ExerciseOptions.Names],
        };
}
