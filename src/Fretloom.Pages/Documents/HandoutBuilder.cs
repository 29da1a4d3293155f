using System.Globalization;
using System.Text;
using Fretloom.Exercises;
using Fretloom.Lessons;
using Fretloom.Lessons.Syntax;
using Fretloom.Pages.Html;
using Fretloom.Pages.Pdf;
using Fretloom.Pages.Pictures;
using Fretloom.Pages.Png;
using Fretloom.Pages.Svg;
using Fretloom.Scores.Engraving;
using Fretloom.Scores.Midi;
using Fretloom.Scores.MusicXml;
using Fretloom.Scores.Sound;
using Fretloom.Theory;

namespace Fretloom.Pages.Documents;

/// <summary>Makes the files of lessons. The typesetter is started for the first PDF and kept for all others.</summary>
/// <remarks>The same lesson gives the same bytes. A build that fails or is stopped writes nothing; see <see cref="StagedFiles"/>.</remarks>
/// <example>
/// <code>
/// using var builder = new HandoutBuilder();
/// var result = builder.Build("lessons/straight-across.md", new BuildOptions("out") { Keys = KeyChoice.All(KeyOrder.Fourths) });
/// </code>
/// </example>
public sealed class HandoutBuilder : IDisposable
{
    private readonly TypstCompiler _typst = new();
    private readonly Engraver _engraver = new(EngravingCache.OfUser());
    private readonly Action<string, byte[]> _write;

    /// <summary>Makes a builder.</summary>
    public HandoutBuilder()
        : this(File.WriteAllBytes) { }

    /// <summary>Makes a builder that writes files its own way.</summary>
    internal HandoutBuilder(Action<string, byte[]> write) => _write = write;

    /// <summary>Makes the files of one lesson.</summary>
    /// <param name="path">The lesson file.</param>
    /// <param name="options">What to make, and where.</param>
    /// <param name="progress">Told after every file, on this thread; null for nobody.</param>
    /// <param name="checking">Told before that the share of the lesson's claims that are checked, 0 to 1, from any thread; null for nobody.</param>
    /// <param name="cancellation">Stops a check of a claim, or between two keys or files; nothing is then written.</param>
    /// <returns>The files and findings. A file or folder that cannot be read or written is a finding, never an exception.</returns>
    /// <exception cref="OperationCanceledException">The build was stopped.</exception>
    public BuildResult Build(
        string path,
        BuildOptions options,
        Action<BuildProgress>? progress = null,
        IProgress<double>? checking = null,
        CancellationToken cancellation = default
    )
    {
        // The typesetter and the engraver take long to start: they do so while the lesson is worked out.
        if (options.Formats.Contains(HandoutFormat.Pdf) && File.Exists(path))
        {
            _ = Task.Run(() => WarmUp(path), CancellationToken.None);
        }

        var checks = new ClaimChecks(Environment.ProcessorCount, checking, cancellation);
        var home = Lesson.LoadUnlessStopped(path, checks);
        var lessons = options.Keys.For(home).Select(home.InKey).ToList();
        var found = lessons.SelectMany(lesson => lesson.Diagnostics).Distinct().Concat(TooLong(lessons, options));
        var diagnostics = found.OrderBy(one => one.Line).ThenBy(one => one.Column).ToValueList();
        if (!home.IsText || (!options.IsKeepGoing && diagnostics.Any(one => one.Severity == Severity.Error)))
        {
            return new BuildResult([], diagnostics);
        }

        try
        {
            var print = new PrintOptions(options.Paper, options.IsLargePrint, Path.GetFileName(path));
            var drawn = new List<Lazy<PicturedLesson>>();
            var plans = lessons.Select(lesson =>
            {
                cancellation.ThrowIfCancellationRequested();
                return Plan(lesson, NameOf(path, lesson.Key, options.Keys), options, print, drawn, cancellation);
            });
            var overview = options.Keys.Order is { } order ? Overview(path, home, order, options, print) : [];
            var files = Write([.. plans.SelectMany(plan => plan), .. overview], options, progress, cancellation);
            return new BuildResult(files, [.. diagnostics, .. NotEngraved(drawn)]);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or TypstException)
        {
            return new BuildResult([], [.. diagnostics, Diagnostic.OfFile(Reason(problem, options.Folder))]);
        }
    }

    /// <summary>Ends the typesetter and the engraver.</summary>
    public void Dispose()
    {
        _typst.Dispose();
        _engraver.Dispose();
    }

