using System.Text;
using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

public sealed class PrintTests : IDisposable
{
    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("fretloom-print-");

    public void Dispose() => _root.Delete(recursive: true);

    [Theory]
    [InlineData("the seventh chords, in Bb major", "The seventh chords in B♭ major", "Guitar", "Imaj7")]
    [InlineData("show C, F and G7, on a ukulele", "C, F and G7", "Ukulele", "G7")]
    [InlineData("play the scale, in F major, on a bass", "The scale in F major, up", "Bass", "4/4")]
    [InlineData("the scale, up and down, in eighths, at 60", "The scale in C major, up and down", "Guitar", "60 beats")]
    public async Task A_sentence_becomes_a_sheet_with_its_title_and_whom_it_is_for(
        string sentence,
        string title,
        string instrument,
        string shown
    )
    {
        Assert.SkipUnless(Run.IsInstalled("pdftotext"), "pdftotext is not installed");
        var path = PathTo("sheet.pdf");

        var call = Call.Fretloom("print", sentence, "--out", path);
        var text = (await Run.ProgramAsync("pdftotext", ["-layout", path, "-"])).Output;

        Assert.Equal((0, $"{path}\n"), (call.Code, call.Output));
        Assert.Contains(title, text, StringComparison.Ordinal);
        Assert.Contains(instrument, text, StringComparison.Ordinal);
        Assert.Contains(shown, text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_sentence_gives_the_same_bytes_and_other_paper_others()
    {
        foreach (var (name, paper) in new[] { ("one", "a4"), ("again", "a4"), ("letter", "letter") })
        {
            Assert.Equal(
                0,
                Call.Fretloom("print", "the triads, in D major", "--out", PathTo(name), "--paper", paper).Code
            );
        }

        Assert.Equal(File.ReadAllBytes(PathTo("one")), File.ReadAllBytes(PathTo("again")));
        Assert.Contains("595.", Encoding.Latin1.GetString(File.ReadAllBytes(PathTo("one"))), StringComparison.Ordinal);
        Assert.Contains(
            "612",
            Encoding.Latin1.GetString(File.ReadAllBytes(PathTo("letter"))),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Json_tells_the_sentence_in_full_the_title_and_the_file()
    {
        var path = PathTo("sheet.pdf");

        var json = Call.Fretloom("print", "the triads", "--out", path, "--json").Json;

        Assert.StartsWith(
            "show the triads, on a guitar, in C major",
            json.GetProperty("sentence").GetString(),
            StringComparison.Ordinal
        );
        Assert.Equal("The triads in C major", json.GetProperty("title").GetString());
        var file = Assert.Single(json.GetProperty("files").EnumerateArray());
        Assert.Equal((path, "pdf"), (file.GetProperty("path").GetString(), file.GetProperty("kind").GetString()));
    }

    [Theory]
    [InlineData("the kee", 5)]
    [InlineData("play the kee", 10)]
    [InlineData("show the scale, in nineths", 20)]
    [InlineData("the scale, up and down, in nineths", 28)]
    public void What_is_wrong_is_pointed_at_where_the_sentence_can_be_read_furthest(string sentence, int column)
    {
        var path = PathTo("sheet.pdf");

        var json = Call.Fretloom("print", sentence, "--out", path, "--json");

        Assert.Equal(2, json.Code);
        Assert.Equal(column, json.Json.GetProperty("error").GetProperty("column").GetInt32());
        Assert.False(File.Exists(path));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told()
    {
        var call = Call.Fretloom("print", "the triads", "--out", Path.Combine(_root.FullName, "none", "x.pdf"));

        Assert.Equal(2, call.Code);
        Assert.Contains("there is no folder", call.Error, StringComparison.Ordinal);
    }

    private string PathTo(string name) => Path.Combine(_root.FullName, Path.ChangeExtension(name, ".pdf"));
}
