namespace Fretloom.Pages.Pdf;

/// <summary>One thing the typesetter said about a source.</summary>
/// <param name="Path">File it speaks of, such as <c>/main.typ</c>; empty when it speaks of none.</param>
/// <param name="Line">Line, counted from 1; 0 when unknown.</param>
/// <param name="Column">Column, counted from 1; 0 when unknown.</param>
/// <param name="IsError">True for an error, false for a warning.</param>
/// <param name="Message">The typesetter's words.</param>
public sealed record TypstDiagnostic(string Path, int Line, int Column, bool IsError, string Message)
{
    /// <summary><c>path:line:column: error: message</c>.</summary>
    public override string ToString() => $"{Path}:{Line}:{Column}: {(IsError ? "error" : "warning")}: {Message}";
}
