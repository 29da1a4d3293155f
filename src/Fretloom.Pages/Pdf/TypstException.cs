namespace Fretloom.Pages.Pdf;

/// <summary>A source that could not be set, which nothing that a teacher writes causes: it is escaped before. Or the typesetter could not be started.</summary>
public sealed class TypstException : Exception
{
    internal TypstException(IReadOnlyList<TypstDiagnostic> diagnostics)
        : base(diagnostics.Count == 0 ? "The typesetter failed without saying why." : string.Join('\n', diagnostics)) =>
        Diagnostics = diagnostics;

    internal TypstException(string message, Exception cause)
        : base(message, cause) => Diagnostics = [];

    /// <summary>What the typesetter said, in its order.</summary>
    public IReadOnlyList<TypstDiagnostic> Diagnostics { get; }
}
