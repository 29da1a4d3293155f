using Fretloom.Exhibits;
using Fretloom.Lessons.Syntax;
using Fretloom.Neck;
using Fretloom.Sentences;

namespace Fretloom.Lessons;

/// <summary>Hands sentences in a lesson to the one parser of sentences, and puts its findings in their place.</summary>
internal static class SentenceReader
{
    /// <summary>Reads the sentence of a show block.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="defaults">What it may leave unsaid.</param>
    /// <param name="blockOffset">Where the block begins, for a sentence that is missing.</param>
    /// <param name="found">Takes the findings.</param>
    /// <param name="memory">What was read before; null for nothing.</param>
    /// <returns>The sentence, or null when there are errors.</returns>
    public static PlacedSentence? Read(
        PlacedText text,
        ShowDefaults defaults,
        int blockOffset,
        DiagnosticList found,
        LessonMemory? memory
    )
    {
        if (string.IsNullOrWhiteSpace(text.Text))
        {
            found.Error(
                blockOffset,
                "The block is empty; write a sentence such as 'the notes of the key, frets 0-12'."
            );
            return null;
        }

        var result = memory?.ReadShow(text.Text, defaults) ?? ShowParser.Parse(text.Text, defaults.Instrument);
        Report(result.Errors, text, found);

        return result.IsRead ? new PlacedSentence(result.Value, PlaceOf) : null;

        int PlaceOf(ShowPhrase part) =>
            text.OffsetOf(
                ShowParser.PlaceOf(text.Text, part)?.Column - 1 ?? text.Text.Length - text.Text.TrimStart().Length
            );
    }

    /// <summary>Reads the sentence of a play block.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="defaults">What it may leave unsaid.</param>
    /// <param name="blockOffset">Where the block begins, for a sentence that is missing.</param>
    /// <param name="found">Takes the findings.</param>
    /// <param name="memory">What was read before; null for nothing.</param>
    /// <returns>The sentence, or null when there are errors.</returns>
    public static PlacedPlay? ReadPlay(
        PlacedText text,
        ShowDefaults defaults,
        int blockOffset,
        DiagnosticList found,
        LessonMemory? memory
    )
    {
        if (string.IsNullOrWhiteSpace(text.Text))
        {
            found.Error(
                blockOffset,
                "The block is empty; write a sentence such as 'the scale, up and down, in eighths, at 72'."
            );
            return null;
        }

        var result = memory?.ReadPlay(text.Text, defaults) ?? PlayParser.Parse(text.Text, defaults.Instrument);
        Report(result.Errors, text, found);

        return result.IsRead ? new PlacedPlay(result.Value, PlaceOf) : null;

        int PlaceOf(PlayError? error)
        {
            var place =
                (error?.Played is { } played ? PlayParser.PlaceOf(text.Text, played) : null)
                ?? (error?.Shown is { } shown ? PlayParser.PlaceOf(text.Text, shown) : null);
            return text.OffsetOf(place?.Column - 1 ?? text.Text.Length - text.Text.TrimStart().Length);
        }
    }

    /// <summary>Reads the sentence of a claim block.</summary>
    /// <param name="text">The sentence.</param>
    /// <param name="unsaid">What it may leave unsaid.</param>
    /// <param name="blockOffset">Where the block begins, for a sentence that is missing.</param>
    /// <param name="found">Takes the findings.</param>
    /// <returns>The claim, or null when there are errors.</returns>
    public static PlacedClaim? ReadClaim(PlacedText text, ClaimDefaults unsaid, int blockOffset, DiagnosticList found)
    {
        if (string.IsNullOrWhiteSpace(text.Text))
        {
            found.Error(
                blockOffset,
                "The block is empty; write a claim such as 'In every major key, there are exactly 3 full frets.'"
            );
            return null;
        }

        var result = ClaimParser.Parse(text.Text, unsaid);
        Report(result.Errors, text, found);

        return result.IsRead
            ? new PlacedClaim(result.Value, Start(), text.OffsetOf(text.Text.TrimEnd().Length) - Start())
            : null;

        int Start() => text.OffsetOf(text.Text.Length - text.Text.TrimStart().Length);
    }

    private static void Report(IEnumerable<SentenceError> errors, PlacedText text, DiagnosticList found)
    {
        foreach (var error in errors)
        {
            var (start, length) = Placed(error.Column, error.Length);
            var repair = error.Repair is { } mended ? Repaired(mended) : null;
            found.Error(start, length, Capital(error.Message), repair);
        }

        LessonRepair Repaired(SentenceRepair repair)
        {
            var (start, length) = Placed(repair.Column, repair.Length);
            return new LessonRepair(start, length, repair.Text);
        }

        // A sentence may go on in the next line, which may be indented.
        (int Start, int Length) Placed(int column, int length)
        {
            var start = text.OffsetOf(column - 1);
            return (start, length == 0 ? 0 : text.OffsetOf(column - 1 + length) - start);
        }
    }

    /// <summary>Reads words that are no whole sentence.</summary>
    /// <param name="result">What the parser made of them.</param>
    /// <param name="offset">Where they stand.</param>
    /// <param name="before">How many characters the parser was given before them.</param>
    /// <param name="found">Takes the findings.</param>
    /// <returns>What they say, or the default when there are errors.</returns>
    public static T? Take<T>(SentenceResult<T> result, int offset, int before, DiagnosticList found)
        where T : notnull
    {
        foreach (var error in result.Errors)
        {
            found.Error(offset + Math.Max(0, error.Column - 1 - before), Capital(error.Message));
        }

        return result.Value;
    }

    /// <summary>A message as it stands in a list of findings: it begins with a capital letter and ends as a sentence does.</summary>
    public static string Capital(string message) =>
        char.ToUpperInvariant(message[0]) + message[1..] + (message[^1] is '?' or '.' ? "" : ".");
}
