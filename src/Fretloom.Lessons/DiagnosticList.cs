namespace Fretloom.Lessons;

/// <summary>Collects findings while a text is read, and knows where its characters are.</summary>
internal sealed class DiagnosticList(SourceText source)
{
    private readonly List<Diagnostic> _found = [];

    /// <summary>Whether nothing was found so far.</summary>
    public bool IsEmpty => _found.Count == 0;

    /// <summary>How many findings there are so far.</summary>
    public int Count => _found.Count;

    /// <summary>What the errors say that were found after some others, as one text.</summary>
    /// <param name="count">How many others.</param>
    public string ErrorsAfter(int count) =>
        string.Join(
            ' ',
            _found
                .Skip(count)
                .Where(found => found.Severity == Severity.Error)
                .Select(found => found.Message)
                .Distinct()
        );

    /// <summary>The line of the first error that was found after some others, else of the first warning, counted from 1.</summary>
    /// <param name="count">How many others; fewer than there are.</param>
    public int LineAfter(int count) => _found.Skip(count).MaxBy(found => found.Severity).Line;

    /// <summary>Notes an error at a character, counted from 0.</summary>
    public void Error(int offset, string message) => Add(offset, Severity.Error, message);

    /// <summary>Notes an error about some characters, the first counted from 0.</summary>
    /// <param name="offset">The first.</param>
    /// <param name="length">How many.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="repair">What mends it; null for nothing.</param>
    public void Error(int offset, int length, string message, LessonRepair? repair) =>
        Add(offset, Severity.Error, message, length, repair);

    /// <summary>Notes that a word is not one of those known, with the nearest of them as the change that mends it.</summary>
    /// <param name="offset">Where the word begins.</param>
    /// <param name="word">The word.</param>
    /// <param name="known">What could have been written, in small letters.</param>
    /// <param name="before">What is said before the suggestion.</param>
    /// <param name="after">What is said after it.</param>
    /// <returns>All that is said.</returns>
    public string Misspelt(int offset, string word, IReadOnlyCollection<string> known, string before, string after = "")
    {
        var message = $"{before} {Suggestion.For(word, known)}{after}";
        var nearest = Suggestion.Nearest(word, known);
        Error(offset, word.Length, message, nearest is null ? null : new LessonRepair(offset, word.Length, nearest));
        return message;
    }

    /// <summary>Notes a warning at a character, counted from 0.</summary>
    public void Warning(int offset, string message) => Add(offset, Severity.Warning, message);

    /// <summary>What was found, in the order of the text, each finding once.</summary>
    public ValueList<Diagnostic> InOrder() =>
        _found.Distinct().OrderBy(found => found.Line).ThenBy(found => found.Column).ToValueList();

    private void Add(int offset, Severity severity, string message, int length = 0, LessonRepair? repair = null)
    {
        var (line, column) = source.PlaceOf(offset);
        _found.Add(new Diagnostic(line, column, severity, message) { Length = length, Repair = repair });
    }
}
