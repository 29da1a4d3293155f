using System.Text;
using Fretloom.Exercises;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Midi;
using Fretloom.Scores.MusicXml;
using Fretloom.Scores.Sound;
using Fretloom.Scores.Tab;

namespace Fretloom.Cli.Commands;

/// <summary>How an exercise is written to a file.</summary>
/// <param name="Sound">For <c>.wav</c>.</param>
/// <param name="Midi">For <c>.mid</c>.</param>
/// <param name="HasFingers">For <c>.txt</c>.</param>
/// <param name="Title">The heading, or null for the name of the exercise.</param>
/// <param name="Caption">Words below the heading, for <c>.pdf</c>; null for none.</param>
internal sealed record ScoreOptions(
    SoundOptions Sound,
    MidiOptions Midi,
    bool HasFingers,
    string? Title = null,
    string? Caption = null
);

/// <summary>Writes an exercise to a file; the kind follows the ending of the name.</summary>
internal static class ScoreFiles
{
    private delegate byte[] Writer(
        Exercise exercise,
        ScoreOptions options,
        IProgress<double> progress,
        Action<string> warn,
        CancellationToken stop
    );

    private static readonly Dictionary<string, Writer> Writers = new(StringComparer.OrdinalIgnoreCase)
    {
        [".musicxml"] = (exercise, _, _, _, _) => Encoding.UTF8.GetBytes(MusicXmlWriter.Write(exercise)),
        [".mxl"] = (exercise, _, _, _, _) => MxlFile.Write(exercise),
        [".mid"] = (exercise, options, _, _, _) => MidiWriter.Write(exercise, options.Midi),
        [".wav"] = (exercise, options, progress, _, stop) => WavFile.Of(exercise, options.Sound, progress, stop),
        [".svg"] = (exercise, _, _, _, _) => EngravedFiles.Svg(exercise),
        [".pdf"] = (exercise, options, _, warn, _) => EngravedFiles.Pdf(exercise, options.Caption, warn),
        [".txt"] = (exercise, options, _, _, _) =>
            Encoding.UTF8.GetBytes(TabText.Write(exercise, hasFingers: options.HasFingers || exercise.ShowsFingers)),
    };

    /// <summary>What is wrong with the name of a file; null when it is of a kind we write.</summary>
    public static string? WhyNot(string path) =>
        Writers.ContainsKey(Path.GetExtension(path))
            ? null
            : $"The file's name must end in .musicxml, .mxl, .mid, .wav, .svg, .pdf or .txt: '{path}'.";

    /// <summary>Writes one file, whole or not at all.</summary>
    /// <param name="exercise">What is written.</param>
    /// <param name="path">The file; its kind is known.</param>
    /// <param name="options">How.</param>
    /// <param name="warn">Told what is not as it should be in the file.</param>
    /// <param name="stop">Ends the work, and nothing is written.</param>
    /// <returns>Why nothing was written, or null.</returns>
    /// <exception cref="OperationCanceledException">The user stopped it.</exception>
    public static string? Write(
        Exercise exercise,
        string path,
        ScoreOptions options,
        Action<string> warn,
        CancellationToken stop
    )
    {
        var kind = Path.GetExtension(path);
        if (
            kind.Equals(".wav", StringComparison.OrdinalIgnoreCase)
            && (SoundRenderer.WhyTooLong(exercise) ?? options.Sound.WhyNotOn(exercise.Instrument)) is { } reason
        )
        {
            return reason;
        }

        if (FileProblem.WhyNot(path) is { } misnamed)
        {
            return misnamed;
        }

        try
        {
            using var files = new StagedFiles(Path.GetDirectoryName(Path.GetFullPath(path))!);
            files.Add(
                Path.GetFileName(path),
                ProgressBar.Over(
                    $"Writing {Path.GetFileName(path)}",
                    report => Writers[kind](exercise, options, ProgressBar.Share(report), warn, stop)
                )
            );
            stop.ThrowIfCancellationRequested();
            files.Publish();
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
