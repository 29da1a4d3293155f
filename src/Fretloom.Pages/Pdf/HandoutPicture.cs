using System.Globalization;

namespace Fretloom.Pages.Pdf;

/// <summary>A picture file as it is shown in a handout.</summary>
public sealed record HandoutPicture
{
    /// <summary>Says which picture.</summary>
    /// <param name="path">Path under which the file is handed to the compiler, such as <c>figures/neck.svg</c>.</param>
    /// <param name="alternativeText">What the picture says, for those who do not see it; not empty.</param>
    /// <param name="share">Part of the full width it takes, above 0 and up to 1. It is made smaller if the page is too low.</param>
    /// <exception cref="ArgumentException">The path or the alternative text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is not above 0 and up to 1.</exception>
    public HandoutPicture(string path, string alternativeText, double share = 1)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        ArgumentException.ThrowIfNullOrWhiteSpace(alternativeText);
        if (!(share > 0 && share <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(share),
                share,
                "A share of the width lies above 0 and up to 1."
            );
        }

        (Path, AlternativeText, Share) = (path, alternativeText, share);
    }

    /// <summary>Path of the file among those handed to the compiler.</summary>
    public string Path { get; }

    /// <summary>What the picture says in words.</summary>
    public string AlternativeText { get; }

    /// <summary>Part of the full width it takes, above 0 and up to 1.</summary>
    public double Share { get; }

    /// <summary>The width in points, instead of <see cref="Share"/>; null for that. Where there is less room, it is as wide as the room.</summary>
    public double? WidthPt { get; init; }

    /// <summary>Quiet words below it; empty for none.</summary>
    public string Note { get; init; } = "";

    /// <summary>Words below it for the sake of the hand, in small type; empty for none.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    internal string ToCall(TypstMarkup caption) => $"picture({Arguments}, caption: {caption.OrNone})";

    internal string Arguments =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Source}, share: {Share}, width: {Width}, note: {TypstMarkup.Text(Note).OrNone}, cautions: ({string.Concat(Cautions.Select(caution => TypstMarkup.Text(caution).Bracketed + ", "))})"
        );

    internal string ToAside(TypstMarkup words) => $"aside({Source}, width: {Width}, words: {words.OrNone})";

    private string Width => WidthPt is { } points ? FormattableString.Invariant($"{points}pt") : "none";

    private string Source =>
        $"{TypstMarkup.Literal("/" + Path.TrimStart('/'))}, alt: {TypstMarkup.Literal(AlternativeText)}";
}
