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
        var root = Directory.CreateTempSubdirectory("fretloom-stop");
        try
        {
            var lesson = Directory.GetFiles(Commands.DemoCommand.LessonsFolder, "*.md")[0];
            var folder = Path.Combine(root.FullName, "out");
            using var build = StartedProgram.Interruptible(
                Path.Combine(AppContext.BaseDirectory, "Fretloom.Cli"),
                ["build", lesson, "--key", "all", "--out", folder]
            );
            // From here on twelve PDF files are to be set, the first after the typesetter has started.
            await build.WaitUntilAsync(() => Directory.Exists(folder));

            await build.SignalAsync(signal);
            var stopped = await build.ExitAsync();

            Assert.Equal(130, stopped.ExitCode);
            Assert.EndsWith("Stopped; nothing is left half written.\n", stopped.Error, StringComparison.Ordinal);
            Assert.Empty(root.GetFileSystemInfos());
        }
        finally
        {
            root.Delete(recursive: true);
        }
    }
}
