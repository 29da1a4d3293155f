using System.Net;
using System.Net.Http.Headers;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;

namespace Fretloom.Studio.Client.Tests.Write;

/// <summary>A host with a folder of lessons in memory: the same questions and answers, and it can be away.</summary>
internal sealed class FolderOfLessons : HttpMessageHandler
{
    /// <summary>The files.</summary>
    public Dictionary<string, string> Files { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether nobody answers.</summary>
    public bool IsAway { get; set; }

    /// <summary>What is done when a file is to be written, before it is.</summary>
    public Action? BeforeWriting { get; set; }

    /// <summary>Whether the answer to a write that was done gets lost.</summary>
    public bool LosesAnswers { get; set; }

    /// <summary>What the next answer waits for.</summary>
    public Task? BeforeAnswering { get; set; }

    /// <summary>What the next answer with a file waits for, which is then as it was when it was asked for.</summary>
    public Task? BeforeReading { get; set; }

    /// <summary>A name that no file can have here.</summary>
    public string? Untaken { get; set; }

    /// <summary>Why nothing can be written, as the host says it; null when it can.</summary>
    public string? Trouble { get; set; }

    /// <summary>How often a file was written or was to be.</summary>
    public int Puts { get; private set; }

    /// <summary>How often a file was written.</summary>
    public int Writes { get; private set; }

    /// <summary>Asks this host.</summary>
    public LessonFolder Asked() => new(new HttpClient(this, false) { BaseAddress = new Uri("http://localhost/") });

    /// <summary>The ETag of a text, without quotes.</summary>
    public static string ETagOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    protected override async Task<HttpResponseMessage> SendAsync(
        HttpRequestMessage request,
        CancellationToken cancellationToken
    )
    {
        if (IsAway)
        {
            throw new HttpRequestException("Nobody answers.");
        }

        var path = Uri.UnescapeDataString(request.RequestUri!.AbsolutePath);
        if (BeforeAnswering is { } wait)
        {
            BeforeAnswering = null;
            await wait;
        }

        if (path == "/api/lessons")
        {
            var list = Files.Keys.Order().Select(name => new LessonEntry(name, name, DateTimeOffset.UnixEpoch));
            return Response(
                HttpStatusCode.OK,
                JsonSerializer.Serialize(list, JsonSerializerOptions.Web),
                "application/json"
            );
        }

        var file = path["/api/lessons/".Length..];
        if (request.Method == HttpMethod.Put)
        {
            var text = await request.Content!.ReadAsByteArrayAsync(cancellationToken);
            return Put(file, request, Encoding.UTF8.GetString(text));
        }

        var answer = Get(file);
        if (BeforeReading is { } reading)
        {
            BeforeReading = null;
            await reading;
        }

        return answer;
    }

    private HttpResponseMessage Get(string name) =>
        !Files.TryGetValue(name, out var text) ? Failed(HttpStatusCode.NotFound, "There is none.")
        : text.Length > SourceTextLimit ? Failed(HttpStatusCode.RequestEntityTooLarge, "It is too large.")
        : Tagged(Response(HttpStatusCode.OK, text, "text/markdown"), text);

    private HttpResponseMessage Put(string name, HttpRequestMessage request, string text)
    {
        Puts++;
        BeforeWriting?.Invoke();
        if (name == Untaken)
        {
            return Failed(HttpStatusCode.NotFound, "There is none.");
        }

        if (text.Length > SourceTextLimit)
        {
            return Failed(HttpStatusCode.RequestEntityTooLarge, "It is too large.");
        }

        if (Trouble is not null)
        {
            return Failed(HttpStatusCode.InternalServerError, Trouble);
        }

        var isThere = Files.TryGetValue(name, out var now);
        var asked = request.Headers.IfMatch.SingleOrDefault()?.Tag.Trim('"');
        var isNew = request.Headers.IfNoneMatch.Count > 0;
        if (asked is null && !isNew)
        {
            return Response(HttpStatusCode.PreconditionRequired, "", "text/plain");
        }

        if (isNew ? isThere : !isThere || ETagOf(now!) != asked)
        {
            var refusal = Response(HttpStatusCode.PreconditionFailed, "", "text/plain");
            return isThere ? Tagged(refusal, now!) : refusal;
        }

        Files[name] = text;
        Writes++;
        return LosesAnswers
            ? throw new HttpRequestException("The answer is lost.")
            : Tagged(new HttpResponseMessage(HttpStatusCode.NoContent), text);
    }

    private const int SourceTextLimit = 1_000_000;

    private static HttpResponseMessage Failed(HttpStatusCode status, string why) =>
        Response(status, $$$"""{"error":{"message":"{{{why}}}"}}""", "application/json");

    private static HttpResponseMessage Response(HttpStatusCode status, string text, string kind) =>
        new(status) { Content = new StringContent(text, Encoding.UTF8, kind) };

    private static HttpResponseMessage Tagged(HttpResponseMessage response, string text)
    {
        response.Headers.ETag = new EntityTagHeaderValue($"\"{ETagOf(text)}\"");
        return response;
    }
}

/// <summary>Drafts in one store in memory, as a browser keeps them: those of this tab, and those that were left behind.</summary>
internal sealed class DraftsInMemory : IDrafts
{
    private const string Tab = "tab";
    private readonly Dictionary<string, Draft> _store = [];
    private int _count;

