using System.Net;
using System.Net.Sockets;
using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

public sealed class StudioTests : IDisposable
{
    private static readonly string Program = Path.Combine(AppContext.BaseDirectory, "Fretloom.Cli");

    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("fretloom-studio-call-");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private string Pages => Path.Combine(_root.FullName, "pages");

    private string Lessons => Path.Combine(_root.FullName, "lessons");

    public StudioTests()
    {
        Directory.CreateDirectory(Pages);
        Directory.CreateDirectory(Lessons);
        File.WriteAllText(Path.Combine(Pages, "index.html"), "<!doctype html><title>Studio</title>");
    }

    public void Dispose() => _root.Delete(recursive: true);

    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public async Task It_says_where_it_is_answers_there_and_ends_when_asked(string signal)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "sends a Unix signal");
        using var studio = Start("--lessons", Lessons);
        var address = await AddressAsync(studio);
        using var client = new HttpClient();

        using var page = await client.GetAsync(address, Stop);
        using var head = await client.SendAsync(new HttpRequestMessage(HttpMethod.Head, address), Stop);
        var events = await client.GetStreamAsync(new Uri(address, "/api/changes"), Stop);
        await studio.SignalAsync(signal);
        var ended = await studio.ExitAsync();

        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("Studio", await page.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.NotNull(events);
        Assert.Equal(130, ended.ExitCode);
        Assert.Equal("", ended.Output);
        Assert.Equal($"Lessons: {Lessons}\nThe studio is closed.\n", ended.Error);
    }

    [Fact]
    public async Task Settings_of_the_framework_are_not_read()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "sends a Unix signal");
        File.WriteAllText(Path.Combine(Lessons, "appsettings.json"), """{"Urls":"http://0.0.0.0:1"}""");
        using var studio = new StartedProgram(
            "env",
            [
                "--default-signal=INT,TERM",
                "ASPNETCORE_URLS=http://0.0.0.0:1",
                "DOTNET_URLS=http://0.0.0.0:1",
                "ASPNETCORE_ENVIRONMENT=Development",
                $"FRETLOOM_STUDIO={Pages}",
                Program,
                "studio",
                "--lessons",
                Lessons,
            ],
            Lessons
        );

        var address = await AddressAsync(studio);

        Assert.Equal("127.0.0.1", address.Host);
        Assert.NotEqual(1, address.Port);
    }

    [Fact]
    public async Task Left_unsaid_the_lessons_are_a_copy_of_the_demo_lessons()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "sends a Unix signal");
        var data = Path.Combine(_root.FullName, "data");
        using var studio = new StartedProgram(
            "env",
            ["--default-signal=INT,TERM", $"XDG_DATA_HOME={data}", $"FRETLOOM_STUDIO={Pages}", Program, "studio"]
        );
        var address = await AddressAsync(studio);
        using var client = new HttpClient();

        var lessons = await client.GetStringAsync(new Uri(address, "/api/lessons"), Stop);
        await studio.SignalAsync("TERM");
        var ended = await studio.ExitAsync();

        Assert.Contains("the-cloth-of-a-key.md", lessons, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(data, "fretloom", "lessons", "the-cloth-of-a-key.md")));
        Assert.Contains($"copied to {data}", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_in_the_way_is_told_in_a_line()
    {
        using var taken = new TcpListener(IPAddress.Loopback, 0);
        taken.Start();
        var port = $"{((IPEndPoint)taken.LocalEndpoint).Port}";

        using var inUse = Start("--lessons", Lessons, "--port", port);
        using var without = new StartedProgram(
            Program,
            ["studio", "--lessons", Lessons],
            environment: new Dictionary<string, string> { ["FRETLOOM_STUDIO"] = Path.Combine(_root.FullName, "none") }
        );
        using var silent = Start("--lessons", Lessons, "--listen", "192.0.2.1");
        silent.CloseInput();
        var (busy, missing, unasked) = (await inUse.ExitAsync(), await without.ExitAsync(), await silent.ExitAsync());

        Assert.Equal((2, ""), (busy.ExitCode, busy.Output));
        Assert.StartsWith($"Port {port} is in use.", busy.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (missing.ExitCode, missing.Output));
        Assert.StartsWith("The pages of the studio are not there", missing.Error, StringComparison.Ordinal);
        Assert.Equal((2, ""), (unasked.ExitCode, unasked.Output));
        Assert.Contains("FRETLOOM_PASSPHRASE", unasked.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_listen_others_come_in_who_know_the_pass_phrase_of_the_environment()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "sends a Unix signal");
        using var studio = new StartedProgram(
            "env",
            [
                "--default-signal=INT,TERM",
                $"FRETLOOM_STUDIO={Pages}",
                "FRETLOOM_PASSPHRASE=four strings",
                Program,
                "studio",
                "--lessons",
                Lessons,
                "--listen",
                "0.0.0.0",
            ]
        );
        var address = await AddressAsync(studio);
        using var client = new HttpClient();

        using var asked = await client.GetAsync(address, Stop);
        var words = new FormUrlEncodedContent([new("phrase", "four strings")]);
        using var page = await client.PostAsync(new Uri(address, "/login"), words, Stop);
        await studio.SignalAsync("TERM");
        var ended = await studio.ExitAsync();

        Assert.Equal(HttpStatusCode.Unauthorized, asked.StatusCode);
        // The client follows to the page, with the cookie it was given.
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("<title>Studio</title>", await page.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.Contains("with the pass phrase", ended.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("four strings", ended.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_short_pass_phrase_is_refused()
    {
        using var studio = new StartedProgram(
            Program,
            ["studio", "--lessons", Lessons, "--listen", "0.0.0.0"],
            environment: new Dictionary<string, string>
            {
                ["FRETLOOM_STUDIO"] = Pages,
                ["FRETLOOM_PASSPHRASE"] = "fret",
            }
        );

        var ended = await studio.ExitAsync();

        Assert.Equal((2, ""), (ended.ExitCode, ended.Output));
        Assert.Contains("at least 8 characters", ended.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("exit 3", "The browser could not be opened; open the address yourself.\n")]
    [InlineData("echo \"$1\" > \"${0%/*}/opened\"; echo talk; echo talk >&2", "")]
    public async Task The_browser_is_asked_to_open_the_address_and_only_told_of_when_it_cannot(string does, string told)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "stands in for xdg-open");
        var opener = Path.Combine(_root.FullName, "xdg-open");
        File.WriteAllText(opener, $"#!/bin/sh\n{does}\n");
        await Run.ProgramAsync("chmod", ["+x", opener]);
        using var studio = new StartedProgram(
            "env",
            [
                "--default-signal=INT,TERM",
                $"PATH={_root.FullName}",
                $"FRETLOOM_STUDIO={Pages}",
                Program,
                "studio",
                "--lessons",
                Lessons,
                "--open",
            ]
        );
        var address = await AddressAsync(studio);
        using var client = new HttpClient();

        using var page = await client.GetAsync(address, Stop);
        await studio.SignalAsync("TERM");
        var ended = await studio.ExitAsync();

        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Equal($"Lessons: {Lessons}\n{told}The studio is closed.\n", ended.Error);
        if (told.Length == 0)
        {
            Assert.Equal($"{address}\n", File.ReadAllText(Path.Combine(_root.FullName, "opened")));
        }
    }

    [Fact]
    public async Task Whenever_it_is_killed_a_lesson_is_one_of_its_whole_versions()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "kills as Unix does");
        var lesson = Path.Combine(Lessons, "x.md");
        var versions = Enumerable.Range(0, 26).Select(number => new string((char)('a' + number), 200_000)).ToList();
        File.WriteAllText(lesson, versions[0]);
        for (var round = 1; round <= 5; round++)
        {
            using var studio = Start("--lessons", Lessons);
            var address = new Uri(await AddressAsync(studio), "/api/lessons/x.md");
            using var client = new HttpClient();
            var saves = 0;
            var saving = Task.Run(
                async () =>
                {
                    while (true)
                    {
                        using var request = new HttpRequestMessage(HttpMethod.Put, address)
                        {
                            Content = new StringContent(versions[saves % versions.Count]),
                        };
                        request.Headers.TryAddWithoutValidation("If-Match", "*");
                        using var saved = await client.SendAsync(request, Stop);
                        Assert.Equal(HttpStatusCode.NoContent, saved.StatusCode);
                        saves++;
                    }
                },
                Stop
            );
            await studio.WaitUntilAsync(() => saves >= round * 3);
            studio.Kill();
            await Assert.ThrowsAsync<HttpRequestException>(() => saving);

            Assert.Contains(File.ReadAllText(lesson), versions);
        }

        using var last = Start("--lessons", Lessons);
        await AddressAsync(last);
        Assert.Equal([lesson], Directory.GetFileSystemEntries(Lessons));
    }

    private StartedProgram Start(params string[] arguments) =>
        new("env", ["--default-signal=INT,TERM", $"FRETLOOM_STUDIO={Pages}", Program, "studio", .. arguments]);

    private static async Task<Uri> AddressAsync(StartedProgram studio)
    {
        var line =
            await studio.ReadLineAsync() ?? throw new InvalidOperationException((await studio.ExitAsync()).Error);
        Assert.Matches(@"^Fretloom's studio is at http://127\.0\.0\.1:\d+/$", line);
        return new Uri(line.Split(' ')[^1]);
    }
}
