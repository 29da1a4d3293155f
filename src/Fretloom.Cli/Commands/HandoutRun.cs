using Fretloom.Cli.Json;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;

namespace Fretloom.Cli.Commands;

/// <summary>Builds lessons one after the other, shows how far it has come, and prints what was made.</summary>
internal sealed class HandoutRun(Terminal terminal) : IDisposable
{
    private readonly HandoutBuilder _builder = new();

    /// <summary>Builds lessons.</summary>
    /// <returns>The worst <see cref="ExitCode"/> among them.</returns>
    public int Build(IEnumerable<string> lessons, BuildOptions options, bool isJson)
    {
        var worst = ExitCode.Done;
        foreach (var lesson in lessons)
        {
            var result = ProgressBar.Over(
                Path.GetFileName(lesson),
                show => _builder.Build(lesson, options, made => show(made.Done, made.Total))
            );
            if (isJson)
            {
                terminal.Print(BuildDocument.Of(lesson, result), Documents.Contract.BuildDocument);
            }
            else
            {
                Print(lesson, result);
            }

            worst = Math.Max(worst, CodeOf(result));
        }

        return worst;
    }

    /// <inheritdoc/>
    public void Dispose() => _builder.Dispose();

    private void Print(string lesson, BuildResult result)
    {
        foreach (var found in result.Diagnostics)
        {
            terminal.Error.WriteLine(found.Line == 0 ? found.ToString() : $"{lesson}:{found}");
        }

        foreach (var file in result.Files)
        {
            terminal.Output.WriteLine(file.Path);
        }
    }

    // A finding about the file or folder as a whole is a wrong call; one with a line is the lesson's.
    private static int CodeOf(BuildResult result)
    {
        var errors = result.Diagnostics.Where(found => found.Severity == Severity.Error).ToList();
        return errors.Count == 0 ? ExitCode.Done
            : errors.Exists(found => found.Line == 0) ? ExitCode.Misused
            : ExitCode.Wrong;
    }
}
