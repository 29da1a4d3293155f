using System.Globalization;
using System.Text;
using Fretloom.Exercises;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Engraving;
using Fretloom.Scores.Midi;
using Fretloom.Scores.MusicXml;
using Fretloom.Scores.Sound;
using Fretloom.Scores.Tab;

namespace Fretloom.Pages.Documents;

/// <summary>How an exercise is written to a file.</summary>
/// <param name="Sound">For <c>.wav</c>.</param>
/// <param name="Midi">For <c>.mid</c>.</param>
/// <param name="HasFingers">For <c>.txt</c>.</param>
/// <param name="Caption">Words below the heading, for <c>.pdf</c>; null for none.</param>
public sealed record ScoreOptions(SoundOptions Sound, MidiOptions Midi, bool HasFingers = false, string? Caption = null)
{
    /// <summary>Nothing said.</summary>
    public static ScoreOptions Default { get; } = new(new SoundOptions(), new MidiOptions());
}

/// <summary>An exercise as a file of its own; the kind follows the ending of the name.</summary>
public static class ExerciseFile
{
    // The text of an A4 page.
    private const double WidthMm = 170;

    private delegate byte[] Writer(
        Exercise exercise,
        ScoreOptions options,
        IProgress<double>? progress,
        Action<string>? warn,
        CancellationToken stop
    );

    private static readonly Dictionary<string, Writer> Writers = new(StringComparer.OrdinalIgnoreCase)
    {
        [".musicxml"] = (exercise, _, _, _, _) => Encoding.UTF8.GetBytes(MusicXmlWriter.Write(exercise)),
        [".mxl"] = (exercise, _, _, _, _) => MxlFile.Write(exercise),
        [".mid"] = (exercise, options, _, _, _) => MidiWriter.Write(exercise, options.Midi),
        [".wav"] = (exercise, options, progress, _, stop) => WavFile.Of(exercise, options.Sound, progress, stop),
        [".svg"] = (exercise, _, _, _, _) => Svg(exercise),
        [".pdf"] = (exercise, options, _, warn, _) => Pdf(exercise, options.Caption, warn),
        [".txt"] = (exercise, options, _, _, _) =>
            Encoding.UTF8.GetBytes(TabText.Write(exercise, hasFingers: options.HasFingers || exercise.ShowsFingers)),
    };

    /// <summary>What is wrong with the name of a file; null when it is of a kind we write.</summary>
    public static string? WhyNot(string path) =>
        Writers.ContainsKey(Path.GetExtension(path))
            ? null
            : $"The file's name must end in .musicxml, .mxl, .mid, .wav, .svg, .pdf or .txt: '{path}'.";

    /// <summary>Why an exercise cannot be written as a file of this kind; null when it can.</summary>
    public static string? WhyNot(Exercise exercise, string path, ScoreOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return Path.GetExtension(path).Equals(".wav", StringComparison.OrdinalIgnoreCase)
            ? SoundRenderer.WhyTooLong(exercise) ?? options.Sound.WhyNotOn(exercise.Instrument)
            : null;
    }

    /// <summary>The content of the file.</summary>
    /// <param name="exercise">What is written; nothing speaks against it.</param>
    /// <param name="path">The name; its kind is known.</param>
    /// <param name="options">How.</param>
    /// <param name="progress">Told the share of the sound that is made, 0 to 1; null for nobody.</param>
    /// <param name="warn">Told what is not as it should be in the file; null for nobody.</param>
    /// <param name="stop">Ends the making of sound.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <exception cref="IOException">The engraver's or the typesetter's files are missing, or the exercise could not be engraved.</exception>
    /// <exception cref="TypstException">The typesetter cannot be started.</exception>
    public static byte[] Of(
        Exercise exercise,
        string path,
        ScoreOptions options,
        IProgress<double>? progress = null,
        Action<string>? warn = null,
        CancellationToken stop = default
    ) => Writers[Path.GetExtension(path)](exercise, options, progress, warn, stop);

    // One picture: the systems one below the other.
    private static byte[] Svg(Exercise exercise)
    {
        using var engraver = new Engraver(EngravingCache.OfUser());
        var systems = engraver.Engrave(exercise, WidthMm);
        if (systems.Warning is not null)
        {
            throw new IOException(
                "it could not be engraved; a .txt file holds its tablature, and a .pdf file says why"
            );
        }

        var (height, body) = (0.0, new StringBuilder());
        foreach (var system in systems.Systems)
        {
            body.Append(CultureInfo.InvariantCulture, $"<svg y=\"{height:0.##}mm\"{system.Svg["<svg".Length..]}\n");
            height += system.HeightMm;
        }

        return Encoding.UTF8.GetBytes(
            string.Create(
                CultureInfo.InvariantCulture,
                $"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{WidthMm}mm\" height=\"{height:0.##}mm\">\n{body}</svg>\n"
            )
        );
    }

    private static byte[] Pdf(Exercise exercise, string? caption, Action<string>? warn)
    {
        using var typst = new TypstCompiler();
        using var engraver = new Engraver(EngravingCache.OfUser());
        return PdfDocument.Of(exercise, new PrintOptions(), typst, engraver, caption, warn);
    }
}
