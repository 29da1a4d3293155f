using Fretloom.Lessons.Syntax;

namespace Fretloom.Lessons.Tests;

/// <summary>Whatever is in a file, reading ends, and every finding lies inside the file.</summary>
public class FuzzTests
{
    private static readonly Gen<string> Scrap = Gen.OneOf(
        "---\n",
        "title: T\n",
        "title: {key}\n",
        "key: F major\n",
        "hand: 170 mm\n",
        "frets: 0-5\n",
        "\n",
        "\n\n",
        "```show\n",
        "```\n",
        "~~~\n",
        "```claim\n",
        "In every major key, on strings 4-1, there are exactly 3 full frets.\n",
        "on the top strings, in every key, no empty fret lies next to a full fret.\n",
        "expect: fails\n",
        "string-sets:\n",
        "  top: 3-1\n",
        "the notes of the key, frets 0-4\n",
        "the chord V7, on strings 4-1\n",
        "caption: C\n",
        "width: half\n",
        "'",
        "\"",
        ": ",
        "# ",
        "- ",
        "1. ",
        "> ",
        "  ",
        "\t",
        "|a|b|\n|-|-|\n",
        "*",
        "**",
        "_",
        "`",
        "[x](",
        ")",
        "![",
        "]",
        "<b>",
        "<!--",
        "-->",
        "{key}",
        "{degree 5}",
        "{chord",
        "}",
        "\\",
        "&#106;",
        "&amp;",
        "\r\n",
        "\r",
        "\0",
        "\uFEFF",
        "é",
        "\uD834\uDD2A",
        "\uD834",
        "a b ",
        "F#m7b5"
    );

    private static readonly Gen<string> Text = Gen.OneOf(
        Scrap.Array[0, 60].Select(string.Concat),
        Scrap.Array[0, 60].Select(scraps => "---\ntitle: T\n---\n" + string.Concat(scraps)),
        Gen.String[0, 200]
    );

    [Fact]
    public void Any_text_is_read_to_its_end() =>
        Text.Sample(text =>
        {
            var lesson = Lesson.Parse(text);
            var source = new SourceText(text);

            Assert.All(
                lesson.Diagnostics,
                found =>
                {
                    Assert.InRange(found.Line, 1, source.LineCount);
                    Assert.InRange(found.Column, 1, source.Line(found.Line).Length + 1);
                }
            );
        });

    [Fact]
    public void Any_text_is_read_in_another_key_too() =>
        Text.Sample(text => Assert.NotNull(Lesson.Parse(text).InKey(Theory.Key.Parse("Gb major"))), iter: 200);

    [Fact]
    public void Any_bytes_are_read_or_refused() =>
        Gen.Byte.Array[0, 300].Sample(bytes => Assert.NotNull(Lesson.Decode(bytes)));

    [Fact]
    public void No_link_but_to_the_web_and_to_mail_gets_through() =>
        Gen.Select(
                Gen.OneOf("java", "JAVA", "data", "file", "vbscript", "http", "mailto", "&#106;ava", "\\j", " "),
                Gen.OneOf("script:", ":", "://", "&colon;", "%3A"),
                Gen.String[0, 20]
            )
            .Sample(
                (scheme, mark, rest) =>
                    Assert.All(
                        Lessons
                            .All(Lessons.WithText($"[x]({scheme}{mark}{rest}) <{scheme}{mark}{rest}>").Blocks)
                            .OfType<Block.Paragraph>()
                            .SelectMany(paragraph => paragraph.Content)
                            .OfType<Inline.Link>(),
                        link => Assert.Matches("^(?i)(https?|mailto):", link.Address)
                    )
            );
}
