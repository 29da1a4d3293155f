using System.Text;
using Fretloom.Lessons.Syntax;

namespace Fretloom.Lessons.Tests;

/// <summary>Everything a teacher can get wrong is told with its place, what was expected, and what was probably meant.</summary>
public class BadInputTests
{
    [Theory]
    [InlineData("title: T\ntitel: U", "3:1: error: 'titel' is not known here; did you mean 'title'?")]
    [InlineData("title: T\ntitle: U", "3:1: error: 'title' stands twice; keep one of them.")]
    [InlineData("title:", "2:7: error: 'title' is empty; write something after the colon or leave it out.")]
    [InlineData(
        "title: T\nplayer: lefthanded",
        "3:9: error: 'lefthanded' is not a player; expected left-handed or right-handed, and perhaps 'turned over' or 'with the thumb' after a comma."
    )]
    [InlineData(
        "title: T\nlanguage: English!",
        "3:11: error: 'English!' is not a language; expected letters such as en or en-GB."
    )]
    [InlineData(
        "title: T\nlanguage: \"en\\n\"",
        "3:12: error: 'en\n' is not a language; expected letters such as en or en-GB."
    )]
    [InlineData("title: T\ncapo: 40", "3:7: error: '40' is not a fret for a capo here; expected 0 to 21.")]
    [InlineData(
        "title: In {kee}",
        "2:11: error: '{kee}' is not known; expected {key}, {degree 5} or {chord V7}. For a plain brace write \\{."
    )]
    public void Front_matter_that_cannot_be_read_is_an_error(string front, string expected) =>
        Assert.Contains(expected, Lessons.WithFront(front).Found(), StringComparison.Ordinal);

    [Theory]
    [InlineData("title: T\nkey: H major", "3:6: error:")]
    [InlineData("title: T\ninstrument: gitar", "3:13: error:")]
    [InlineData("title: T\nhand: 20 mm", "3:7: error:")]
    [InlineData("title: T\nstrings: 9-1", "3:10: error:")]
    [InlineData("title: T\nfrets: 0-99", "3:10: error:")]
    [InlineData("title: a: b", "2:9: error: This line cannot be read: put the value in quotes")]
    [InlineData("title: &a T\ncourse: *a", "3:9: error: 'course' takes words on one line.")]
    [InlineData("title: T\ncourse: [a, b]", "3:9: error: 'course' takes words on one line.")]
    [InlineData("title: T\n? [a, [b]]\n: c", "3:3: error: Expected a word and a colon here.")]
    [InlineData("- title", "2:1: error: Expected lines such as 'key: G major'.")]
    public void The_place_of_a_wrong_setting_is_told(string front, string expected) =>
        Assert.Contains(expected, Lessons.WithFront(front).Found(), StringComparison.Ordinal);

    [Theory]
    [InlineData("", "1:1: error: A lesson begins with a line '---'")]
    [InlineData("# Only a heading\n", "1:1: error: A lesson begins with a line '---'")]
    [InlineData("---\ntitle: T\n", "1:1: error: The lines above the lesson are never closed")]
    [InlineData("---\nkey: G major\n---\n", "1:1: error: The lesson has no title")]
    public void A_lesson_without_its_beginning_is_an_error(string text, string expected) =>
        Assert.Contains(expected, Lesson.Parse(text).Found(), StringComparison.Ordinal);

    [Theory]
    [InlineData(
        "```shwo\nthe notes of the key\n```",
        "4:4: error: 'shwo' is not a kind of block; did you mean 'show'?"
    )]
    [InlineData("```play the scale\n```", "4:9: error: Write the sentence on the line below 'play'.")]
    [InlineData("```play\n```", "4:1: error: The block is empty; write a sentence such as 'the scale,")]
    [InlineData(
        "```csharp\nx\n```",
        "4:4: error: 'csharp' is not a kind of block; expected one of: show, claim, play, text."
    )]
    [InlineData("```show the triads\n```", "4:9: error: Write the sentence on the line below 'show'.")]
    [InlineData("```show\n\n```", "4:1: error: The block is empty;")]
    [InlineData("```show\ncaption: C\n```", "4:1: error: The block is empty;")]
    [InlineData(
        "~~~~show\nthe triads\n",
        "4:1: error: This block is never closed; put ~~~~ on a line of its own below it."
    )]
    [InlineData(
        "```show\nthe triads\ncaptoin: C\n```",
        "6:1: error: 'captoin' is not known here; did you mean 'caption'?"
    )]
    [InlineData(
        "```show\nthe triads\ncaption: C\ncaption: D\n```",
        "7:1: error: 'caption' stands twice; keep one of them."
    )]
    [InlineData("```show\nthe triads\nwidth: wide\n```", "6:8: error: 'wide' is not a width;")]
    [InlineData(
        "```show\nthe triads\ncaption: a: b\n```",
        "6:11: error: This line cannot be read: put the value in quotes"
    )]
    public void A_block_that_cannot_be_read_is_an_error(string text, string expected) =>
        Assert.Contains(expected, Lessons.WithText(text).Found(), StringComparison.Ordinal);

