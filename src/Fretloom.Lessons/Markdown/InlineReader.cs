using Fretloom.Lessons.Syntax;
using Markdig.Extensions.SmartyPants;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax.Inlines;
using Inline = Fretloom.Lessons.Syntax.Inline;

namespace Fretloom.Lessons.Markdown;

/// <summary>Running text of Markdown -> our own tree.</summary>
internal sealed class InlineReader(DiagnosticList found, string language)
{
    /// <summary>The finding about raw HTML.</summary>
    public const string HtmlIsText =
        "HTML is not passed on: it is printed as it is typed. Markdown says the same, such as **bold** or *stressed*.";

    /// <summary>Reads the text of a heading, a paragraph or a cell; null is empty.</summary>
    public ValueList<Inline> Read(ContainerInline? container) => Curled(Read(container, 0), new Quotes(language));

    private static ValueList<Inline> Curled(ValueList<Inline> content, Quotes quotes) =>
        content.Select(inline => Curled(inline, quotes)).ToValueList();

    private static Inline Curled(Inline inline, Quotes quotes)
    {
        switch (inline)
        {
            case Inline.Text text:
                return new Inline.Text(quotes.Next(text.Characters));
            case Inline.Emphasis emphasis:
                return new Inline.Emphasis(Curled(emphasis.Content, quotes));
            case Inline.Strong strong:
                return new Inline.Strong(Curled(strong.Content, quotes));
            case Inline.Link link:
                return link with { Content = Curled(link.Content, quotes) };
            case Inline.LineBreak:
                quotes.Next(" ");
                return inline;
            default:
                quotes.Pass();
                return inline;
        }
    }

    private ValueList<Inline> Read(ContainerInline? container, int depth)
    {
        if (depth > Block.MaxDepth)
        {
            found.Error(container!.Span.Start, DepthCheck.TooDeep);
            return [];
        }

        var items = new List<Inline>();
        foreach (var inline in container ?? [])
        {
            foreach (var item in One(inline, depth))
            {
                Append(items, item);
            }
        }

        return items.ToValueList();
    }

    private ValueList<Inline> One(Markdig.Syntax.Inlines.Inline inline, int depth) =>
        inline switch
        {
            LiteralInline literal => [new Inline.Text(literal.Content.ToString())],
            HtmlEntityInline entity => [new Inline.Text(entity.Transcoded.ToString())],
            SmartyPant mark => [new Inline.Text(Typographic(mark))],
            CodeInline code => [new Inline.Code(code.Content)],
            LineBreakInline { IsHard: true } => [new Inline.LineBreak()],
            LineBreakInline => [new Inline.Text(" ")],
            EmphasisInline { DelimiterCount: >= 2 } strong => [new Inline.Strong(Read(strong, depth + 1))],
            EmphasisInline stressed => [new Inline.Emphasis(Read(stressed, depth + 1))],
            LinkInline { IsImage: true } image => Picture(image),
            LinkInline link => Link(link, link.Url, Read(link, depth + 1)),
            AutolinkInline { IsEmail: true } mail => Link(mail, "mailto:" + mail.Url, [new Inline.Text(mail.Url)]),
            AutolinkInline link => Link(link, link.Url, [new Inline.Text(link.Url)]),
            TaskList box => [new Inline.Checkbox(box.Checked)],
            KeyWordsInline words => Words(words),
            HtmlInline html => Html(html),
            ContainerInline other => Read(other, depth + 1),
            _ => [],
        };

    private ValueList<Inline> Link(Markdig.Syntax.Inlines.Inline at, string? address, ValueList<Inline> content)
    {
        if (LinkRule.Check(address) is { } problem)
        {
            found.Error(at.Span.Start, problem);
            return content;
        }

        return [new Inline.Link(address!, content)];
    }

    private ValueList<Inline> Picture(LinkInline image)
    {
        found.Error(
            image.Span.Start,
            "Pictures from files are not printed; pictures of the neck come from ```show blocks."
        );
        return [];
    }

    private ValueList<Inline> Words(KeyWordsInline inline)
    {
        if (inline.Words is { } words)
        {
            return [new Inline.InKey(words)];
        }

        found.Error(inline.Span.Start, inline.Problem!);
        return [];
    }

    private ValueList<Inline> Html(HtmlInline html)
    {
        if (html.Tag.StartsWith("<!--", StringComparison.Ordinal))
        {
            return [];
        }

        found.Warning(html.Span.Start, HtmlIsText);
        return [new Inline.Text(html.Tag)];
    }

    private static void Append(List<Inline> items, Inline item)
    {
        if (item is Inline.Text text && items is [.., Inline.Text before])
        {
            items[^1] = new Inline.Text(before.Characters + text.Characters);
        }
        else
        {
            items.Add(item);
        }
    }

    // Quotation marks are curled later, by language.
    private static string Typographic(SmartyPant mark) =>
        mark.Type switch
        {
            SmartyPantType.Quote or SmartyPantType.LeftQuote or SmartyPantType.RightQuote => "'",
            SmartyPantType.DoubleQuote or SmartyPantType.LeftDoubleQuote or SmartyPantType.RightDoubleQuote => "\"",
            SmartyPantType.LeftAngleQuote => "«",
            SmartyPantType.RightAngleQuote => "»",
            SmartyPantType.Ellipsis => "…",
            SmartyPantType.Dash2 => "–",
            SmartyPantType.Dash3 => "—",
            _ => mark.OpeningCharacter.ToString(),
        };
}