    /// <summary>What this tab keeps, by lesson.</summary>
    public Dictionary<string, (string? ETag, string Text)> Kept =>
        _store
            .Where(one => one.Key.StartsWith(Tab + " ", StringComparison.Ordinal))
            .ToDictionary(one => one.Key[(Tab.Length + 1)..], one => (one.Value.ETag, one.Value.Text));

    /// <summary>Whether there is room.</summary>
    public bool IsFull { get; set; }

    /// <summary>The texts that were left behind of a lesson, the newest first.</summary>
    public IReadOnlyList<string> Left(string name) =>
        [
            .. _store
                .Where(one => one.Key.EndsWith(" " + name, StringComparison.Ordinal) && one.Key != Own(name))
                .OrderByDescending(one => one.Value.At)
                .Select(one => one.Value.Text),
        ];

    /// <summary>This tab keeps something.</summary>
    public void Put(string name, string? etag, string text) => Store(Own(name), etag, text);

    /// <summary>A tab that is closed left something behind.</summary>
    public void Leave(string name, string? etag, string text) => Store($"gone{_count} {name}", etag, text);

    public ValueTask<bool> KeepAsync(string name, string? etag, string text)
    {
        if (!IsFull)
        {
            Put(name, etag, text);
        }

        return new(!IsFull);
    }

    public ValueTask SetAsideAsync(string name)
    {
        if (_store.Remove(Own(name), out var draft))
        {
            Leave(name, draft.ETag, draft.Text);
        }

        return default;
    }

    public ValueTask DropAsync(string name) => DiscardAsync(Own(name));

    public ValueTask DiscardAsync(string key)
    {
        _store.Remove(key);
        return default;
    }

    public ValueTask<IReadOnlyList<string>> NamesAsync() =>
        new([.. _store.Keys.Select(key => key[(key.IndexOf(' ', StringComparison.Ordinal) + 1)..]).Distinct()]);

    public ValueTask<IReadOnlyList<Draft>> LeftBehindAsync(string name) =>
        new([
            .. _store
                .Values.Where(draft =>
                    draft.Key.EndsWith(" " + name, StringComparison.Ordinal) && draft.Key != Own(name)
                )
                .OrderByDescending(draft => draft.At),
        ]);

    private static string Own(string name) => $"{Tab} {name}";

    private void Store(string key, string? etag, string text) =>
        _store[key] = new Draft(key, text, etag, DateTimeOffset.UnixEpoch.AddSeconds(_count++));
}

/// <summary>A clock that stands until it is moved; what waits for it goes on then.</summary>
internal class StoppedClock : TimeProvider
{
    private readonly List<Waiting> _waiting = [];
    private DateTimeOffset _now = DateTimeOffset.UnixEpoch;

    public override DateTimeOffset GetUtcNow() => _now;

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        var timer = new Waiting(this, () => callback(state));
        timer.Change(dueTime, period);
        return timer;
    }

    /// <summary>Moves the clock; what is due is done, in order.</summary>
    public async Task PassAsync(TimeSpan time)
    {
        var end = _now + time;
        while (_waiting.Where(one => one.Due <= end).MinBy(one => one.Due) is { } next)
        {
            _now = next.Due;
            _waiting.Remove(next);
            next.Do();
            await SettleAsync();
        }

        _now = end;
        await SettleAsync();
    }

    private static async Task SettleAsync()
    {
        for (var turn = 0; turn < 20; turn++)
        {
            await Task.Yield();
            await Task.Delay(1);
        }
    }

    private sealed class Waiting(StoppedClock clock, Action callback) : ITimer
    {
        public DateTimeOffset Due { get; private set; }

        public Action Do => callback;

        public bool Change(TimeSpan dueTime, TimeSpan period)
        {
            clock._waiting.Remove(this);
            if (dueTime != Timeout.InfiniteTimeSpan)
            {
                Due = clock._now + dueTime;
                clock._waiting.Add(this);
            }

            return true;
        }

        public void Dispose() => clock._waiting.Remove(this);

        public ValueTask DisposeAsync()
        {
            Dispose();
            return default;
        }
    }
}
