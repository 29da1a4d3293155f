using System.IO.Compression;
using System.Net;
using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace Fretloom.Studio.Tests.Work;

public class SentenceTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("", true)]
    [InlineData(""","ground":"paper" """, true)]
    [InlineData(""","ground":"none" """, false)]
    public async Task A_picture_is_drawn_on_paper_or_on_nothing(string ground, bool isOnPaper)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync(
            "/api/picture",
            $$"""{"sentence":"the notes of the key, in Bb major","format":"svg"{{ground}}}"""
        );
        var svg = await answer.Content.ReadAsStringAsync(Stop);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("the-notes-of-the-key-in-b-flat-major.svg", answer.Content.Headers.ContentDisposition!.FileName);
        Assert.Equal(isOnPaper, svg.Contains("<rect width=\"100%\" height=\"100%\"", StringComparison.Ordinal));
        Assert.Equal("svg", System.Xml.Linq.XDocument.Parse(svg).Root!.Name.LocalName);
    }

    [Fact]
    public async Task Several_pictures_come_in_one_ZIP()
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync(
            "/api/picture",
            """{"sentence":"the notes of the key and the triads, in D major","format":"png"}"""
        );

        await using var zip = new ZipArchive(await answer.Content.ReadAsStreamAsync(Stop));
        Assert.True(zip.Entries.Count > 1);
        Assert.All(zip.Entries, entry => Assert.EndsWith(".png", entry.Name, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("/api/picture", """{"sentence":"the kee","format":"svg"}""", 5)]
    [InlineData("/api/print", """{"sentence":"show the kee"}""", 10)]
    [InlineData("/api/print", """{"sentence":"play the scale, in nineths"}""", 20)]
    [InlineData("/api/exercise", """{"sentence":"play the kee","format":"mid"}""", 10)]
    public async Task What_is_wrong_with_a_sentence_is_told_with_its_column(string path, string json, int column)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync(path, json);
        var error = (await OpenStudio.JsonOf(answer)).GetProperty("error");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Equal(column, error.GetProperty("column").GetInt32());
        Assert.NotEmpty(error.GetProperty("message").GetString()!);
    }

    [Theory]
    [InlineData("/api/picture", """{"sentence":"the triads","format":"gif"}""")]
    [InlineData("/api/picture", """{"sentence":"the triads","format":"/../x.svg"}""")]
    [InlineData("/api/picture", """{"sentence":"the triads","format":"svg","ground":"sand"}""")]
    [InlineData("/api/print", """{"sentence":"the triads","paper":"a3"}""")]
    [InlineData("/api/exercise", """{"sentence":"play the scale","format":"mp3"}""")]
    [InlineData("/api/exercise", """{"sentence":"play the scale","format":"../x.mid"}""")]
    public async Task A_wrong_kind_is_told(string path, string json)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync(path, json);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("takes", await OpenStudio.ErrorOf(answer), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("the seventh chords, in Bb major", "The seventh chords in B♭ major", "Guitar")]
    [InlineData("play the scale, on a ukulele, in F major", "The scale in F major", "Ukulele")]
    public async Task A_sentence_is_printed_as_a_sheet(string sentence, string title, string instrument)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync("/api/print", $$"""{"sentence":"{{sentence}}","paper":"letter"}""");
        using var pdf = PdfDocument.Open(await answer.Content.ReadAsByteArrayAsync(Stop));
        var page = pdf.GetPage(1);
        var text = ContentOrderTextExtractor.GetText(page);

        Assert.Equal("application/pdf", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal((612, 792), (Math.Round(page.Width), Math.Round(page.Height)));
        Assert.Contains(title, text, StringComparison.Ordinal);
        Assert.Contains(instrument, text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("musicxml", "application/vnd.recordare.musicxml+xml", "<?xml")]
    [InlineData("mid", "audio/midi", "MThd")]
    [InlineData("wav", "audio/wav", "RIFF")]
    [InlineData("svg", "image/svg+xml", "<svg")]
    [InlineData("pdf", "application/pdf", "%PDF")]
    public async Task An_exercise_is_written_in_every_kind(string format, string kind, string start)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync(
            "/api/exercise",
            $$"""{"sentence":"play the scale, in D major, frets 0-4","format":"{{format}}"}"""
        );
        var bytes = await answer.Content.ReadAsByteArrayAsync(Stop);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(kind, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal($"the-scale-in-d-major-up.{format}", answer.Content.Headers.ContentDisposition!.FileName);
        Assert.StartsWith(start, Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
    }
}
