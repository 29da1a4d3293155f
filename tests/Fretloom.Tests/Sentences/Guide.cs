using Fretloom.Testing;

namespace Fretloom.Tests.Sentences;

/// <summary>The examples of a guide: sentences, some with the form they are written in, and wrong ones with their messages.</summary>
/// <param name="file">The page, in docs.</param>
/// <param name="right">The marker of blocks of sentences; a line that begins with = is the form of the one above.</param>
/// <param name="wrong">The marker of blocks of wrong sentences, each with its message below.</param>
internal sealed class Guide(string file, string right, string wrong)
{
    private readonly string[] _page = File.ReadAllLines(Repository.PathTo("docs", file));

    public IEnumerable<string> Examples => Blocks(right).Where(line => !line.StartsWith('='));

    public IEnumerable<(string, string)> Forms =>
        Pairs(Blocks(right)).Where(pair => pair.Below.StartsWith('=')).Select(pair => (pair.Line, pair.Below[2..]));

    public IEnumerable<(string, string)> Wrong =>
        Pairs(Blocks(wrong)).Where(pair => pair.Below.StartsWith("column ", StringComparison.Ordinal));

    public int WrongLines => Blocks(wrong).Count();

    private static IEnumerable<(string Line, string Below)> Pairs(IEnumerable<string> lines) =>
        lines.Zip(lines.Skip(1));

    private IEnumerable<string> Blocks(string marker)
    {
        var isInside = false;
        foreach (var line in _page)
        {
            if (line.StartsWith("```", StringComparison.Ordinal))
            {
                isInside = line == $"```{marker}";
            }
            else if (isInside && line.Length > 0)
            {
                yield return line;
            }
        }
    }
}
