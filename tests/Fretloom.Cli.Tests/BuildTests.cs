namespace Fretloom.Cli.Tests;

public sealed class BuildTests : IDisposable
{
    private readonly string _root = Directory.CreateTempSubdirectory("fretloom-").FullName;

    public void Dispose() => Directory.Delete(_root, recursive: true);

    private string Lesson(string sentence)
    {
        var path = Path.Combine(_root, "lesson.md");
        File.WriteAllText(path, $"---\ntitle: T\nkey: C major\n---\n\n```show\n{sentence}\n```\n");
        return path;
    }

    private Call Build(string lesson, params string[] more) =>
        Call.Fretloom(["build", lesson, "--out", Path.Combine(_root, "out"), "--format", "html,svg", .. more]);

    [Fact]
    public void The_names_of_the_files_are_printed()
    {
        var call = Build(Lesson("the landmarks"));

        Assert.Equal(0, call.Code);
        var names = call.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(["lesson.html", "lesson-1-landmarks.svg"], names.Select(name => Path.GetFileName(name)));
        Assert.All(names, name => Assert.True(File.Exists(name)));
    }

    [Fact]
    public void The_document_lists_them_with_their_kinds()
    {
        var lesson = Lesson("the landmarks");

        var json = Build(lesson, "--json").Json;

        Assert.Equal(lesson, json.GetProperty("lesson").GetString());
        Assert.Equal(
            ["html", "svg"],
            json.GetProperty("files").EnumerateArray().Select(file => file.GetProperty("kind").GetString())
        );
        Assert.Empty(json.GetProperty("diagnostics").EnumerateArray());
        Assert.False(json.TryGetProperty("error", out _));
    }

    [Fact]
    public void A_lesson_with_errors_exits_with_1_and_says_where()
    {
        var lesson = Lesson("the frobnications");

        var call = Build(lesson);
        var json = Build(lesson, "--json");

        Assert.Equal((1, ""), (call.Code, call.Output));
        Assert.StartsWith($"{lesson}:7:5: error:", call.Error, StringComparison.Ordinal);
        Assert.Equal(1, json.Code);
        var found = json.Json.GetProperty("diagnostics")[0];
        Assert.Equal((7, 5), (found.GetProperty("line").GetInt32(), found.GetProperty("column").GetInt32()));
        Assert.Equal("error", found.GetProperty("severity").GetString());
    }

    [Fact]
    public void A_chord_without_a_place_is_a_warning_and_the_lesson_is_made()
    {
        var call = Build(Lesson("the chords I vi, on strings 3-1, frets 0-4"));

        Assert.Equal(0, call.Code);
        Assert.Contains(":7:1: warning: No shape of I (C) fits", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none.md")]
    [InlineData("")]
    public void A_lesson_that_cannot_be_read_exits_with_2(string name)
    {
        Assert.Equal(2, Build(name).Code);
        AssertError(Build(name, "--json"), $"'{name}' cannot be read");
    }

    [Fact]
    public void A_folder_that_cannot_be_made_exits_with_2()
    {
        var lesson = Lesson("the landmarks");

        AssertError(
            Call.Fretloom("build", lesson, "--out", lesson, "--format", "html", "--json"),
            "Nothing was written"
        );
    }

    [Fact]
    public void The_folder_needs_a_name() =>
        AssertError(Call.Fretloom("build", "lesson.md", "--out", "", "--json"), "--out takes");

    [Fact]
    public void The_demo_is_one_document_of_all_its_lessons()
    {
        var call = Call.Fretloom("demo", "--out", Path.Combine(_root, "out"), "--json");

        Assert.Equal((0, ""), (call.Code, call.Error));
        var lessons = call.Json.GetProperty("lessons").EnumerateArray().ToList();
        Assert.Equal(Directory.GetFiles(Commands.DemoCommand.LessonsFolder, "*.md").Length, lessons.Count);
        Assert.All(lessons, lesson => Assert.Empty(lesson.GetProperty("diagnostics").EnumerateArray()));
        Assert.All(
            lessons.SelectMany(lesson => lesson.GetProperty("files").EnumerateArray()),
            file => Assert.True(File.Exists(file.GetProperty("path").GetString()))
        );
    }

    [Fact]
    public void A_demo_that_cannot_be_written_is_said_once()
    {
        var call = Call.Fretloom("demo", "--out", Lesson("the landmarks"));

        Assert.Equal(2, call.Code);
        Assert.Single(call.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    private static void AssertError(Call call, string beginning)
    {
        Assert.Equal(2, call.Code);
        Assert.StartsWith(
            beginning,
            call.Json.GetProperty("error").GetProperty("message").GetString(),
            StringComparison.Ordinal
        );
    }
}
