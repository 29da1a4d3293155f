namespace Fretloom.Lessons.Syntax;

/// <summary>A stretch of running text.</summary>
public abstract record Inline
{
    private Inline() { }

    /// <summary>Characters as they are to be read.</summary>
    public sealed record Text(string Characters) : Inline;

    /// <summary>Stressed text, set in italics.</summary>
    public sealed record Emphasis(ValueList<Inline> Content) : Inline;

    /// <summary>Strongly stressed text, set in bold.</summary>
    public sealed record Strong(ValueList<Inline> Content) : Inline;

    /// <summary>Characters to be typed as they stand.</summary>
    public sealed record Code(string Characters) : Inline;

    /// <summary>A link; the address has been checked: it is http, https or mailto.</summary>
    public sealed record Link(string Address, ValueList<Inline> Content) : Inline;

    /// <summary>A box to tick with a pencil.</summary>
    public sealed record Checkbox(bool IsTicked) : Inline;

    /// <summary>The end of a line that the author asked for.</summary>
    public sealed record LineBreak : Inline;

    /// <summary>Words that depend on the key of the lesson: <c>{chord V7}</c>. A resolved lesson has none.</summary>
    public sealed record InKey(KeyWords Words) : Inline;

    /// <summary>The characters of some running text, without what sets them off.</summary>
    public static string PlainText(ValueList<Inline> content) => string.Concat(content.Select(Plain));

    private static string Plain(Inline inline) =>
        inline switch
        {
            Text text => text.Characters,
            Code code => code.Characters,
            Emphasis emphasis => PlainText(emphasis.Content),
            Strong strong => PlainText(strong.Content),
            Link link => PlainText(link.Content),
            InKey inKey => inKey.Words.ToString(),
            LineBreak => " ",
            _ => "",
        };
}
