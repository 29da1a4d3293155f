using System.Net;
using System.Xml.Linq;

namespace Fretloom.Studio.Tests.Site;

public class OpeningNeckTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("/api/opening?show=the%20thirds&room=900", "B♭", false)]
    [InlineData(
        "/api/opening?show=the%20notes%20of%20the%20key%2C%20in%20Bb%20major%2C%20as%20names&names=&room=900",
        "B♭",
        true
    )]
    public async Task The_neck_of_a_sentence_is_drawn(string address, string label, bool isThere)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.Client.GetAsync(address, Stop);
        var svg = XElement.Parse(await answer.Content.ReadAsStringAsync(Stop));

        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("no-store", answer.Headers.CacheControl!.ToString());
        Assert.Equal(isThere, svg.Descendants().Any(one => one.Name.LocalName == "text" && one.Value == label));
    }

    [Theory]
    [InlineData("/api/opening?show=the%20kee&room=900", HttpStatusCode.UnprocessableEntity, "notes of the key")]
    [InlineData("/api/opening?room=900", HttpStatusCode.UnprocessableEntity, "")]
    [InlineData("/api/opening?show=the%20thirds", HttpStatusCode.BadRequest, "'room' takes 100 to 5000")]
    [InlineData("/api/opening?show=the%20thirds&room=NaN", HttpStatusCode.BadRequest, "'room'")]
    [InlineData("/api/opening?show=the%20thirds&room=1e9", HttpStatusCode.BadRequest, "'room'")]
    [InlineData("/api/opening?show=the%20thirds&room=900&names=Martian", HttpStatusCode.BadRequest, "'names'")]
    [InlineData("/api/opening?show=the%20thirds&room=900&names=7", HttpStatusCode.BadRequest, "'names'")]
    public async Task What_cannot_be_drawn_is_told(string address, HttpStatusCode status, string words)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.Client.GetAsync(address, Stop);
        var error = (await OpenStudio.JsonOf(answer)).GetProperty("error").GetProperty("message").GetString()!;

        Assert.Equal(status, answer.StatusCode);
        Assert.Contains(words, error, StringComparison.Ordinal);
    }
}
