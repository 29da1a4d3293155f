namespace Fretloom.Testing;

/// <summary>Runs other programs: the launcher, and the independent ones that tests compare with.</summary>
public static class Run
{
    /// <summary>What a program said.</summary>
    /// <param name="ExitCode">0 by convention when all went well.</param>
    /// <param name="Output">All of standard output.</param>
    /// <param name="Error">All of standard error.</param>
    public sealed record Result(int ExitCode, string Output, string Error);

    /// <summary>Runs a program to its end.</summary>
    /// <param name="program">A path, or a name to look up on the PATH.</param>
    /// <param name="arguments">Its arguments, one each, unquoted.</param>
    /// <param name="folder">Where to run it; null is the current folder.</param>
    /// <param name="input">What to write to its standard input; null is nothing.</param>
    /// <exception cref="System.ComponentModel.Win32Exception">The program cannot be started.</exception>
    public static async Task<Result> ProgramAsync(
        string program,
        IEnumerable<string> arguments,
        string? folder = null,
        string? input = null
    )
    {
        using var started = new StartedProgram(program, arguments, folder);
        var ended = started.ExitAsync();
        await started.WriteAsync(input ?? "");
        started.CloseInput();
        return await ended;
    }

    /// <summary>Whether a program of this name is on the PATH; tests that need it skip when it is not.</summary>
    public static bool IsInstalled(string program) => Find(program) is not null;

    /// <summary>Where a program of this name is, by the PATH; null when it is nowhere.</summary>
    public static string? Find(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Select(folder => Path.Combine(folder, program))
            .FirstOrDefault(File.Exists);
}
