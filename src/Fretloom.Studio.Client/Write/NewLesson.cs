using System.Buffers;

namespace Fretloom.Studio.Client.Write;

/// <summary>What a new lesson says at first.</summary>
internal static class NewLesson
{
    /// <summary>The title of one that nobody gave a title.</summary>
    public const string Title = "New lesson";

    // What means something to YAML.
    private static readonly SearchValues<char> Telling = SearchValues.Create(":#'\"{}[]&*!|>%@`");

    /// <summary>Nothing but a title.</summary>
    public static string Called(string title) => $"---\ntitle: {Quoted(title)}\n---\n\n";

    /// <summary>One block.</summary>
    public static string With(string fence) => $"{Called(Title)}{fence.TrimEnd()}\n";

    private static string Quoted(string title) =>
        title.AsSpan().ContainsAny(Telling) ? "'" + title.Replace("'", "''", StringComparison.Ordinal) + "'" : title;
}
