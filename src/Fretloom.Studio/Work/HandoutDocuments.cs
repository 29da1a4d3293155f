using Fretloom.Lessons;

namespace Fretloom.Studio.Work;

/// <summary>What handouts to make of a lesson.</summary>
/// <param name="Name">The name of the lesson's file.</param>
/// <param name="Text">The lesson as it is in the editor; null for the one in the folder.</param>
/// <param name="Formats">The kinds of files; null for PDF.</param>
/// <param name="Keys"><c>all</c> for twelve keys; null for one.</param>
/// <param name="Key">A key or a tonic; null for the lesson's own.</param>
/// <param name="Order">The order of all keys: <c>fourths</c>, <c>half-steps</c> or <c>fewest-moves</c>; null for fourths.</param>
/// <param name="Paper"><c>a4</c> or <c>letter</c>; null for A4.</param>
/// <param name="LargePrint">Whether PDFs are set in 18 point.</param>
internal sealed record HandoutRequest(
    string Name,
    string? Text = null,
    IReadOnlyList<string>? Formats = null,
    string? Keys = null,
    string? Key = null,
    string? Order = null,
    string? Paper = null,
    bool LargePrint = false
);

/// <summary>By what a job is known.</summary>
/// <param name="Id">Its name in addresses.</param>
internal sealed record HandoutTicket(string Id);

/// <summary>How far a job has come.</summary>
/// <param name="State"><c>working</c>, <c>done</c>, <c>stopped</c> or <c>failed</c>.</param>
/// <param name="Done">How many of <see cref="Of"/> are done: files, or per cent of a check.</param>
/// <param name="Of">How many there are in all; 0 when that is not known yet.</param>
/// <param name="What">What was done last.</param>
/// <param name="Diagnostics">What the lesson's author should know.</param>
/// <param name="File">The address of the file, or of all files in one ZIP; null before there is one.</param>
internal sealed record HandoutStatus(
    string State,
    int Done,
    int Of,
    string What,
    IReadOnlyList<FoundDocument> Diagnostics,
    string? File
);

/// <summary>Something to mend in a lesson.</summary>
/// <param name="Line">The line, from 1; 1 for the file as a whole.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Severity"><c>error</c> or <c>warning</c>.</param>
/// <param name="Message">What is wrong and what was expected.</param>
internal sealed record FoundDocument(int Line, int Column, string Severity, string Message)
{
    /// <summary>The document of a finding.</summary>
    public static FoundDocument Of(Diagnostic found) =>
        new(
            Math.Max(1, found.Line),
            Math.Max(1, found.Column),
            found.Severity == Lessons.Severity.Error ? "error" : "warning",
            found.Message
        );
}