    [Theory]
    [InlineData("[x](javascript:alert(1))", "4:1: error: A link to 'javascript:' is not printed;")]
    [InlineData("a [x](JavaScript:alert(1))", "4:3: error: A link to 'javascript:' is not printed;")]
    [InlineData("[x](&#106;avascript:alert(1))", "4:1: error: A link to 'javascript:' is not printed;")]
    [InlineData("[x](data:text/html,x)", "4:1: error: A link to 'data:' is not printed;")]
    [InlineData("<javascript:alert(1)>", "4:1: error: A link to 'javascript:' is not printed;")]
    [InlineData("[x](file:///etc/passwd)", "4:1: error: A link to 'file:' is not printed;")]
    [InlineData("[x](/etc/passwd)", "4:1: error: ")]
    [InlineData("[x](next.html)", "4:1: error: 'next.html' is not a full address.")]
    [InlineData("[x][y]\n\n[y]: vbscript:x", "4:1: error: A link to 'vbscript:' is not printed;")]
    [InlineData("![x](neck.png)", "4:1: error: Pictures from files are not printed;")]
    [InlineData("a <b onclick='x'>b", "4:3: warning: HTML is not passed on")]
    [InlineData("<script>\nalert(1)\n</script>", "4:1: warning: HTML is not passed on")]
    [InlineData("see {chrod V7}", "4:5: error: '{chrod V7}' is not known;")]
    [InlineData("see {chord 7V}", "4:5: error: '7V' is not a Roman numeral such as V7.")]
    [InlineData("see {degree 9}", "4:5: error: '9' is not a degree such as 5 or b3.")]
    public void Markdown_that_a_handout_cannot_say_is_told(string text, string expected) =>
        Assert.Contains(expected, Lessons.WithText(text).Found(), StringComparison.Ordinal);

    [Theory]
    [InlineData("[x](http://example.org)")]
    [InlineData("[x](HTTPS://example.org/a?b=c#d)")]
    [InlineData("<mailto:a@example.org>")]
    [InlineData("<a@example.org>")]
    public void Links_to_the_web_and_to_mail_are_kept(string text)
    {
        var lesson = Lessons.WithText(text);

        Assert.Empty(lesson.Diagnostics);
        Assert.IsType<Inline.Link>(Assert.Single(lesson.Single<Block.Paragraph>().Content));
    }

    [Fact]
    public void Html_is_text_and_a_comment_is_nothing()
    {
        var lesson = Lessons.WithText("a <b>x</b> <!-- a note to myself -->");

        Assert.Equal("a <b>x</b> ", Inline.PlainText(lesson.Single<Block.Paragraph>().Content));
    }

