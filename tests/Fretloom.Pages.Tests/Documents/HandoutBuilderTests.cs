using System.Text.RegularExpressions;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Theory;

namespace Fretloom.Pages.Tests.Documents;

public sealed class HandoutBuilderTests : IDisposable
{
    private static readonly HandoutBuilder Shared = new();

    private readonly string _root = Directory.CreateTempSubdirectory("fretloom-").FullName;

    private string Out => Path.Combine(_root, "out");

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private static BuildResult Build(string lesson, BuildOptions options) => Build(Shared, lesson, options);

    private static BuildResult Build(
        HandoutBuilder builder,
        string lesson,
        BuildOptions options,
        Action<BuildProgress>? progress = null
    ) => builder.Build(lesson, options, progress, null, TestContext.Current.CancellationToken);

    private string Lesson(string text, string name = "lesson.md")
    {
        var path = Path.Combine(_root, name);
        File.WriteAllText(path, text);
        return path;
    }

    private static string Short(string body = "```show\nthe notes of the key\n```\n") =>
        $"---\ntitle: T\nkey: G major\n---\n\n{body}";

    private string[] Names() =>
        [.. Directory.GetFileSystemEntries(Out).Select(entry => Path.GetFileName(entry)).Order(StringComparer.Ordinal)];

    [Fact]
    public void A_lesson_becomes_pdf_html_and_svg()
    {
        var result = Build(Lesson(Short(), "straight-across.md"), new BuildOptions(Out));

        Assert.Equal(["straight-across-1-neck.svg", "straight-across.html", "straight-across.pdf"], Names());
        Assert.Equal(["pdf", "html", "svg"], result.Files.Select(file => file.Kind));
        Assert.All(result.Files, file => Assert.True(File.Exists(file.Path)));
        Assert.Empty(result.Diagnostics);
    }

