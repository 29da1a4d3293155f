using System.Text;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Studio.Folder;
using Fretloom.Studio.Http;
using Fretloom.Studio.Site;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Fretloom.Studio.Work;

/// <summary>Takes orders for handouts, tells how far they are, and gives the files, at <c>/api/handouts</c>.</summary>
/// <param name="desk">Has them made.</param>
/// <param name="lessons">The lessons that are saved.</param>
internal sealed class HandoutEndpoints(HandoutDesk desk, LessonFolder lessons)
{
    /// <summary>Gives them their addresses.</summary>
    public void Map(IEndpointRouteBuilder web)
    {
        web.MapPost("/api/handouts", Order);
        web.MapMethods("/api/handouts/{id}", Methods.Read, Tell);
        web.MapDelete("/api/handouts/{id}", Cancel);
        web.MapMethods("/api/handouts/{id}/file/{name}", Methods.Read, Give);
    }

    private async Task Order(HttpContext context)
    {
        var asked = await Questions.Json(context, StudioJson.Contract.HandoutRequest, Limits.LessonInJson);
        if (ReadOptions(asked, out var optionsFor) is { } problem)
        {
            await Problems.Write(context, StatusCodes.Status400BadRequest, problem);
        }
        else if (TextOf(asked) is not { } text)
        {
            await Problems.Write(context, StatusCodes.Status404NotFound, "There is no such lesson.");
        }
        else if (text.Length > SourceText.MaxBytes)
        {
            await Problems.Write(context, StatusCodes.Status413PayloadTooLarge, "A lesson has at most 1 MB.");
        }
        else if (desk.Take(asked.Name, text, optionsFor) is not { } job)
        {
            await Problems.Write(
                context,
                StatusCodes.Status429TooManyRequests,
                "Many handouts are being made; order again when some are done."
            );
        }
        else
        {
            context.Response.StatusCode = StatusCodes.Status202Accepted;
            context.Response.Headers.Location = $"/api/handouts/{job.Id}";
            await Answers.Json(context, new HandoutTicket(job.Id), StudioJson.Contract.HandoutTicket);
        }
    }

    private static string? ReadOptions(HandoutRequest asked, out Func<string, BuildOptions> optionsFor)
    {
        var formats = BuildWords.Formats(asked.Formats ?? ["pdf"]);
        var isOrder = BuildWords.Orders.TryGetValue(asked.Order ?? "fourths", out var order);
        var keys = BuildWords.Keys(asked.Keys ?? asked.Key, order);
        var isPaper = BuildWords.Papers.TryGetValue(asked.Paper ?? "a4", out var paper);
        optionsFor = folder =>
            new(folder)
            {
                Formats = formats!.Value,
                Keys = keys!,
                Paper = paper,
                IsLargePrint = asked.LargePrint,
            };
        return formats is null ? "'formats' takes pdf, html, svg, png, musicxml, midi and wav, at least one."
            : !isOrder ? "'order' takes fourths, half-steps or fewest-moves."
            : asked.Keys is not (null or "all") ? "'keys' takes \"all\", or is left out."
            : keys is null ? "'key' takes a tonic such as \"D\" or a key such as \"Bb minor\"."
            : !isPaper ? "'paper' takes a4 or letter."
            : null;
    }

    private byte[]? TextOf(HandoutRequest asked) =>
        !LessonName.IsFine(asked.Name) ? null
        : asked.Text is null ? lessons.Read(asked.Name)?.Bytes
        : Encoding.UTF8.GetBytes(asked.Text);

    private Task Tell(HttpContext context) =>
        JobIn(context) is { } job
            ? Answers.Json(context, job.Status, StudioJson.Contract.HandoutStatus)
            : Missing(context);

    private Task Cancel(HttpContext context)
    {
        if (JobIn(context) is not { } job)
        {
            return Missing(context);
        }

        desk.Cancel(job);
        context.Response.StatusCode = StatusCodes.Status204NoContent;
        return Task.CompletedTask;
    }

    private Task Give(HttpContext context)
    {
        var name = (string?)context.Request.RouteValues["name"];
        if (JobIn(context)?.File is not { } path || Path.GetFileName(path) != name)
        {
            return Missing(context);
        }

        Answers.Attach(context, name);
        return Answers.File(context, path, ContentKind.Of(name));
    }

    private HandoutJob? JobIn(HttpContext context) => desk.Find((string)context.Request.RouteValues["id"]!);

    private static Task Missing(HttpContext context) =>
        Problems.Write(
            context,
            StatusCodes.Status404NotFound,
            "There are no such handouts, or they are no longer kept; order them again."
        );
}
