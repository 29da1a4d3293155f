using System.Buffers;
using Fretloom.Exhibits;
using Fretloom.Sentences;

namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>What a new lesson says at first.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Text">The whole text.</param>
internal sealed record NewLesson(string Title, string Text)
{
    // What means something to YAML.
    private static readonly SearchValues<char> Telling = SearchValues.Create(":#'\"{}[]&*!|>%@`");

    /// <summary>One that says nothing but a title.</summary>
    public static NewLesson Called(string title) => new(title, $"---\ntitle: {Quoted(title)}\n---\n\n");

    /// <summary>One that is begun with a block from what is seen: called after it, for its instrument and in its key.</summary>
    /// <param name="seen">What is seen.</param>
    /// <param name="fence">The block.</param>
    public static NewLesson With(Exhibit seen, string fence)
    {
        var title = char.ToUpperInvariant(seen.Name[0]) + seen.Name[1..];
        var instrument = seen.Map.Instrument;
        // A capo is said in the sentence.
        var about =
            ShowParser.ParseInstrument(instrument.ToString()).Value == instrument
                ? $"instrument: {Quoted(instrument.ToString())}\n"
                : "";
        return new(title, $"---\ntitle: {Quoted(title)}\n{about}key: {seen.Map.Key}\n---\n\n{fence.TrimEnd()}\n");
    }

    private static string Quoted(string words) =>
        !char.IsLetterOrDigit(words[0]) || words.AsSpan().ContainsAny(Telling)
            ? "'" + words.Replace("'", "''", StringComparison.Ordinal) + "'"
            : words;
}
