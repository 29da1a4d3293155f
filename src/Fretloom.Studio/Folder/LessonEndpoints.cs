using System.Text.Json;
using System.Text.Unicode;
using Fretloom.Lessons;
using Fretloom.Studio.Http;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Fretloom.Studio.Folder;

/// <summary>Lists, gives and takes lessons, and tells of changes, at <c>/api/lessons</c> and <c>/api/changes</c>.</summary>
/// <param name="folder">The folder.</param>
/// <param name="changes">What changes in it.</param>
/// <param name="ending">Is cancelled when the studio closes.</param>
internal sealed class LessonEndpoints(LessonFolder folder, FolderChanges changes, CancellationToken ending)
{
    private static readonly TimeSpan Silence = TimeSpan.FromSeconds(15);

    /// <summary>Gives them their addresses.</summary>
    public void Map(IEndpointRouteBuilder web)
    {
        web.MapMethods("/api/lessons", Methods.Read, List);
        web.MapMethods("/api/lessons/{name}", Methods.Read, Get);
        web.MapPut("/api/lessons/{name}", Put);
        web.MapGet("/api/changes", Changes);
    }

    private Task List(HttpContext context) =>
        Answers.Json(context, folder.List(), StudioJson.Contract.IReadOnlyListListedLesson);

    private async Task Get(HttpContext context)
    {
        var name = NameIn(context);
        if (folder.Read(name) is not { } text)
        {
            await Missing(context, name);
        }
        else if (text.Bytes.Length > SourceText.MaxBytes)
        {
            await TooLarge(context);
        }
        else
        {
            context.Response.Headers.CacheControl = "no-cache";
            if (!Answers.IsUnchanged(context, text.Tag))
            {
                await Answers.Bytes(context, text.Bytes, "text/markdown; charset=utf-8");
            }
        }
    }

    private async Task Put(HttpContext context)
    {
        var name = NameIn(context);
        if (!LessonName.IsFine(name))
        {
            await Missing(context, name);
            return;
        }

        var headers = context.Request.GetTypedHeaders();
        if (headers.IfMatch is [] && headers.IfNoneMatch is not [{ Tag.Value: "*" }])
        {
            await Problems.Write(
                context,
                StatusCodes.Status428PreconditionRequired,
                "Say what is to be replaced: If-Match with the entity tag of the lesson, or If-None-Match: * for a new one."
            );
            return;
        }

        var content = await Questions.Bytes(context, SourceText.MaxBytes);
        if (!Utf8.IsValid(content))
        {
            await Problems.Write(context, StatusCodes.Status400BadRequest, "A lesson is text in UTF-8.");
            return;
        }

        bool MayReplace(string? there) =>
            headers.IfMatch is []
                ? there is null
                : there is not null
                    && headers.IfMatch.Any(known => known.Tag == "*" || (!known.IsWeak && known.Tag == there));

        await Answer(context, name, folder.Save(name, content, MayReplace));
    }

    private async Task Answer(HttpContext context, string name, SaveOutcome? outcome)
    {
        if (outcome is null)
        {
            await Missing(context, name);
            return;
        }

        context.Response.Headers.ETag = outcome.Tag;
        if (outcome.IsSaved)
        {
            changes.Saved(name, outcome.Tag!);
            context.Response.StatusCode = StatusCodes.Status204NoContent;
            return;
        }

        await Problems.Write(
            context,
            StatusCodes.Status412PreconditionFailed,
            outcome.Tag is null
                ? "The lesson is no longer in the folder; it may be saved as a new one."
                : "The lesson in the folder is another by now; nothing was replaced."
        );
    }

    // One event a line of data (HTML Living Standard, 9.2 Server-sent events; from memory). A comment now and then shows that it lives.
    private async Task Changes(HttpContext context)
    {
        using var until = CancellationTokenSource.CreateLinkedTokenSource(context.RequestAborted, ending);
        context.Response.ContentType = "text/event-stream";
        context.Response.Headers.CacheControl = "no-store";
        try
        {
            var news = await changes.ListenAsync(until.Token);
            await Send(context, ": watching\n\n", until.Token);
            while (!until.IsCancellationRequested)
            {
                await Send(context, await Next(news, until.Token), until.Token);
            }
        }
        catch (OperationCanceledException)
        {
            // The page or the studio was closed.
        }
        finally
        {
            await until.CancelAsync();
        }
    }

    private static async Task<string> Next(
        System.Threading.Channels.ChannelReader<FolderChange> news,
        CancellationToken until
    )
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(until);
        patience.CancelAfter(Silence);
        try
        {
            var change = await news.ReadAsync(patience.Token);
            return $"data: {JsonSerializer.Serialize(change, StudioJson.Contract.FolderChange)}\n\n";
        }
        catch (OperationCanceledException) when (!until.IsCancellationRequested)
        {
            return ":\n\n";
        }
    }

    private static async Task Send(HttpContext context, string text, CancellationToken until)
    {
        await context.Response.WriteAsync(text, until);
        await context.Response.Body.FlushAsync(until);
    }

    private static string NameIn(HttpContext context) => (string)context.Request.RouteValues["name"]!;

    private static Task Missing(HttpContext context, string name) =>
        Problems.Write(
            context,
            StatusCodes.Status404NotFound,
            LessonName.IsFine(name) ? $"There is no lesson '{name}'." : "No lesson has such a name."
        );

    private static Task TooLarge(HttpContext context) =>
        Problems.Write(
            context,
            StatusCodes.Status413PayloadTooLarge,
            "The file is too large for a lesson, which has at most 1 MB."
        );
}