    [Fact]
    public void Formats_may_be_chosen()
    {
        var result = Build(Lesson(Short()), new BuildOptions(Out) { Formats = [HandoutFormat.Png] });

        // A PNG file begins with these bytes (ISO/IEC 15948, 5.2).
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(Assert.Single(result.Files).Path)[..4]);
    }

    [Fact]
    public void Twelve_keys_give_twelve_files_in_the_order_asked_for()
    {
        var options = new BuildOptions(Out) { Formats = [HandoutFormat.Html], Keys = KeyChoice.All(KeyOrder.Fourths) };

        var result = Build(Lesson(Short()), options);

        string[] keys = ["G", "C", "F", "Bb", "Eb", "Ab", "Db", "Gb", "B", "E", "A", "D"];
        Assert.Equal(
            [.. keys.Select(key => $"lesson-in-{key}-major.html"), "lesson-keys.html"],
            result.Files.Select(file => Path.GetFileName(file.Path))
        );
    }

    [Theory]
    [InlineData(KeyOrder.Fourths)]
    [InlineData(KeyOrder.HalfSteps)]
    public void Twelve_keys_come_with_one_page_that_leads_to_them(KeyOrder order)
    {
        var options = new BuildOptions(Out)
        {
            Formats = [HandoutFormat.Pdf, HandoutFormat.Html],
            Keys = KeyChoice.All(order),
        };

        var result = Build(Lesson(Short(""), "my lesson.md"), options);

        var made = result.Files.Select(file => Path.GetFileName(file.Path)).ToHashSet();
        Assert.Superset(new HashSet<string> { "my lesson-keys.html", "my lesson-keys.pdf" }, made);
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(Path.Combine(Out, "my lesson-keys.pdf"));
        Assert.Equal(1, pdf.NumberOfPages);
        var links = pdf.GetPage(1).GetHyperlinks().Select(link => Uri.UnescapeDataString(link.Uri)).ToList();
        Assert.Equal(12, links.Count);
        Assert.Subset(made, links.ToHashSet());
        var html = File.ReadAllText(Path.Combine(Out, "my lesson-keys.html"));
        Assert.All(
            made.Where(name => name.Contains("-in-", StringComparison.Ordinal)),
            name => Assert.Contains($"href=\"{Uri.EscapeDataString(name)}\"", html, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Pictures_in_twelve_keys_come_without_a_page_about_them()
    {
        var options = new BuildOptions(Out) { Formats = [HandoutFormat.Svg], Keys = KeyChoice.All(KeyOrder.Fourths) };

        Assert.All(Build(Lesson(Short()), options).Files, file => Assert.Equal("svg", file.Kind));
    }

    [Fact]
    public void A_sharp_in_a_file_name_is_spelled_out()
    {
        var options = new BuildOptions(Out)
        {
            Formats = [HandoutFormat.Html],
            Keys = KeyChoice.One(Key.Parse("F# minor")),
        };

        var result = Build(Lesson(Short()), options);

        Assert.EndsWith("lesson-in-F-sharp-minor.html", Assert.Single(result.Files).Path, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_written_when_there_are_errors()
    {
        var result = Build(Lesson(Short("```show\nthe frobnications\n```")), new BuildOptions(Out));

        Assert.True(result.HasErrors);
        Assert.Empty(result.Files);
        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public void Keeping_on_shows_the_error_in_its_place()
    {
        var options = new BuildOptions(Out) { IsKeepGoing = true, Formats = [HandoutFormat.Html, HandoutFormat.Pdf] };

        var result = Build(Lesson(Short("```show\nthe frobnications\n```")), options);

        Assert.True(result.HasErrors);
        Assert.Contains(
            "class=\"problem\"><strong>Line 7</strong>",
            File.ReadAllText(result.Files[0].Path),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("")]
    [InlineData("just text")]
    [InlineData("---\nkey: H\n")]
    public void Keeping_on_makes_something_of_every_text(string text)
    {
        var options = new BuildOptions(Out) { IsKeepGoing = true };

        var result = Build(Lesson(text), options);

        Assert.True(result.HasErrors);
        Assert.Equal(["pdf", "html"], result.Files.Select(file => file.Kind));
        Assert.Contains("<h1>Untitled lesson</h1>", File.ReadAllText(result.Files[1].Path), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lesson_that_cannot_be_read_gives_no_files_even_when_keeping_on()
    {
        var result = Build(Path.Combine(_root, "none.md"), new BuildOptions(Out) { IsKeepGoing = true });

        Assert.EndsWith("there is no such file.", Assert.Single(result.Diagnostics).Message, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Out));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_build_that_fails_on_the_way_leaves_what_was_there(int writes)
    {
        var lesson = Lesson(Short());
        Build(lesson, new BuildOptions(Out));
        var before = Names().Select(name => File.ReadAllBytes(Path.Combine(Out, name))).ToArray();
        using var builder = new HandoutBuilder(FailAt(writes));

        File.WriteAllText(lesson, Short("Other words.\n\n```show\nthe thirds\n```"));
        var result = Build(builder, lesson, new BuildOptions(Out));

        Assert.EndsWith("disk full", Assert.Single(result.Diagnostics).Message, StringComparison.Ordinal);
        Assert.Empty(result.Files);
        Assert.Equal(before, Names().Select(name => File.ReadAllBytes(Path.Combine(Out, name))));
    }

    [Fact]
    public void A_failed_first_build_leaves_no_folder()
    {
        using var builder = new HandoutBuilder(FailAt(1));
        var options = new BuildOptions(Path.Combine(Out, "deep", "down")) { Formats = [HandoutFormat.Html] };

        Build(builder, Lesson(Short()), options);

        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public void A_folder_in_the_place_of_a_file_stops_every_file()
    {
        Directory.CreateDirectory(Path.Combine(Out, "lesson-1-neck.svg"));

        var result = Build(
            Lesson(Short()),
            new BuildOptions(Out) { Formats = [HandoutFormat.Html, HandoutFormat.Svg] }
        );

        Assert.EndsWith(
            "There is a folder named 'lesson-1-neck.svg'.",
            Assert.Single(result.Diagnostics).Message,
            StringComparison.Ordinal
        );
        Assert.Equal(["lesson-1-neck.svg"], Names());
    }

    [Fact]
    public void Bytes_that_are_no_text_give_no_files_even_when_keeping_on()
    {
        var path = Path.Combine(_root, "lesson.md");
        File.WriteAllBytes(path, [0xFF]);

        var result = Build(path, new BuildOptions(Out) { IsKeepGoing = true });

        Assert.True(result.HasErrors);
        Assert.False(Directory.Exists(Out));
    }

    // Half of the bytes are written, then the disk is full.
    private static Action<string, byte[]> FailAt(int write)
    {
        var count = 0;
        return (path, bytes) =>
        {
            if (++count == write)
            {
                File.WriteAllBytes(path, bytes[..(bytes.Length / 2)]);
                throw new IOException("disk full");
            }

            File.WriteAllBytes(path, bytes);
        };
    }

    [Fact]
    public void A_stopped_build_writes_nothing()
    {
        using var stop = new CancellationTokenSource();

        Assert.Throws<OperationCanceledException>(() =>
            Shared.Build(Lesson(Short()), new BuildOptions(Out), _ => stop.Cancel(), null, stop.Token)
        );
        Assert.False(Directory.Exists(Out));
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_a_finding()
    {
        File.WriteAllText(Out, "not a folder");

        var result = Build(Lesson(Short()), new BuildOptions(Out));

        Assert.StartsWith(
            "Nothing was written into",
            Assert.Single(result.Diagnostics).Message,
            StringComparison.Ordinal
        );
        Assert.Equal("not a folder", File.ReadAllText(Out));
    }

    [Fact]
    public void A_folder_that_may_not_be_written_is_a_finding()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "needs Unix permissions");
        Assert.SkipWhen(Environment.UserName == "root", "root may write everywhere");
        Directory.CreateDirectory(Out);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(Out, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }

        var result = Build(Lesson(Short()), new BuildOptions(Out));

        Assert.Contains("may not write into", Assert.Single(result.Diagnostics).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Progress_counts_every_file()
    {
        var seen = new List<BuildProgress>();

        Build(
            Shared,
            Lesson(Short()),
            new BuildOptions(Out) { Formats = [HandoutFormat.Html, HandoutFormat.Svg] },
            seen.Add
        );

        Assert.Equal([new(1, 2, "lesson.html"), new(2, 2, "lesson-1-neck.svg")], seen);
    }

    [Fact]
    public void The_same_lesson_gives_the_same_bytes()
    {
        var options = new BuildOptions(Out)
        {
            Paper = Paper.Letter,
            Formats = [.. BuildOptions.DefaultFormats, HandoutFormat.Png],
        };
        var first = Build(Samples.EveryConstructPath, options)
            .Files.Select(file => File.ReadAllBytes(file.Path))
            .ToArray();
        using var other = new HandoutBuilder();

        var second = Build(other, Samples.EveryConstructPath, options)
            .Files.Select(file => File.ReadAllBytes(file.Path));

        Assert.Equal(first, second);
    }

    [Fact]
    public void A_sign_is_explained_once_on_a_page_but_in_every_picture_file()
    {
        const string Neck = "```show\nthe notes of the key, frets 0-5\n```\n\n";
        var path = Lesson("---\ntitle: T\n---\n\n" + Neck + Neck);
        var result = Build(path, new BuildOptions(Out) { Formats = [HandoutFormat.Html, HandoutFormat.Svg] });

        Assert.Equal(
            [1, 1, 1],
            result.Files.Select(file => Regex.Count(File.ReadAllText(file.Path), ">in the key</text>"))
        );
        Assert.Equal(["html", "svg", "svg"], result.Files.Select(file => file.Kind));
    }
}
