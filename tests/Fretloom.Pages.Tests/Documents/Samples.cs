using Fretloom.Lessons;
using Fretloom.Testing;

namespace Fretloom.Pages.Tests.Documents;

/// <summary>Lessons that tests set.</summary>
internal static class Samples
{
    /// <summary>A file with one of everything that a lesson may hold.</summary>
    public static string EveryConstructPath { get; } =
        Repository.PathTo("tests", "Fretloom.Pages.Tests", "Documents", "every-construct.md");

    /// <summary>That lesson.</summary>
    public static Lesson EveryConstruct { get; } = Lesson.Load(EveryConstructPath);

    /// <summary>A lesson with a title and this text.</summary>
    public static Lesson WithText(string text) => Lesson.Parse("---\ntitle: T\n---\n\n" + text);
}
