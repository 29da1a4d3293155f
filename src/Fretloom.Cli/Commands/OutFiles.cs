using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;

namespace Fretloom.Cli.Commands;

/// <summary>Writes the files of <c>--out</c>, whole or not at all.</summary>
internal static class OutFiles
{
    /// <summary>Writes one file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="content">Makes what it holds.</param>
    /// <param name="stop">Ends the work, and nothing is written.</param>
    /// <returns>Why nothing was written, or null.</returns>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public static string? Write(string path, Func<byte[]> content, CancellationToken stop = default) =>
        Write(path, [(path, content)], stop);

    /// <summary>Writes files that belong together, into one folder.</summary>
    /// <param name="path">The file that was asked for, for what is said.</param>
    /// <param name="files">The files, each made when those before it are.</param>
    /// <param name="stop">Ends the work, and nothing is written.</param>
    /// <returns>Why nothing was written, or null.</returns>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public static string? Write(
        string path,
        IReadOnlyList<(string Name, Func<byte[]> Content)> files,
        CancellationToken stop = default
    )
    {
        if (FileProblem.WhyNot(path) is { } misnamed)
        {
            return misnamed;
        }

        try
        {
            using var staged = new StagedFiles(Path.GetDirectoryName(Path.GetFullPath(path))!);
            foreach (var (name, content) in files)
            {
                staged.Add(Path.GetFileName(name), content());
            }

            stop.ThrowIfCancellationRequested();
            staged.Publish();
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return FileProblem.Words(path, problem);
        }
        catch (TypstException problem)
        {
            return $"The PDF could not be set: {problem.Message}";
        }
    }
}
