namespace Fretloom.Pages.Pdf;

/// <summary>A source that could not be set. What a teacher writes never causes this: it is escaped before.</summary>
public sealed class TypstException : Exception
{
    internal TypstException(IReadOnlyList<TypstDiagnostic> diagnostics)
        : base(diagnostics.Count == 0 ? "The typesetter failed without saying why." : string.Join('\n', diagnostics)) =>
        Diagnostics = diagnostics;

    /// <summary>What the typesetter said, in its order.</summary>
    public IReadOnlyList<TypstDiagnostic> Diagnostics { get; }
}
