using Fretloom.Lessons.Syntax;

namespace Fretloom.Lessons.Tests;

/// <summary>Short ways to write lessons and to look at what was read.</summary>
internal static class Lessons
{
    /// <summary>A lesson with a title and this text, which begins on line 4.</summary>
    public static Lesson WithText(string text) => Lesson.Parse("---\ntitle: T\n---\n" + text);

    /// <summary>A lesson with this front matter, which begins on line 2.</summary>
    public static Lesson WithFront(string lines) => Lesson.Parse($"---\n{lines}\n---\n");

    /// <summary>What was found, one finding a line, as the command line prints it.</summary>
    public static string Found(this Lesson lesson) => string.Join('\n', lesson.Diagnostics);

    /// <summary>The only block of a kind, wherever it stands.</summary>
    public static T Single<T>(this Lesson lesson)
        where T : Block => Assert.Single(All(lesson.Blocks).OfType<T>());

    /// <summary>Every block, those in lists and quotes too.</summary>
    public static IEnumerable<Block> All(IEnumerable<Block> blocks) =>
        blocks.SelectMany(block =>
            block switch
            {
                Block.Quote quote => All(quote.Content).Prepend(block),
                Block.Listing list => list.Entries.SelectMany(entry => All(entry)).Prepend(block),
                _ => [block],
            }
        );
}
