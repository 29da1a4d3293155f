using System.Diagnostics;
using System.Globalization;

namespace Fretloom.Testing;

/// <summary>A program that runs beside a test. It is ended with the test, and no wait for it lasts longer than ten minutes.</summary>
public sealed class StartedProgram : IDisposable
{
    private readonly Process _process;
    private readonly CancellationTokenSource _patience = new(TimeSpan.FromMinutes(10));
    private readonly Task<string> _error;

    /// <summary>Starts a program.</summary>
    /// <param name="program">A path, or a name to look up on the PATH.</param>
    /// <param name="arguments">Its arguments, one each, unquoted.</param>
    /// <param name="folder">Where to run it; null is the current folder.</param>
    /// <param name="environment">Variables that it is given besides those of the test.</param>
    /// <exception cref="System.ComponentModel.Win32Exception">The program cannot be started.</exception>
    public StartedProgram(
        string program,
        IEnumerable<string> arguments,
        string? folder = null,
        IReadOnlyDictionary<string, string>? environment = null
    )
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder ?? "",
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment ?? new Dictionary<string, string>())
        {
            start.Environment[name] = value;
        }

        _process = Process.Start(start)!;
        _error = _process.StandardError.ReadToEndAsync();
    }

    /// <summary>Starts a program that can be sent any Unix signal, also where the test itself was started with some of them ignored.</summary>
    public static StartedProgram Interruptible(string program, IEnumerable<string> arguments) =>
        new("env", ["--default-signal=INT,TERM", program, .. arguments]);

    /// <summary>Whether it has come to its end.</summary>
    public bool HasExited => _process.HasExited;

    /// <summary>Writes to its standard input.</summary>
    public async Task WriteAsync(string text)
    {
        await _process.StandardInput.WriteAsync(text.AsMemory(), _patience.Token);
        await _process.StandardInput.FlushAsync(_patience.Token);
    }

    /// <summary>Waits for a line of its standard output; null at the end.</summary>
    public async Task<string?> ReadLineAsync() => await _process.StandardOutput.ReadLineAsync(_patience.Token);

    /// <summary>Waits until something is so or the program has come to its end.</summary>
    public async Task WaitUntilAsync(Func<bool> isSo)
    {
        while (!HasExited && !isSo())
        {
            await Task.Delay(2, _patience.Token);
        }
    }

    /// <summary>Sends a Unix signal.</summary>
    /// <param name="name">Such as INT.</param>
    public Task SignalAsync(string name) =>
        Run.ProgramAsync("kill", ["-s", name, _process.Id.ToString(CultureInfo.InvariantCulture)]);

    /// <summary>Ends it without asking.</summary>
    public void Kill() => _process.Kill(entireProcessTree: true);

    /// <summary>Tells it that there is no more to read.</summary>
    public void CloseInput() => _process.StandardInput.Close();

    /// <summary>Reads what it says until its end, with its input as it is.</summary>
    /// <returns>Its exit code and what it said and nobody has read yet.</returns>
    public async Task<Run.Result> ExitAsync()
    {
        var output = await _process.StandardOutput.ReadToEndAsync(_patience.Token);
        await _process.WaitForExitAsync(_patience.Token);
        return new(_process.ExitCode, output, await _error);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!HasExited)
        {
            Kill();
        }

        _process.Dispose();
        _patience.Dispose();
    }
}
