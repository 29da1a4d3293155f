using System.Text.RegularExpressions;

namespace Fretloom.Studio.Client.Write;

/// <summary>Where a lesson that is much to work out can be cut: behind each block of ours that is new.</summary>
internal static partial class LessonSlices
{
    /// <summary>The lengths of the beginnings of a text that hold one new block more each.</summary>
    /// <param name="before">What is worked out already; null for nothing.</param>
    /// <param name="text">The text.</param>
    public static IReadOnlyList<int> Between(string? before, string text)
    {
        // What stands above a lesson holds for all its blocks.
        var known =
            before is not null && Front(before) == Front(text)
                ? Blocks().Matches(before).Select(block => block.Value).ToHashSet(StringComparer.Ordinal)
                : [];
        return
        [
            .. Blocks()
                .Matches(text)
                .Where(block => known.Add(block.Value))
                .Select(block => block.Index + block.Length),
        ];
    }

    /// <summary>What stands above a lesson, with the lines that fence it; empty for nothing.</summary>
    public static string Front(string text) => Above().Match(text).Value;

    /// <summary>Where the text of a lesson begins: below what stands above it, and the empty line that follows.</summary>
    public static int BodyOf(string text)
    {
        var at = Front(text).Length;
        for (var line = 0; at > 0 && line < 2 && at < text.Length && text[at] == '\n'; line++)
        {
            at++;
        }

        return at;
    }

    [GeneratedRegex(@"\A---[ \t]*\n.*?^---[ \t]*$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Above();

    [GeneratedRegex(
        @"^```(?:show|play|claim)\b.*?(?:^```[ \t]*$|\z)",
        RegexOptions.Singleline | RegexOptions.Multiline
    )]
    private static partial Regex Blocks();
}
