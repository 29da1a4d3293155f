using System.Net;

namespace Fretloom.Studio.Tests.Site;

public class StudioPagesTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/")]
    [InlineData("/index.html")]
    [InlineData("/lesson/short")]
    public async Task Pages_are_answered_with_the_start_page(string path)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var page = await studio.GetAsync(path);
        using var head = await studio.SendAsync(HttpMethod.Head, path, null);

        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
        Assert.Contains("<title>Studio</title>", await page.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        Assert.Equal("text/html", page.Content.Headers.ContentType!.MediaType);
        Assert.True(page.Headers.CacheControl!.NoCache);
        Assert.Equal(HttpStatusCode.OK, head.StatusCode);
        Assert.Equal(page.Content.Headers.ContentLength, head.Content.Headers.ContentLength);
        Assert.Empty(await head.Content.ReadAsStringAsync(Stop));
    }

    [Theory]
    [InlineData("", "", "'plain'")]
    [InlineData("gzip", "gzip", "'gzip'")]
    [InlineData("gzip, br", "br", "'brotli'")]
    [InlineData("br;q=0, gzip;q=0.5", "gzip", "'gzip'")]
    [InlineData("deflate", "", "'plain'")]
    public async Task The_best_packing_that_is_accepted_is_sent(string accepted, string packing, string content)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.GetAsync("/program.js", ("Accept-Encoding", accepted));

        Assert.Equal(packing, string.Concat(answer.Content.Headers.ContentEncoding));
        Assert.Equal(content, await answer.Content.ReadAsStringAsync(Stop));
        Assert.Equal("text/javascript", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("Accept-Encoding", string.Concat(answer.Headers.Vary));
    }

    [Fact]
    public async Task What_the_browser_has_is_not_sent_again()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var first = await studio.GetAsync("/program.js");
        using var packed = await studio.GetAsync("/program.js", ("Accept-Encoding", "br"));

        using var again = await studio.GetAsync("/program.js", ("If-None-Match", first.Headers.ETag!.ToString()));
        using var other = await studio.GetAsync("/program.js", ("If-None-Match", packed.Headers.ETag!.ToString()));

        Assert.Equal(HttpStatusCode.NotModified, again.StatusCode);
        Assert.Equal(first.Headers.ETag, again.Headers.ETag);
        Assert.Empty(await again.Content.ReadAsStringAsync(Stop));
        Assert.Equal(HttpStatusCode.OK, other.StatusCode);
        Assert.NotEqual(first.Headers.ETag, packed.Headers.ETag);
    }

    [Theory]
    [InlineData("/program.js.br")]
    [InlineData("/nothing.js")]
    [InlineData("/api")]
    [InlineData("/api/nothing")]
    [InlineData("/api/lessons/a/b.md")]
    public async Task What_is_not_there_is_said_in_JSON(string path)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.GetAsync(path);

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.NotEmpty(await OpenStudio.ErrorOf(answer));
    }

    [Fact]
    public async Task The_engraver_is_sent_from_the_assets_of_the_program()
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.SendAsync(HttpMethod.Head, "/assets/verovio/verovio-toolkit-wasm.js", null);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("text/javascript", answer.Content.Headers.ContentType!.MediaType);
        Assert.True(answer.Content.Headers.ContentLength > 1_000_000);
    }

    [Theory]
    [InlineData("studio.wasm", "application/wasm")]
    [InlineData("manifest.webmanifest", "application/manifest+json; charset=utf-8")]
    [InlineData("face.woff2", "font/woff2")]
    [InlineData("data.dat", "application/octet-stream")]
    [InlineData("list.json", "application/json; charset=utf-8")]
    [InlineData("STYLE.CSS", "text/css; charset=utf-8")]
    public void The_ending_says_the_kind(string name, string kind) =>
        Assert.Equal(kind, Studio.Site.ContentKind.Of(name));
}
