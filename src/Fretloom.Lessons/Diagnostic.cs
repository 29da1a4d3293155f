using System.Globalization;

namespace Fretloom.Lessons;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>The lesson can be built; something in it deserves a look.</summary>
    Warning,

    /// <summary>The lesson cannot be built as it stands.</summary>
    Error,
}

/// <summary>Something that a lesson's author should know.</summary>
/// <param name="Line">The line, counted from 1; 0 when the finding concerns the file as a whole.</param>
/// <param name="Column">The character in the line, counted from 1; 0 with line 0.</param>
/// <param name="Severity">Error or warning.</param>
/// <param name="Message">What is wrong, what was expected and, where there is one, a suggestion.</param>
public readonly record struct Diagnostic(int Line, int Column, Severity Severity, string Message)
{
    /// <summary>How many characters are concerned; 0 when that is not known, or when something is missing there.</summary>
    public int Length { get; init; }

    /// <summary>A change that mends it, or goes on beyond it; null for none.</summary>
    public LessonRepair? Repair { get; init; }

    /// <summary>An error about the file as a whole.</summary>
    public static Diagnostic OfFile(string message) => new(0, 0, Severity.Error, message);

    /// <summary>Line, column, severity and message, as compilers write them: <c>3:12: error: ...</c>.</summary>
    public override string ToString()
    {
        var severity = Severity == Severity.Error ? "error" : "warning";
        return Line == 0
            ? $"{severity}: {Message}"
            : string.Create(CultureInfo.InvariantCulture, $"{Line}:{Column}: {severity}: {Message}");
    }
}

/// <summary>Some characters of a lesson file and what to write in their place.</summary>
/// <param name="Start">Where they begin, counted from 0 in <see cref="SourceText.Text"/>.</param>
/// <param name="Length">How many there are; 0 to insert.</param>
/// <param name="Text">What to write.</param>
public sealed record LessonRepair(int Start, int Length, string Text);
