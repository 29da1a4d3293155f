using System.Net;
using Fretloom.Studio.Http;
using Microsoft.AspNetCore.Http;

namespace Fretloom.Studio.Tests.Http;

public class SecurityTests
{
    [Theory]
    [InlineData("GET", "/", 200)]
    [InlineData("GET", "/program.js", 200)]
    [InlineData("GET", "/nothing.js", 404)]
    [InlineData("POST", "/program.js", 405)]
    [InlineData("GET", "/api/lessons", 200)]
    [InlineData("GET", "/api/lessons/short.md", 200)]
    [InlineData("GET", "/api/lessons/none.md", 404)]
    [InlineData("DELETE", "/api/lessons/short.md", 405)]
    [InlineData("PUT", "/api/lessons/short.md", 428)]
    [InlineData("POST", "/api/picture", 415)]
    [InlineData("GET", "/api/handouts/none", 404)]
    [InlineData("OPTIONS", "/api/lessons", 405)]
    public async Task Every_answer_has_the_security_headers(string method, string path, int status)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.SendAsync(new HttpMethod(method), path, null);

        Assert.Equal(status, (int)answer.StatusCode);
        AssertSecure(answer);
    }

    [Fact]
    public async Task So_have_answers_without_content_and_those_that_never_end()
    {
        await using var studio = await OpenStudio.OpenAsync();
        using var page = await studio.GetAsync("/program.js");

        using var unchanged = await studio.GetAsync("/program.js", ("If-None-Match", $"{page.Headers.ETag}"));
        using var events = await studio.GetAsync("/api/changes");
        using var saved = await studio.PutAsync("/api/lessons/short.md", "new", ("If-Match", "*"));
        using var refused = await studio.PutAsync("/api/lessons/short.md", "new", ("If-Match", "\"other\""));

        Assert.Equal(
            [
                HttpStatusCode.NotModified,
                HttpStatusCode.OK,
                HttpStatusCode.NoContent,
                HttpStatusCode.PreconditionFailed,
            ],
            new[] { unchanged, events, saved, refused }.Select(answer => answer.StatusCode)
        );
        Assert.All(new[] { unchanged, events, saved, refused }, AssertSecure);
    }

    [Fact]
    public void The_policy_allows_nothing_from_elsewhere_and_no_inline_script()
    {
        var policy = SecurityHeaders.All["Content-Security-Policy"];
        var script = Assert.Single(
            policy.Split("; "),
            rule => rule.StartsWith("script-src ", StringComparison.Ordinal)
        );

        Assert.StartsWith("default-src 'none';", policy, StringComparison.Ordinal);
        Assert.Equal("script-src 'self' 'wasm-unsafe-eval'", script);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
        Assert.DoesNotContain('*', policy);
    }

    [Theory]
    [InlineData("evil.example")]
    [InlineData("evil.example:PORT")]
    [InlineData("127.0.0.1")]
    [InlineData("127.0.0.1:1")]
    [InlineData("localhost.evil.example:PORT")]
    [InlineData("127.0.0.1.evil.example:PORT")]
    public async Task Another_Host_is_refused_everywhere(string host)
    {
        await using var studio = await OpenStudio.OpenAsync();
        var named = host.Replace("PORT", $"{studio.Address.Port}", StringComparison.Ordinal);

        foreach (var path in new[] { "/", "/api/lessons" })
        {
            using var answer = await studio.GetAsync(path, ("Host", named));
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
            AssertSecure(answer);
        }
    }

    [Theory]
    [InlineData("127.0.0.1:PORT")]
    [InlineData("localhost:PORT")]
    [InlineData("LOCALHOST:PORT")]
    [InlineData("[::1]:PORT")]
    public async Task The_names_of_this_computer_are_answered(string host)
    {
        await using var studio = await OpenStudio.OpenAsync();
        var named = host.Replace("PORT", $"{studio.Address.Port}", StringComparison.Ordinal);

        using var answer = await studio.GetAsync("/api/lessons", ("Host", named), ("Origin", $"http://{named}"));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Theory]
    [InlineData("192.168.1.20:8080", "192.168.1.20", 8080, true)]
    [InlineData("192.168.1.20:8080", "::ffff:192.168.1.20", 8080, true)]
    [InlineData("192.168.1.21:8080", "192.168.1.20", 8080, false)]
    [InlineData("[fe80::1]:8080", "fe80::1", 8080, true)]
    [InlineData("192.168.1.20", "192.168.1.20", 80, true)]
    [InlineData("school.example:8080", "192.168.1.20", 8080, false)]
    [InlineData("localhost:", "127.0.0.1", 80, false)]
    [InlineData("", "127.0.0.1", 80, false)]
    public void The_address_that_a_request_came_in_on_is_its_own(string host, string address, int port, bool isOwn) =>
        Assert.Equal(isOwn, OwnAddress.IsOwn(new HostString(host), IPAddress.Parse(address), port));

    [Theory]
    [InlineData("Origin", "http://evil.example")]
    [InlineData("Origin", "null")]
    [InlineData("Origin", "https://127.0.0.1")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task Another_page_may_neither_read_nor_write(string name, string value)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var read = await studio.GetAsync("/api/lessons", (name, value));
        using var write = await studio.PutAsync("/api/lessons/new.md", "x", ("If-None-Match", "*"), (name, value));
        using var order = await studio.PostAsync("/api/handouts", """{"name":"two.md"}""", (name, value));

        Assert.Equal(
            [HttpStatusCode.Forbidden, HttpStatusCode.Forbidden, HttpStatusCode.Forbidden],
            new[] { read, write, order }.Select(answer => answer.StatusCode)
        );
        Assert.False(File.Exists(studio.PathOf("new.md")));
        Assert.False(read.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Theory]
    [InlineData("same-origin")]
    [InlineData("none")]
    public async Task The_own_pages_and_typed_addresses_may(string site)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.GetAsync("/api/lessons", ("Sec-Fetch-Site", site));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
    }

    [Fact]
    public async Task The_server_does_not_tell_what_it_is()
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.GetAsync("/");

        Assert.False(answer.Headers.Contains("Server"));
    }

    [Theory]
    [InlineData("GET / HTTP/1.1\r\n\r\n", "400")]
    [InlineData("nonsense\r\n\r\n", "400")]
    public async Task What_is_not_HTTP_is_answered_in_a_line(string request, string status)
    {
        await using var studio = await OpenStudio.OpenAsync();

        var answer = await studio.SendRawAsync(request);

        Assert.StartsWith($"HTTP/1.1 {status}", answer, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Headers_and_addresses_have_limits()
    {
        await using var studio = await OpenStudio.OpenAsync();

        var header = await studio.SendRawAsync(studio.Raw("GET", "/", $"X-Long: {new string('a', 20_000)}\r\n"));
        var address = await studio.SendRawAsync(studio.Raw("GET", "/" + new string('a', 10_000)));

        Assert.StartsWith("HTTP/1.1 431", header, StringComparison.Ordinal);
        Assert.StartsWith("HTTP/1.1 414", address, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/picture", "{")]
    [InlineData("/api/picture", "{}")]
    [InlineData("/api/picture", "[1]")]
    [InlineData("/api/picture", """{"sentence":null,"format":"svg"}""")]
    [InlineData("/api/print", """{"sentence":5}""")]
    [InlineData("/api/handouts", "null")]
    public async Task What_is_not_the_document_is_refused(string path, string json)
    {
        await using var studio = await OpenStudio.OpenAsync();

        using var answer = await studio.PostAsync(path, json);

        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.NotEmpty(await OpenStudio.ErrorOf(answer));
        AssertSecure(answer);
    }

    [Fact]
    public async Task A_request_that_is_too_large_is_refused_before_it_is_read()
    {
        await using var studio = await OpenStudio.OpenAsync();
        var more = $"Content-Type: application/json\r\nContent-Length: {Limits.Sentence + 1}\r\n";

        var answer = await studio.SendRawAsync(studio.Raw("POST", "/api/picture", more));

        Assert.StartsWith("HTTP/1.1 413", answer, StringComparison.Ordinal);
        Assert.Contains("{\"error\":{\"message\":", answer, StringComparison.Ordinal);
        Assert.Contains("nosniff", answer, StringComparison.Ordinal);
    }

    internal static void AssertSecure(HttpResponseMessage answer)
    {
        foreach (var (name, value) in SecurityHeaders.All)
        {
            Assert.Equal(value, Assert.Single(answer.Headers.GetValues(name)));
        }
    }
}
