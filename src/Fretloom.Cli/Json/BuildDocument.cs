using Fretloom.Lessons;
using Fretloom.Pages.Documents;

namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom build --json</c> prints.</summary>
/// <param name="Lesson">The lesson file as named in the call.</param>
/// <param name="Files">What was written, in the order written.</param>
/// <param name="Diagnostics">What is wrong in the lesson, by line.</param>
/// <param name="Error">Why the call could not be answered, as in every document: a file or a folder that cannot be used; else left out.</param>
public sealed record BuildDocument(
    string Lesson,
    IReadOnlyList<FileDocument> Files,
    IReadOnlyList<DiagnosticDocument> Diagnostics,
    ErrorBody? Error = null
)
{
    internal static BuildDocument Of(string lesson, BuildResult result) =>
        new(
            lesson,
            [.. result.Files.Select(file => new FileDocument(file.Path, file.Kind))],
            [.. result.Diagnostics.Select(DiagnosticDocument.Of)],
            result
                .Diagnostics.Where(found => found.Line == 0)
                .Select(found => new ErrorBody(found.Message, 1))
                .FirstOrDefault()
        );
}

/// <summary>What <c>fretloom demo --json</c> prints.</summary>
/// <param name="Lessons">The demo lessons, in the order built.</param>
public sealed record DemoDocument(IReadOnlyList<BuildDocument> Lessons);

/// <summary>A file that was written.</summary>
/// <param name="Path">Where.</param>
/// <param name="Kind"><c>pdf</c>, <c>html</c>, <c>svg</c>, <c>png</c>, <c>musicxml</c>, <c>midi</c> or <c>wav</c>.</param>
public sealed record FileDocument(string Path, string Kind);

/// <summary>Something to mend in a lesson.</summary>
/// <param name="Line">The line, from 1; 1 for the file as a whole.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Severity"><c>error</c> or <c>warning</c>.</param>
/// <param name="Message">What is wrong and what was expected.</param>
public sealed record DiagnosticDocument(int Line, int Column, string Severity, string Message)
{
    internal static DiagnosticDocument Of(Diagnostic found) =>
        new(
            Math.Max(1, found.Line),
            Math.Max(1, found.Column),
            found.Severity == Lessons.Severity.Error ? "error" : "warning",
            found.Message
        );
}
