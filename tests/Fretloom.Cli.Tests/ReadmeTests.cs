using System.Text.RegularExpressions;
using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

/// <summary>What the README shows is what the program prints.</summary>
public partial class ReadmeTests
{
    [Fact]
    public void The_example_prints_what_stands_below_it()
    {
        var readme = File.ReadAllText(Repository.PathTo("README.md")).ReplaceLineEndings("\n");
        var example = Assert.Single(Console().Matches(readme).AsEnumerable());

        var call = Call.Fretloom("show", example.Groups["sentence"].Value);

        Assert.Equal(example.Groups["output"].Value, call.Output);
    }

    [Fact]
    public void Every_file_it_links_to_is_there()
    {
        var readme = File.ReadAllText(Repository.PathTo("README.md"));
        var links = Link().Matches(readme).Select(link => link.Groups["path"].Value).ToList();

        Assert.NotEmpty(links);
        Assert.All(links, path => Assert.True(Path.Exists(Repository.PathTo(path)), path));
    }

    [GeneratedRegex(
        """```console\n\$ ./fretloom show "(?<sentence>[^"]+)"\n(?<output>.*?)```""",
        RegexOptions.Singleline
    )]
    private static partial Regex Console();

    [GeneratedRegex(@"\]\((?!https:)(?<path>[^)]+)\)")]
    private static partial Regex Link();
}
