using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text;
using System.Text.Json;

namespace Fretloom.Studio.Tests;

/// <summary>An open studio with two lessons and a few pages in folders of its own, and somebody who asks it things.</summary>
internal sealed class OpenStudio : IAsyncDisposable
{
    public const string Short = "---\ntitle: A short lesson\n---\nText.\n";

    public const string Two = """
        ---
        title: Two blocks in {key}
        key: F major
        instrument: ukulele
        ---
        ```show
        the triads
        ```

        ```play
        the scale, in eighths
        ```
        """;

    private readonly DirectoryInfo _root;
    private readonly StudioHost _host;

    private OpenStudio(DirectoryInfo root, StudioHost host)
    {
        (_root, _host) = (root, host);
        Client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false })
        {
            BaseAddress = host.Address,
        };
    }

    public HttpClient Client { get; }

    public Uri Address => _host.Address;

    public string Lessons => Path.Combine(_root.FullName, "lessons");

    public string Root => _root.FullName;

    public static async Task<OpenStudio> OpenAsync(Func<StudioOptions, StudioOptions>? change = null)
    {
        var root = Directory.CreateTempSubdirectory("fretloom-host-");
        var (lessons, pages) = (root.CreateSubdirectory("lessons"), root.CreateSubdirectory("pages"));
        File.WriteAllText(Path.Combine(lessons.FullName, "short.md"), Short);
        File.WriteAllText(Path.Combine(lessons.FullName, "two.md"), Two);
        File.WriteAllText(Path.Combine(pages.FullName, "index.html"), "<!doctype html><title>Studio</title>");
        File.WriteAllText(Path.Combine(pages.FullName, "program.js"), "'plain'");
        File.WriteAllText(Path.Combine(pages.FullName, "program.js.br"), "'brotli'");
        File.WriteAllText(Path.Combine(pages.FullName, "program.js.gz"), "'gzip'");
        var options = new StudioOptions(lessons.FullName, pages.FullName);
        try
        {
            return new(root, await StudioHost.StartAsync(change?.Invoke(options) ?? options));
        }
        catch (StudioException)
        {
            root.Delete(recursive: true);
            throw;
        }
    }

    public string PathOf(string lesson) => Path.Combine(Lessons, lesson);

    public Task<HttpResponseMessage> GetAsync(string path, params (string Name, string Value)[] headers) =>
        SendAsync(HttpMethod.Get, path, null, headers);

    public Task<HttpResponseMessage> PutAsync(string path, string text, params (string Name, string Value)[] headers) =>
        SendAsync(HttpMethod.Put, path, new StringContent(text), headers);

    public Task<HttpResponseMessage> PostAsync(
        string path,
        string json,
        params (string Name, string Value)[] headers
    ) => SendAsync(HttpMethod.Post, path, new StringContent(json, Encoding.UTF8, "application/json"), headers);

    public async Task<HttpResponseMessage> SendAsync(
        HttpMethod method,
        string path,
        HttpContent? content,
        params (string Name, string Value)[] headers
    )
    {
        using var request = new HttpRequestMessage(method, path) { Content = content };
        foreach (var (name, value) in headers)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        return await Client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
    }

    /// <summary>Sends a request as it is written, which a client would put in order, and reads the answer to its end.</summary>
    public async Task<string> SendRawAsync(string request)
    {
        using var socket = new TcpClient();
        await socket.ConnectAsync(IPAddress.Loopback, Address.Port);
        await using var stream = socket.GetStream();
        await stream.WriteAsync(Encoding.Latin1.GetBytes(request));
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return await reader.ReadToEndAsync();
    }

    /// <summary>A request line with the headers it must have.</summary>
    public string Raw(string method, string target, string more = "") =>
        $"{method} {target} HTTP/1.1\r\nHost: {Address.Authority}\r\nConnection: close\r\n{more}\r\n";

    public static async Task<JsonElement> JsonOf(HttpResponseMessage response)
    {
        Assert.Equal(new MediaTypeHeaderValue("application/json", "utf-8"), response.Content.Headers.ContentType);
        return JsonDocument.Parse(await response.Content.ReadAsStringAsync()).RootElement;
    }

    public static async Task<string> ErrorOf(HttpResponseMessage response) =>
        (await JsonOf(response)).GetProperty("error").GetProperty("message").GetString()!;

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _host.DisposeAsync();
        _root.Delete(recursive: true);
    }
}