    // Said once of each block: an exercise is not as long in every key.
    private static IEnumerable<Diagnostic> TooLong(IEnumerable<Lesson> lessons, BuildOptions options)
    {
        var heard = options.Formats.Contains(HandoutFormat.Wav) ? lessons.SelectMany(lesson => lesson.Exercises) : [];
        var found =
            from exercise in heard
            let reason = SoundRenderer.WhyTooLong(exercise.Played)
            where reason is not null
            select new Diagnostic(exercise.Line, 1, Severity.Error, reason);
        return found.DistinctBy(one => one.Line);
    }

    // The same is said once, at the first exercise it is true of.
    private static IEnumerable<Diagnostic> NotEngraved(IEnumerable<Lazy<PicturedLesson>> drawn)
    {
        var warnings =
            from pictured in drawn
            where pictured.IsValueCreated
            from exercise in pictured.Value.Exercises
            from warning in pictured.Value.PicturesOf(exercise).Warnings
            select new Diagnostic(exercise.Line, 1, Severity.Warning, warning + ".");
        return warnings.DistinctBy(one => one.Message);
    }

    // Whether an exercise has to be engraved anew is not known yet; most often one was just changed.
    private void WarmUp(string path)
    {
        _typst.WarmUp();
        if (File.ReadLines(path).Any(line => line.StartsWith("```play", StringComparison.Ordinal)))
        {
            _engraver.WarmUp();
        }
    }

    private ValueList<BuiltFile> Write(
        List<PlannedFile> plan,
        BuildOptions options,
        Action<BuildProgress>? progress,
        CancellationToken cancellation
    )
    {
        using var staged = new StagedFiles(options.Folder, _write);
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var printed = Printed(plan.Where(file => file.Kind == "pdf"), stop.Token);
        var others = plan.Where(file => file.Kind != "pdf").Select(file => (file.Name, file.Make));
        try
        {
            foreach (var ((name, make), at) in others.Concat(printed).Select((file, at) => (file, at)))
            {
                cancellation.ThrowIfCancellationRequested();
                staged.Add(name, make());
                progress?.Invoke(new BuildProgress(at + 1, plan.Count, name));
            }
        }
        finally
        {
            stop.Cancel();
        }

        cancellation.ThrowIfCancellationRequested();
        staged.Publish();
        return plan.Select(file => new BuiltFile(Path.Combine(options.Folder, file.Name), file.Kind)).ToValueList();
    }

    // One after another, while the other files are made.
    private static List<(string Name, Func<byte[]> Make)> Printed(IEnumerable<PlannedFile> plan, CancellationToken stop)
    {
        var printed = new List<(string Name, Func<byte[]> Make)>();
        var before = Task.CompletedTask;
        foreach (var file in plan)
        {
            var last = before;
            var made = Task.Run(
                async () =>
                {
                    await last;
                    stop.ThrowIfCancellationRequested();
                    return file.Make();
                },
                stop
            );
            printed.Add((file.Name, () => made.GetAwaiter().GetResult()));
            before = made;
        }

        return printed;
    }

    private IEnumerable<PlannedFile> Plan(
        Lesson lesson,
        string name,
        BuildOptions options,
        PrintOptions print,
        List<Lazy<PicturedLesson>> drawn,
        CancellationToken cancellation
    )
    {
        // Drawn when the first file needs it, and shared by all that show pictures at the same width.
        var upright = new Lazy<PicturedLesson>(() => new PicturedLesson(lesson, engraver: _engraver));
        var printed = options.IsLargePrint
            ? new Lazy<PicturedLesson>(() => PdfDocument.Pictured(lesson, print, _engraver))
            : upright;
        var alone = new Lazy<PicturedLesson>(() => new PicturedLesson(lesson, areAlone: true, engraver: _engraver));
        drawn.AddRange([upright, printed]);
        var isOnScreen = options.Formats.Contains(HandoutFormat.Html);
        foreach (var format in options.Formats.Distinct())
        {
            var files = format switch
            {
                HandoutFormat.Pdf => [new(name + ".pdf", "pdf", Pdf)],
                HandoutFormat.Html =>
                [
                    new(name + ".html", "html", () => Utf8(HtmlPage.Of(upright.Value, print.SourceName, print.Paper))),
                ],
                HandoutFormat.Svg =>
                [
                    .. Pictures(alone.Value, name, "svg", svg => Utf8(svg)),
                    .. Systems(upright.Value, name),
                ],
                HandoutFormat.Png => Pictures(alone.Value, name, "png", svg => SvgRasteriser.ToPng(svg)),
                HandoutFormat.MusicXml => Exercises(
                    lesson.Exercises,
                    name,
                    "musicxml",
                    "musicxml",
                    one => Utf8(MusicXmlWriter.Write(one))
                ),
                HandoutFormat.Midi => Exercises(
                    lesson.Exercises,
                    name,
                    "mid",
                    "midi",
                    one => MidiWriter.Write(one, new MidiOptions())
                ),
                HandoutFormat.Wav => Exercises(
                    lesson.Exercises.Where(one => SoundRenderer.WhyTooLong(one.Played) is null),
                    name,
                    "wav",
                    "wav",
                    one => WavFile.Of(one, new SoundOptions(), cancellation: cancellation)
                ),
                _ => throw new ArgumentOutOfRangeException(nameof(options)),
            };
            foreach (var file in files)
            {
                yield return file;
            }
        }

        // The typesetter and the engraver take turns: what the web page needs is engraved first, so that it is made meanwhile.
        byte[] Pdf()
        {
            if (isOnScreen)
            {
                upright.Value.Engrave();
            }

            return PdfDocument.Of(printed.Value, print, _typst);
        }
    }

