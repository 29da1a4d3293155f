using System.Diagnostics;
using System.Globalization;
using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

public class InterruptionTests
{
    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public async Task A_stopped_build_leaves_nothing_behind(string signal)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "sends a Unix signal");
        var stop = TestContext.Current.CancellationToken;
        var root = Directory.CreateTempSubdirectory("fretloom-stop");
        try
        {
            var lesson = Directory.GetFiles(Commands.DemoCommand.LessonsFolder, "*.md")[0];
            var folder = Path.Combine(root.FullName, "out");
            using var build = Process.Start(
                new ProcessStartInfo(
                    Path.Combine(AppContext.BaseDirectory, "Fretloom.Cli"),
                    ["build", lesson, "--key", "all", "--out", folder]
                )
                {
                    RedirectStandardOutput = true,
                    RedirectStandardError = true,
                }
            )!;
            // From here on twelve PDF files are to be set, the first after the typesetter has started.
            while (!build.HasExited && !Directory.Exists(folder))
            {
                await Task.Delay(5, stop);
            }

            await Run.ProgramAsync("kill", ["-s", signal, build.Id.ToString(CultureInfo.InvariantCulture)]);
            var error = await build.StandardError.ReadToEndAsync(stop);
            await build.WaitForExitAsync(stop);

            Assert.Equal(130, build.ExitCode);
            Assert.EndsWith("Stopped; nothing is left half written.\n", error, StringComparison.Ordinal);
            Assert.Empty(root.GetFileSystemInfos());
        }
        finally
        {
            root.Delete(recursive: true);
        }
    }
}
