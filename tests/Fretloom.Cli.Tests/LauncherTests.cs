using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

/// <summary>The <c>fretloom</c> script at the root, which must have built the program before (./test does).</summary>
public class LauncherTests
{
    [Fact]
    public async Task Starts_from_another_folder_and_through_a_link()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "the launcher is a shell script");
        var folder = Directory.CreateTempSubdirectory("fretloom ");
        try
        {
            var link = Path.Combine(folder.FullName, "linked");
            File.CreateSymbolicLink(link, Path.Combine(Repository.Root, "fretloom"));

            var result = await Run.ProgramAsync(link, ["--version"], folder.FullName);

            Assert.Equal(0, result.ExitCode);
            Assert.Matches(@"^\d+\.\d+\.\d+\n$", result.Output);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
