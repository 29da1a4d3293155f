using Fretloom.Claims;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Html;
using Fretloom.Sentences;
using Fretloom.Testing;
using Fretloom.Theory;

[assembly: AssemblyFixture(typeof(Fretloom.Browser.Tests.Handouts))]

namespace Fretloom.Browser.Tests;

/// <summary>
/// The web pages of the demo lessons, of one that holds every construct, of a lesson's twelve keys, and of what was discovered, made once for all tests.
/// </summary>
public sealed class Handouts : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("fretloom-browser-").FullName;

    /// <summary>Makes the pages.</summary>
    public Handouts()
    {
        using var builder = new HandoutBuilder();
        foreach (var lesson in Lessons.Values)
        {
            var made = builder.Build(lesson, new BuildOptions(_folder) { Formats = [HandoutFormat.Html] });
            Assert.False(made.HasErrors, string.Join('\n', made.Diagnostics));
        }

        var twelve = new BuildOptions(_folder)
        {
            Formats = [HandoutFormat.Html],
            Keys = KeyChoice.All(KeyOrder.HalfSteps),
        };
        builder.Build(Repository.PathTo("lessons", $"{InTwelveKeys}.md"), twelve);

        var lasting = Path.Combine(_folder, $"{Long}.md");
        File.WriteAllText(
            lasting,
            "---\ntitle: T\nkey: C major\n---\n\n```play\nthe scale, up and down, in quarters, at 20, 30 times\n```\n"
        );
        builder.Build(lasting, new BuildOptions(_folder) { Formats = [HandoutFormat.Html] });

        var scope = DiscoveryParser.Parse("on a guitar, on strings 4-1, in every major key").Value!;
        var found = ClaimDiscovery.Run(scope, new DiscoveryOptions { Count = 4 });
        File.WriteAllText(PathOf(Discovered), DiscoveryReport.Write(found));
    }

    /// <summary>The lesson with exercises to be heard.</summary>
    public const string WithExercises = "exercises";

    /// <summary>The lesson with an exercise of three quarters of an hour.</summary>
    public const string Long = "long";

    private const string InTwelveKeys = "straight-across-is-four";
    private const string Discovered = "discovered";

    /// <summary>The lesson files by name.</summary>
    private static Dictionary<string, string> Lessons { get; } =
        Directory
            .GetFiles(Repository.PathTo("lessons"), "*.md")
            .Append(Repository.PathTo("tests", "Fretloom.Pages.Tests", "Documents", "every-construct.md"))
            .Append(Repository.PathTo("tests", "Fretloom.Pages.Tests", "Documents", $"{WithExercises}.md"))
            .ToDictionary(path => Path.GetFileNameWithoutExtension(path), path => path);

    /// <summary>The names of all lessons: the pages with pictures.</summary>
    public static IReadOnlyList<string> WithPictures { get; } = [.. Lessons.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The names of all pages.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. WithPictures, $"{InTwelveKeys}-keys", Discovered];

    /// <summary>The file of a page.</summary>
    public string PathOf(string name) => Path.Combine(_folder, name + ".html");

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(_folder, recursive: true);
}
