using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Scores.Engraving;

namespace Fretloom.Pages.Html;

/// <summary>Shows a lesson as its handout while it is written: worked out, drawn and written again is only what changed.</summary>
/// <remarks>
/// Reads no files. The same text gives the same HTML, whatever was shown before; the keys of the parts alone depend on it. For one thread at a time.
/// </remarks>
/// <example>
/// <code>
/// var preview = new LessonPreview();
/// var page = preview.Update("---\ntitle: One\nkey: D major\n---\nFind every D.\n");
/// </code>
/// </example>
public sealed class LessonPreview
{
    /// <summary>What a claim may take at most to be checked while the lesson is written, in nanoseconds on one thread: a tenth of a second. Ours, without source.</summary>
    public const long LongestCheck = 100_000_000;

    private readonly LessonMemory _memory = new(new ClaimChecks { PutOff = LongestCheck });
    private readonly KeptDrawings _drawings = new();
    private readonly KeptHtml _kept = new();
    private PreviewPart[] _parts = [];
    private int _lastKey;

    /// <summary>Engraves the exercises; null writes them as plain-text tablature. Another one counts from the next update on. What is awaited is asked for at each.</summary>
    public IEngraver? Engraver { get; set; }

    /// <summary>Shows the lesson as it now is.</summary>
    /// <param name="text">Its text; with errors, each is told in the place of what could not be read.</param>
    public PreviewPage Update(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var lesson = _memory.Parse(text);
        _parts = Named([.. Written(Pictured(lesson))]);
        return new PreviewPage(lesson, [.. _parts]);
    }

    /// <summary>
    /// What can be done ahead of a lesson, or of its beginning, so that the update that shows it has less to do: working it out, drawing it, writing
    /// it. Nothing is shown.
    /// </summary>
    /// <param name="text">Its text.</param>
    /// <returns>The steps, to be done one after another.</returns>
    public IReadOnlyList<Action> Steps(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        Lesson? lesson = null;
        PicturedLesson? pictured = null;
        return
        [
            () => lesson = _memory.Parse(text),
            () => pictured = Pictured(lesson!),
            () => _ = Written(pictured!).Count(),
        ];
    }

    private PicturedLesson Pictured(Lesson lesson) => new(lesson, engraver: Engraver, drawings: _drawings);

    private IEnumerable<(int Line, string Html)> Written(PicturedLesson pictured)
    {
        var html = new HtmlText();
        var end = 0;
        HtmlPage.WriteRunning(html, pictured.Lines);
        yield return (1, Next());
        HtmlPage.WriteTitle(html, pictured.Front, pictured.Lines);
        yield return (1, Next());
        foreach (var line in new BlockHtml(html, pictured, _kept).WriteParts(pictured.Blocks))
        {
            yield return (line, Next());
        }

        string Next()
        {
            var part = html.From(end);
            end = html.Length;
            return part;
        }
    }

    /// <summary>Gives each part the key of one that was the same before: from both ends as far as nothing changed, between them wherever there is one.</summary>
    private PreviewPart[] Named(List<(int Line, string Html)> written)
    {
        var most = Math.Min(_parts.Length, written.Count);
        var first = 0;
        while (first < most && _parts[first].Html == written[first].Html)
        {
            first++;
        }

        var last = 0;
        while (last < most - first && _parts[^(last + 1)].Html == written[^(last + 1)].Html)
        {
            last++;
        }

        var free = _parts[first..^last].ToLookup(part => part.Html, part => part.Key);
        var taken = new HashSet<int>();
        return
        [
            .. written.Select(
                (part, at) =>
                {
                    var key =
                        at < first ? _parts[at].Key
                        : at >= written.Count - last ? _parts[at - written.Count + _parts.Length].Key
                        : free[part.Html].FirstOrDefault(taken.Add);
                    return new PreviewPart(key > 0 ? key : ++_lastKey, part.Line, part.Html);
                }
            ),
        ];
    }
}
