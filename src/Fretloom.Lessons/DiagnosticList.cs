namespace Fretloom.Lessons;

/// <summary>Collects findings while a text is read, and knows where its characters are.</summary>
internal sealed class DiagnosticList(SourceText source)
{
    private readonly List<Diagnostic> _found = [];

    /// <summary>Whether nothing was found so far.</summary>
    public bool IsEmpty => _found.Count == 0;

    /// <summary>Notes an error at a character, counted from 0.</summary>
    public void Error(int offset, string message) => Add(offset, Severity.Error, message);

    /// <summary>Notes a warning at a character, counted from 0.</summary>
    public void Warning(int offset, string message) => Add(offset, Severity.Warning, message);

    /// <summary>What was found, in the order of the text, each finding once.</summary>
    public ValueList<Diagnostic> InOrder() =>
        _found.Distinct().OrderBy(found => found.Line).ThenBy(found => found.Column).ToValueList();

    private void Add(int offset, Severity severity, string message)
    {
        var (line, column) = source.PlaceOf(offset);
        _found.Add(new Diagnostic(line, column, severity, message));
    }
}
