using Fretloom.Pages.Pdf;

namespace Fretloom.Pages.Documents;

/// <summary>What is made of a lesson.</summary>
/// <param name="Folder">The folder for the files; made when it is not there.</param>
public sealed record BuildOptions(string Folder)
{
    /// <summary>What is made when nothing is said: PDF, HTML and SVG, and of exercises MusicXML and MIDI.</summary>
    public static ValueList<HandoutFormat> DefaultFormats { get; } =
    [HandoutFormat.Pdf, HandoutFormat.Html, HandoutFormat.Svg, HandoutFormat.MusicXml, HandoutFormat.Midi];

    /// <summary>The kinds of files.</summary>
    public ValueList<HandoutFormat> Formats { get; init; } = DefaultFormats;

    /// <summary>The keys.</summary>
    public KeyChoice Keys { get; init; } = KeyChoice.Home;

    /// <summary>The paper.</summary>
    public Paper Paper { get; init; }

    /// <summary>Whether the PDF is the large-print edition.</summary>
    public bool IsLargePrint { get; init; }

    /// <summary>Whether a lesson with errors is made all the same, with the errors in their place.</summary>
    public bool IsKeepGoing { get; init; }
}

/// <summary>A file that was made.</summary>
/// <param name="Path">Where it is: the folder asked for, and its name.</param>
/// <param name="Kind"><c>pdf</c>, <c>html</c>, <c>svg</c>, <c>png</c>, <c>musicxml</c>, <c>midi</c> or <c>wav</c>.</param>
public sealed record BuiltFile(string Path, string Kind);

/// <summary>What came of a build.</summary>
/// <param name="Files">The files, in the order they were made; empty when nothing was written.</param>
/// <param name="Diagnostics">What the author should know, in the order of the lesson.</param>
public sealed record BuildResult(ValueList<BuiltFile> Files, ValueList<Lessons.Diagnostic> Diagnostics)
{
    /// <summary>Whether there is an error, in the lesson or in writing the files.</summary>
    public bool HasErrors => Diagnostics.Any(found => found.Severity == Lessons.Severity.Error);
}

/// <summary>How far a build has come.</summary>
/// <param name="Done">Files made so far.</param>
/// <param name="Total">Files to make.</param>
/// <param name="Name">The name of the file made last.</param>
public readonly record struct BuildProgress(int Done, int Total, string Name);