    [Fact]
    public void Ten_megabytes_are_refused_before_they_are_read()
    {
        var file = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(file, new byte[10_000_000]);

            Assert.Equal(
                "error: The file has 10.0 MB; a lesson has at most 1 MB. Split it into several lessons.",
                Lesson.Load(file).Found()
            );
        }
        finally
        {
            File.Delete(file);
        }
    }

    public static TheoryData<string, int> Deep =>
        new()
        {
            { new string('>', 2000) + "x", 4 },
            { "\n" + string.Concat(Enumerable.Repeat("- ", 2000)) + "x", 5 },
            { string.Concat(Enumerable.Range(0, 2000).Select(n => new string(' ', 2 * n) + "- x\n")), 85 },
            { "a\n\n" + new string('[', 2000) + "x" + new string(']', 2000), 6 },
            { "a\n\n" + string.Concat(Enumerable.Repeat("*a **b ", 2000)), 6 },
            { string.Concat(Enumerable.Repeat("**a *b ", 60)) + string.Concat(Enumerable.Repeat("c* d** ", 60)), 4 },
            { "a\n\n" + string.Concat(Enumerable.Repeat("[a](", 2000)), 6 },
        };

    [Theory]
    [MemberData(nameof(Deep))]
    public void Two_thousand_levels_are_no_harm(string text, int line)
    {
        var lesson = Lessons.WithText(text);

        Assert.All(lesson.Diagnostics, found => Assert.Equal(line, found.Line));
        Assert.All(
            lesson.Diagnostics,
            found => Assert.StartsWith("Lists, quotes and stressed words", found.Message, StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("title: T\ncourse: ", '[')]
    [InlineData("title: T\ncourse: ", '{')]
    public void Two_thousand_levels_of_yaml_are_an_error(string front, char bracket) =>
        Assert.True(Lessons.WithFront(front + new string(bracket, 2000)).HasErrors);

    [Fact]
    public void A_stretch_without_end_is_an_error_with_its_line() =>
        Assert.Equal(
            "5:1: error: More than 20,000 characters without an empty line. Put empty lines between paragraphs.",
            Lessons.WithText("short\n" + new string('x', 20_000)).Found()
        );

    [Fact]
    public void Bytes_that_are_not_utf8_are_an_error_with_their_place()
    {
        byte[] latin1 = [.. Encoding.UTF8.GetBytes("---\ntitle: ü"), 0xFC, (byte)'\n'];

        Assert.Equal(
            "2:9: error: The byte 0xFC is not UTF-8 here. Save the lesson as UTF-8.",
            Lesson.Decode(latin1).Found()
        );
        Assert.False(Lesson.Decode(latin1).IsText);
    }

    [Fact]
    public void A_file_that_is_not_there_is_an_error() =>
        Assert.Equal(
            "error: 'no/such/lesson.md' cannot be read: there is no such file.",
            Lesson.Load("no/such/lesson.md").Found()
        );

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    public void What_cannot_be_a_file_is_an_error(string path) =>
        Assert.EndsWith("this is not the name of a file.", Lesson.Load(path).Found(), StringComparison.Ordinal);

    [Fact]
    public void A_file_without_end_is_refused()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "needs /dev/zero");

        Assert.Contains("at most 1 MB", Lesson.Load("/dev/zero").Found(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the chord Imaj7, on strings 4-1, frets 1-1", "No shape of Imaj7 (Cmaj7) fits these strings and frets")]
    [InlineData(
        "the chords I vi, on strings 3-1, frets 0-4",
        "No shape of I (C) fits these strings and frets with the root lowest; say"
    )]
    [InlineData("every F#, on strings 5 and 4, frets 0-3", "None of these notes lies on these strings and frets;")]
    public void What_is_not_to_be_found_is_a_warning_at_the_sentence(string sentence, string expected)
    {
        var lesson = Lessons.WithText($"```show\n{sentence}\n```");

        Assert.StartsWith("5:1: warning: " + expected, lesson.Found(), StringComparison.Ordinal);
        Assert.False(lesson.HasErrors);
    }

    [Fact]
    public void A_folder_is_not_a_lesson() =>
        Assert.EndsWith(
            "cannot be read: it is a folder.",
            Lesson.Load(Path.GetTempPath()).Found(),
            StringComparison.Ordinal
        );

    [Fact]
    public void What_can_be_read_of_a_lesson_with_errors_is_there_with_the_error_in_its_place()
    {
        var lesson = Lessons.WithText("before\n\n```show\nthe frobnications\n```\n\nafter");

        Assert.Collection(
            lesson.Blocks,
            block => Assert.IsType<Block.Paragraph>(block),
            block => Assert.Equal(6, Assert.IsType<Block.Problem>(block).Line),
            block => Assert.IsType<Block.Paragraph>(block)
        );
    }

    [Theory]
    [InlineData("b", 2)]
    [InlineData("b", 16)]
    [InlineData("#", 16)]
    [InlineData("#", 17)]
    public void A_degree_that_no_note_name_can_reach_is_an_error_with_its_place(string sign, int count)
    {
        var signs = string.Concat(Enumerable.Repeat(sign, count));

        var lesson = Lessons.WithText($"On {{degree {signs}5}}.");

        Assert.Equal(count == 2 ? "" : $"4:4: error: '{signs}5' is not a degree such as 5 or b3.", lesson.Found());
    }
}
