using System.CommandLine;
using Fretloom.Cli.Json;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;

namespace Fretloom.Cli.Commands;

/// <summary>Builds lessons one after the other, shows how far it has come, and prints what was made.</summary>
internal sealed class HandoutRun(Terminal terminal) : IDisposable
{
    private readonly HandoutBuilder _builder = new();

    /// <summary>The option that names the folder for the files.</summary>
    public static Option<string> FolderOption()
    {
        var folder = new Option<string>("--out")
        {
            Description = "Where the files go; made when it is not there.",
            HelpName = "DIR",
            DefaultValueFactory = _ => "out",
        };
        folder.Validators.Add(result =>
        {
            if (string.IsNullOrEmpty(result.GetValueOrDefault<string>()))
            {
                result.AddError("--out takes the name of a folder.");
            }
        });
        return folder;
    }

    /// <summary>Builds lessons.</summary>
    /// <param name="lessons">The lesson files.</param>
    /// <param name="options">What to make of each.</param>
    /// <param name="isJson">Whether the documents are to be printed by the caller, instead of names and messages here.</param>
    /// <returns>The worst <see cref="ExitCode"/>, and a document for each lesson; the first wrong call ends the run.</returns>
    /// <exception cref="OperationCanceledException">The user stopped it; nothing of the lesson under way is written.</exception>
    public (int Code, IReadOnlyList<BuildDocument> Documents) Build(
        IEnumerable<string> lessons,
        BuildOptions options,
        bool isJson
    )
    {
        var stop = terminal.Listen();
        var documents = new List<BuildDocument>();
        var worst = ExitCode.Done;
        foreach (var lesson in lessons.TakeWhile(_ => worst < ExitCode.Misused))
        {
            var result = ProgressBar.Over(
                Path.GetFileName(lesson),
                show =>
                    _builder.Build(lesson, options, step => show(step.Done, step.Total), ProgressBar.Share(show), stop)
            );
            if (!isJson)
            {
                Print(lesson, result);
            }

            documents.Add(BuildDocument.Of(lesson, result));
            worst = Math.Max(worst, CodeOf(result));
        }

        return (worst, documents);
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
