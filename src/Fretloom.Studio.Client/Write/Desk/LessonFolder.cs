using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using System.Text.Unicode;

namespace Fretloom.Studio.Client.Write.Desk;

/// <summary>A lesson in the folder of the host.</summary>
/// <param name="Name">Its file's name, which ends in <c>.md</c>.</param>
/// <param name="Title">Its title.</param>
/// <param name="Changed">When the file was last written.</param>
public sealed record LessonEntry(string Name, string Title, DateTimeOffset Changed);

/// <summary>A lesson file as it is on the disk.</summary>
/// <param name="Text">Its text.</param>
/// <param name="ETag">The SHA-256 of its bytes, in hexadecimal, without quotes.</param>
public sealed record LessonFile(string Text, string ETag);

/// <summary>What came of asking the host.</summary>
public enum Answer
{
    /// <summary>It was done.</summary>
    Done,

    /// <summary>The file on the disk is another than was said.</summary>
    IsAnother,

    /// <summary>There is no such file.</summary>
    IsMissing,

    /// <summary>The file is not UTF-8.</summary>
    IsNoText,

    /// <summary>The host does not do it, and would not if it were asked again.</summary>
    Refused,

    /// <summary>The host cannot be reached, or not now.</summary>
    Unreached,
}

/// <summary>What the host answered, and why.</summary>
/// <param name="Answer">What came of it.</param>
/// <param name="Reason">Why it was not done, in the host's words; else empty.</param>
/// <param name="ETag">What is on the disk now, as far as the host says it.</param>
public sealed record FileAnswer(Answer Answer, string Reason = "", string? ETag = null);

/// <summary>The lessons in the folder of the host.</summary>
public sealed class LessonFolder(HttpClient host)
{
    /// <summary>The lessons by name; null when the host cannot be reached.</summary>
    public async Task<IReadOnlyList<LessonEntry>?> ListAsync()
    {
        try
        {
            return await host.GetFromJsonAsync("api/lessons", WriteJson.Default.ListLessonEntry);
        }
        catch (Exception problem) when (IsOfTheWay(problem) || problem is JsonException)
        {
            return null;
        }
    }

    /// <summary>Reads a lesson.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>The answer and, when it is done, the file.</returns>
    public async Task<(FileAnswer Answer, LessonFile? File)> ReadAsync(string name)
    {
        try
        {
            using var response = await host.GetAsync(new Uri(PathOf(name), UriKind.Relative));
            var answer = await AnswerOf(response);
            if (answer.Answer != Answer.Done)
            {
                return (answer, null);
            }

            // As bytes: a text reader would drop a byte order mark, and put something else for what is not UTF-8.
            var bytes = await response.Content.ReadAsByteArrayAsync();
            // UTF-16 is valid UTF-8 too where it says plain English.
            return Utf8.IsValid(bytes) && !bytes.Contains((byte)0)
                ? (answer, new LessonFile(Encoding.UTF8.GetString(bytes), answer.ETag ?? ""))
                : (new FileAnswer(Answer.IsNoText), null);
        }
        catch (Exception problem) when (IsOfTheWay(problem))
        {
            return (new FileAnswer(Answer.Unreached), null);
        }
    }

    /// <summary>Writes a lesson, if the file on the disk is what it is said to be.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="text">Its text.</param>
    /// <param name="etag">What is on the disk; null when there is to be nothing of this name.</param>
    public async Task<FileAnswer> WriteAsync(string name, string text, string? etag)
    {
        try
        {
            using var request = new HttpRequestMessage(HttpMethod.Put, new Uri(PathOf(name), UriKind.Relative))
            {
                Content = new ByteArrayContent(Encoding.UTF8.GetBytes(text)),
            };
            request.Content.Headers.ContentType = new MediaTypeHeaderValue("text/markdown", "utf-8");
            if (etag is null)
            {
                request.Headers.IfNoneMatch.Add(EntityTagHeaderValue.Any);
            }
            else
            {
                request.Headers.IfMatch.Add(new EntityTagHeaderValue($"\"{etag}\""));
            }

            using var response = await host.SendAsync(request);
            return await AnswerOf(response);
        }
        catch (Exception problem) when (IsOfTheWay(problem))
        {
            return new FileAnswer(Answer.Unreached);
        }
    }

    private static string PathOf(string name) => "api/lessons/" + Uri.EscapeDataString(name);

    private static bool IsOfTheWay(Exception problem) =>
        problem is HttpRequestException or TaskCanceledException or IOException;

    private static async Task<FileAnswer> AnswerOf(HttpResponseMessage response)
    {
        var etag = response.Headers.ETag?.Tag.Trim('"');
        if (response.IsSuccessStatusCode)
        {
            return new FileAnswer(Answer.Done, ETag: etag);
        }

        var answer = response.StatusCode switch
        {
            HttpStatusCode.PreconditionFailed => Answer.IsAnother,
            HttpStatusCode.NotFound => Answer.IsMissing,
            HttpStatusCode.RequestTimeout or HttpStatusCode.TooManyRequests => Answer.Unreached,
            >= HttpStatusCode.InternalServerError => Answer.Unreached,
            _ => Answer.Refused,
        };
        return new FileAnswer(answer, await ReasonOf(response), etag);
    }

    // Errors are {"error":{"message":"..."}}; whatever else answers is told by its number, unless it stands in for a host that is away.
    private static async Task<string> ReasonOf(HttpResponseMessage response)
    {
        try
        {
            using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync());
            return json.RootElement.GetProperty("error").GetProperty("message").GetString() ?? "";
        }
        catch (Exception problem) when (problem is JsonException or KeyNotFoundException or InvalidOperationException)
        {
            return response.StatusCode >= HttpStatusCode.InternalServerError
                ? ""
                : ((int)response.StatusCode).ToString(CultureInfo.InvariantCulture);
        }
    }
}
