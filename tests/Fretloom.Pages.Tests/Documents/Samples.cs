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

    /// <summary>A lesson with wide shapes: twice for an adult hand, once for a named one, once for a child's.</summary>
    public static Lesson Wide { get; } =
        WithText(
            """
            ```show
            the chord V7, on strings 4-1, frets 0-8, in C major
            ```

            ```show
            the chords V7 I, on strings 4-1, frets 0-8, in C major
            ```

            Between.

            ```show
            the chords V7 I, on strings 4-1, frets 0-8, in C major, with fingers, for a small hand
            ```

            ```show
            the chord V7, on strings 4-1, frets 0-8, in C major, for a child's hand
            ```
            """
        );

    /// <summary>A lesson with nothing that is wide.</summary>
    public static Lesson InReach { get; } =
        WithText(
            """
            ```show
            the notes of the key and the chord I, on strings 3-1, frets 5-8, in C major, on a ukulele
            ```
            """
        );

    /// <summary>A lesson with a title and this text.</summary>
    public static Lesson WithText(string text) => Lesson.Parse("---\ntitle: T\n---\n\n" + text);
}
