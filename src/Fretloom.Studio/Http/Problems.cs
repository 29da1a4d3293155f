using Microsoft.AspNetCore.Http;

namespace Fretloom.Studio.Http;

/// <summary>Says what is wrong with a request as the JSON of all errors: <c>{"error":{"message":"..."}}</c>.</summary>
internal static class Problems
{
    /// <summary>Answers with an error.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">The status, 400 or more.</param>
    /// <param name="message">What is wrong and what was expected.</param>
    /// <param name="column">The column in the sentence, from 1; null where there is no sentence.</param>
    public static Task Write(HttpContext context, int status, string message, int? column = null)
    {
        context.Response.StatusCode = status;
        return Answers.Json(
            context,
            new ErrorDocument(new ErrorBody(message, column)),
            StudioJson.Contract.ErrorDocument
        );
    }

    /// <summary>Gives every error that comes without words its words, and keeps what went wrong inside to itself.</summary>
    public static async Task Tell(HttpContext context, RequestDelegate next)
    {
        try
        {
            await next(context);
        }
        catch (Exception) when (context.RequestAborted.IsCancellationRequested)
        {
            // Nobody is left to be told.
            return;
        }
        catch (Exception problem) when (!context.Response.HasStarted)
        {
            await Write(context, problem);
            return;
        }

        var answer = context.Response;
        if (!answer.HasStarted && answer.StatusCode >= StatusCodes.Status400BadRequest && answer.ContentType is null)
        {
            await Write(context, answer.StatusCode, Words(answer.StatusCode));
        }
    }

    private static Task Write(HttpContext context, Exception problem) =>
        problem switch
        {
            BadHttpRequestException bad => Write(context, bad.StatusCode, Words(bad.StatusCode)),
            IOException or UnauthorizedAccessException => Write(
                context,
                StatusCodes.Status500InternalServerError,
                "A file could not be read or written. Look whether the disk is full, and whether this user may use the folder."
            ),
            _ => Write(
                context,
                StatusCodes.Status500InternalServerError,
                $"Something went wrong inside ({problem.GetType().Name})."
            ),
        };

    private static string Words(int status) =>
        status switch
        {
            StatusCodes.Status404NotFound => "There is nothing here.",
            StatusCodes.Status405MethodNotAllowed => "This cannot be done here; see the Allow header for what can.",
            StatusCodes.Status408RequestTimeout => "The request took too long.",
            StatusCodes.Status413PayloadTooLarge => "This is too large.",
            StatusCodes.Status415UnsupportedMediaType => "Send JSON, as application/json.",
            _ => "This request cannot be understood.",
        };
}
