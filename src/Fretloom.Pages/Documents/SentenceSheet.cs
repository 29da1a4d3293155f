using Fretloom.Exercises;
using Fretloom.Exhibits;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Engraving;
using Fretloom.Sentences;

namespace Fretloom.Pages.Documents;

/// <summary>A show or play sentence as a sheet to print: the page of a lesson that holds nothing else.</summary>
public abstract record SentenceSheet
{
    private SentenceSheet() { }

    /// <summary>The sentence with every default filled in.</summary>
    public abstract string Sentence { get; }

    /// <summary>The heading.</summary>
    public abstract string Title { get; }

    /// <summary>What was asked for and is not to be found, as a sentence, which stands on the sheet too; null when nothing is missing.</summary>
    public virtual string? WhatIsMissing => null;

    /// <summary>A name for its file, without ending: the title in small ASCII letters, digits and hyphens.</summary>
    public string FileName => Documents.FileName.Of(Title);

    /// <summary>Reads a sentence and works it out.</summary>
    /// <param name="text">
    /// A show or play sentence. Where it begins with neither word, it is what it can be read as, first of all something to show.
    /// </param>
    /// <param name="defaults">What to use where it says nothing.</param>
    /// <param name="error">What is wrong, where the sentence can be read furthest; null when there is a sheet.</param>
    /// <returns>The sheet, or null.</returns>
    public static SentenceSheet? Read(string text, ShowDefaults defaults, out SentenceError? error)
    {
        ArgumentNullException.ThrowIfNull(text);
        error = null;
        var isPlay = BeginsWith(text, "play");
        var shown = isPlay ? null : ShowQuestion.Answer(text, defaults);
        if (shown is { IsRead: true })
        {
            return new Shown(shown.Value);
        }

        var played = BeginsWith(text, "show") ? null : PlayQuestion.Answer(text, defaults);
        if (played is { IsRead: true })
        {
            return new Played(played.Value);
        }

        error = new[] { shown?.Errors[0], played?.Errors[0] }.OfType<SentenceError>().MaxBy(one => one.Column);
        return null;
    }

    /// <summary>Sets the sheet.</summary>
    /// <param name="options">How it is printed.</param>
    /// <param name="typst">The compiler, kept warm by the caller.</param>
    /// <param name="engraver">Engraves an exercise; null writes plain-text tablature.</param>
    /// <param name="warn">Told why it is plain-text tablature where the engraver failed; null for nobody.</param>
    /// <returns>The PDF. The same sentence gives the same bytes.</returns>
    /// <exception cref="TypstException">The typesetter cannot be started.</exception>
    public abstract byte[] ToPdf(
        PrintOptions options,
        TypstCompiler typst,
        IEngraver? engraver = null,
        Action<string>? warn = null
    );

    private static bool BeginsWith(string text, string word) =>
        text.AsSpan().TrimStart().StartsWith(word + " ", StringComparison.OrdinalIgnoreCase);

    private sealed record Shown(Exhibit Exhibit) : SentenceSheet
    {
        public override string Sentence => Exhibit.Sentence;

        public override string Title => Exhibit.Name;

        public override string? WhatIsMissing => Exhibit.WhatIsMissing;

        public override byte[] ToPdf(
            PrintOptions options,
            TypstCompiler typst,
            IEngraver? engraver,
            Action<string>? warn
        ) => PdfDocument.Of(Exhibit, options, typst);
    }

    private sealed record Played(Exercise Exercise) : SentenceSheet
    {
        public override string Sentence => Exercise.Sentence;

        public override string Title => Exercise.Name;

        public override byte[] ToPdf(
            PrintOptions options,
            TypstCompiler typst,
            IEngraver? engraver,
            Action<string>? warn
        ) => PdfDocument.Of(Exercise, options, typst, engraver, warn: warn);
    }
}
