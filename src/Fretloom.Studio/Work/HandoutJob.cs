using Fretloom.Lessons;
using Fretloom.Pages.Documents;

namespace Fretloom.Studio.Work;

/// <summary>Handouts that are made of one lesson, from the order to the file.</summary>
/// <param name="id">By what it is known.</param>
/// <param name="folder">Its own folder.</param>
/// <param name="name">The name of the lesson's file.</param>
/// <param name="text">The lesson.</param>
/// <param name="options">What to make of it, in a folder below its own.</param>
internal sealed class HandoutJob(string id, string folder, string name, byte[] text, BuildOptions options) : IDisposable
{
    private const int Whole = 100;

    private readonly CancellationTokenSource _stop = new();
    private volatile HandoutStatus _status = new("working", 0, 0, "", [], null);

    /// <summary>By what it is known.</summary>
    public string Id => id;

    /// <summary>Its own folder.</summary>
    public string Folder => folder;

    /// <summary>How far it has come.</summary>
    public HandoutStatus Status => _status;

    /// <summary>Where the file is that came of it; null before there is one.</summary>
    public string? File { get; private set; }

    /// <summary>Whether it is over.</summary>
    public bool IsOver => _status.State != "working";

    /// <summary>Asks it to stop.</summary>
    public void Stop() => _stop.Cancel();

    /// <summary>Gives it up; it is over.</summary>
    public void Dispose() => _stop.Dispose();

    /// <summary>Makes the handouts once it is their turn. Whatever comes of it is told by <see cref="Status"/>.</summary>
    public async Task RunAsync(HandoutBuilder builder, SemaphoreSlim turn)
    {
        try
        {
            await turn.WaitAsync(_stop.Token);
            try
            {
                Make(builder);
            }
            finally
            {
                turn.Release();
            }
        }
        catch (OperationCanceledException)
        {
            _status = _status with { State = "stopped", What = "" };
        }
        catch (Exception problem)
        {
            var reason = problem is IOException or UnauthorizedAccessException
                ? problem.Message
                : problem.GetType().Name;
            _status = _status with
            {
                State = "failed",
                Diagnostics = [FoundDocument.Of(Diagnostic.OfFile($"The handouts could not be made: {reason}"))],
            };
        }
    }

    private void Make(HandoutBuilder builder)
    {
        Directory.CreateDirectory(folder);
        var lesson = Path.Combine(folder, name);
        System.IO.File.WriteAllBytes(lesson, text);
        var result = builder.Build(
            lesson,
            options,
            step => _status = _status with { Done = step.Done, Of = step.Total, What = step.Name },
            new Checked(share =>
                _status = _status with { Done = (int)(share * Whole), Of = Whole, What = "checking claims" }
            ),
            _stop.Token
        );
        IReadOnlyList<FoundDocument> found = [.. result.Diagnostics.Select(FoundDocument.Of)];
        if (result.Files.Count == 0)
        {
            _status = _status with { State = "failed", Diagnostics = found, What = "" };
            return;
        }

        File = result.Files.Count == 1 ? result.Files[0].Path : Zip(result.Files);
        var address = $"/api/handouts/{id}/file/{Uri.EscapeDataString(Path.GetFileName(File))}";
        _status = new("done", result.Files.Count, result.Files.Count, "", found, address);
    }

    // Of one kind alone it says which.
    private string Zip(ValueList<BuiltFile> files)
    {
        var kind = options.Formats is [var only] ? $"-{only.ToString().ToLowerInvariant()}" : "";
        var path = Path.Combine(folder, Path.GetFileNameWithoutExtension(name) + kind + ".zip");
        using var zip = System.IO.File.Create(path);
        ZipFiles.Write(
            zip,
            files.Select<BuiltFile, (string, Func<Stream>)>(file =>
                (Path.GetFileName(file.Path), () => System.IO.File.OpenRead(file.Path))
            )
        );
        return path;
    }

    private sealed class Checked(Action<double> tell) : IProgress<double>
    {
        public void Report(double value) => tell(value);
    }
}
