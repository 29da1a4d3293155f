using System.Text.Json;
using System.Text.RegularExpressions;
using Fretloom.Testing;

namespace Fretloom.Architecture.Tests;

/// <summary>THIRD-PARTY.md names every package: all that are shipped, and those that tests ask for themselves.</summary>
public partial class ThirdPartyTests
{
    private static readonly HashSet<string> Named =
    [
        .. PackageName().Matches(File.ReadAllText(Repository.PathTo("THIRD-PARTY.md"))).Select(match => match.Value),
    ];

    [Fact]
    public void Every_shipped_package_is_named() => Assert.Empty(Packages("src", direct: false).Except(Named));

    [Fact]
    public void Every_package_of_the_tests_and_benchmarks_is_named() =>
        Assert.Empty(Packages("tests", direct: true).Concat(Packages("bench", direct: true)).Except(Named));

    [Theory]
    [InlineData("assets")]
    [InlineData("tests/oracles")]
    [InlineData("src/Fretloom.Studio.Client/Write/editor")]
    public void Every_npm_package_is_named(string folder)
    {
        using var list = JsonDocument.Parse(File.ReadAllText(Repository.PathTo(folder, "package.json")));

        var names = list.RootElement.GetProperty("dependencies").EnumerateObject().Select(package => package.Name);

        Assert.Empty(names.Except(Named));
    }

    private static IEnumerable<string> Packages(string folder, bool direct) =>
        from project in Directory.GetDirectories(Repository.PathTo(folder))
        let file = Path.Combine(project, "packages.lock.json")
        where File.Exists(file)
        from framework in Parse(file).GetProperty("dependencies").EnumerateObject()
        from package in framework.Value.EnumerateObject()
        let kind = package.Value.GetProperty("type").GetString()
        where direct ? kind == "Direct" : kind != "Project"
        select package.Name;

    private static JsonElement Parse(string file) => JsonDocument.Parse(File.ReadAllText(file)).RootElement;

    [GeneratedRegex(@"[@\w][\w.@/-]*\w")]
    private static partial Regex PackageName();
}
