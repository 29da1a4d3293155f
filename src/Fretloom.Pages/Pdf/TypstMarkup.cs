using System.Globalization;
using System.Text;

namespace Fretloom.Pages.Pdf;

/// <summary>
/// A piece of Typst source that is safe to set. Text only gets in through <see cref="Text"/> and its like, which
/// write it as string literals, so no text can turn into markup or code.
/// </summary>
/// <remarks>The default value is the empty piece. Equality is that of the source.</remarks>
/// <example>
/// <code>
/// var body = TypstMarkup.Heading(2, TypstMarkup.Text("Where B♭ lies"))
///     + TypstMarkup.Paragraph(TypstMarkup.Text("Look at ") + TypstMarkup.Strong(TypstMarkup.Text("fret 6")) + TypstMarkup.Text("."));
/// </code>
/// </example>
public readonly partial record struct TypstMarkup
{
    private readonly string? source;

    private TypstMarkup(string source) => this.source = source;

    /// <summary>No text at all.</summary>
    public static TypstMarkup Empty => default;

    /// <summary>Whether there is nothing in it.</summary>
    public bool IsEmpty => string.IsNullOrEmpty(source);

    /// <summary>One piece after the other. The named twin is <see cref="Join"/>.</summary>
    public static TypstMarkup operator +(TypstMarkup left, TypstMarkup right) => new(left.source + right.source);

    /// <summary>All pieces, one after the other.</summary>
    public static TypstMarkup Join(IEnumerable<TypstMarkup> pieces) => new(string.Concat(pieces));

    /// <summary>The Typst source.</summary>
    public override string ToString() => source ?? "";

    /// <summary>Plain text. Line ends and tabs count as spaces; other control characters are left out.</summary>
    public static TypstMarkup Text(string text) => text.Length == 0 ? Empty : new($"#{Literal(OneLine(text))};");

    /// <summary>Text that is set in the sans face, for names of keys, chords and files.</summary>
    public static TypstMarkup Code(string text) => new($"#raw({Literal(OneLine(text))});");

    /// <summary>Lines that keep their breaks and spaces.</summary>
    public static TypstMarkup CodeBlock(string text) =>
        Block($"raw(block: true, {Literal(text.ReplaceLineEndings("\n").TrimEnd('\n'))})");

    /// <summary>Emphasis, set in italics (upright inside italics).</summary>
    public static TypstMarkup Emphasis(TypstMarkup content) => new($"#emph{content.Bracketed};");

    /// <summary>Strong emphasis, set semibold.</summary>
    public static TypstMarkup Strong(TypstMarkup content) => new($"#strong{content.Bracketed};");

    /// <summary>Small type in the sans face, for what stands beside the text (handout template).</summary>
    public static TypstMarkup Small(TypstMarkup content) => new($"#small{content.Bracketed};");

    /// <summary>A box to tick with a pencil.</summary>
    public static TypstMarkup Checkbox(bool isTicked) => new($"#checkbox({(isTicked ? "true" : "false")});");

    /// <summary>A line break inside a paragraph.</summary>
    public static TypstMarkup LineBreak => new("#linebreak();");

    /// <summary>
    /// A link. Only absolute <c>http</c>, <c>https</c> and <c>mailto</c> addresses and the names of PDF files in the same
    /// folder, escaped as in addresses, become links; for any other the content alone is returned.
    /// </summary>
    public static TypstMarkup Link(string address, TypstMarkup content)
    {
        var isOnTheWeb =
            Uri.TryCreate(address, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https" or "mailto";
        var isBeside =
            address.EndsWith(".pdf", StringComparison.Ordinal)
            && address == Uri.EscapeDataString(Uri.UnescapeDataString(address));
        var target =
            isOnTheWeb ? uri!.AbsoluteUri
            : isBeside ? address
            : null;
        return target is null ? content : new($"#link({Literal(target)}){content.Bracketed};");
    }

    internal string Bracketed => $"[{source}]";

    internal string OrNone => IsEmpty ? "none" : Bracketed;

    internal static TypstMarkup Block(string call) => new($"\n\n#{call};\n\n");

    /// <summary>Writes any text as a Typst string literal.</summary>
    internal static string Literal(string text)
    {
        var literal = new StringBuilder("\"", text.Length + 2);
        foreach (var rune in text.EnumerateRunes())
        {
            _ = rune.Value switch
            {
                '"' => literal.Append("\\\""),
                '\\' => literal.Append("\\\\"),
                '\n' => literal.Append("\\n"),
                _ when Rune.IsControl(rune) || Rune.GetUnicodeCategory(rune) == UnicodeCategory.OtherNotAssigned =>
                    literal.Append(CultureInfo.InvariantCulture, $"\\u{{{rune.Value:x}}}"),
                _ => literal.Append(rune.ToString()),
            };
        }

        return literal.Append('"').ToString();
    }

    private static string OneLine(string text)
    {
        var line = new StringBuilder(text.Length);
        foreach (var rune in text.ReplaceLineEndings("\n").EnumerateRunes())
        {
            _ =
                rune.Value is '\n' or '\t' ? line.Append(' ')
                : Rune.IsControl(rune) ? line
                : line.Append(rune.ToString());
        }

        return line.ToString();
    }
}