    // All keys on one page, as web page and PDF where the lessons are made so.
    private IEnumerable<PlannedFile> Overview(
        string path,
        Lesson home,
        KeyOrder order,
        BuildOptions options,
        PrintOptions print
    )
    {
        var name = BaseName(path) + "-keys";
        var kinds = new[] { "html", "pdf" }
            .Where(kind =>
                options.Formats.Any(format => format.ToString().Equals(kind, StringComparison.OrdinalIgnoreCase))
            )
            .ToList();
        var overview = new Lazy<KeysOverview>(() =>
            new KeysOverview(home, options.Keys.For(home), order, key => NameOf(path, key, options.Keys))
        );
        return kinds.Select(kind => new PlannedFile(
            $"{name}.{kind}",
            kind,
            kind == "pdf"
                ? () => PdfDocument.Of(overview.Value.Page(["pdf"]), print, _typst)
                : () => Utf8(HtmlPage.Of(overview.Value.Page(kinds), print.SourceName, print.Paper))
        ));
    }

    private static IEnumerable<PlannedFile> Pictures(
        PicturedLesson pictured,
        string name,
        string kind,
        Func<string, byte[]> encode
    ) =>
        pictured
            .NamedPictures(name)
            .Select(named => new PlannedFile(
                $"{named.Name}.{kind}",
                kind,
                () => encode(SvgWriter.Write(named.Picture.Drawing, SvgTheme.Print))
            ));

    private static IEnumerable<PlannedFile> Exercises(
        IEnumerable<Block.Exercise> exercises,
        string name,
        string ending,
        string kind,
        Func<Exercise, byte[]> encode
    ) =>
        exercises.Select(exercise => new PlannedFile(
            string.Create(CultureInfo.InvariantCulture, $"{name}-exercise-{exercise.Number}.{ending}"),
            kind,
            () => encode(exercise.Played)
        ));

    private static IEnumerable<PlannedFile> Systems(PicturedLesson pictured, string name) =>
        from exercise in pictured.Exercises
        from drawn in pictured.PicturesOf(exercise).Systems.Select((system, at) => (system, at))
        let place = drawn.at == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"-{drawn.at + 1}")
        select new PlannedFile(
            string.Create(CultureInfo.InvariantCulture, $"{name}-exercise-{exercise.Number}{place}.svg"),
            "svg",
            () => Utf8(drawn.system.Svg)
        );

    private static byte[] Utf8(string text) => Encoding.UTF8.GetBytes(text);

    private static string NameOf(string path, Key key, KeyChoice keys) =>
        keys.IsNamed ? $"{BaseName(path)}-in-{InFileName(key.ToString())}" : BaseName(path);

    private static string BaseName(string path)
    {
        var name = Path.GetFileNameWithoutExtension(path);
        return name.Length == 0 ? "lesson" : name;
    }

    // A sharp sign would have to be written %23 in web addresses.
    private static string InFileName(string key) =>
        key.Replace("#", "-sharp", StringComparison.Ordinal).Replace(' ', '-');

    private static string Reason(Exception problem, string folder) =>
        problem switch
        {
            TypstException => $"The PDF could not be set: {problem.Message}",
            UnauthorizedAccessException => $"Nothing was written: this user may not write into '{folder}'.",
            _ => $"Nothing was written into '{folder}': {problem.Message}",
        };

    private sealed record PlannedFile(string Name, string Kind, Func<byte[]> Make);
}
