using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace Fretloom.Studio.Http;

/// <summary>Writes answers, and their headers alone where only those were asked for.</summary>
internal static class Answers
{
    /// <summary>Answers with one JSON document, which nobody may keep.</summary>
    public static Task Json<T>(HttpContext context, T document, JsonTypeInfo<T> type)
    {
        context.Response.Headers.CacheControl = "no-store";
        return Bytes(context, JsonSerializer.SerializeToUtf8Bytes(document, type), "application/json; charset=utf-8");
    }

    /// <summary>Answers with bytes.</summary>
    public static async Task Bytes(HttpContext context, ReadOnlyMemory<byte> content, string kind)
    {
        context.Response.ContentType = kind;
        context.Response.ContentLength = content.Length;
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await context.Response.Body.WriteAsync(content, context.RequestAborted);
        }
    }

    /// <summary>Answers with the content of a file.</summary>
    public static async Task File(HttpContext context, string path, string kind)
    {
        var file = new FileInfo(path);
        context.Response.ContentType = kind;
        context.Response.ContentLength = file.Length;
        if (!HttpMethods.IsHead(context.Request.Method))
        {
            await context.Response.SendFileAsync(path, 0, file.Length, context.RequestAborted);
        }
    }

    /// <summary>Says that the answer is a file to be kept, under a name.</summary>
    public static void Attach(HttpContext context, string name)
    {
        var header = new ContentDispositionHeaderValue("attachment");
        header.SetHttpFileName(name);
        context.Response.Headers.ContentDisposition = header.ToString();
        context.Response.Headers.CacheControl = "no-store";
    }

    /// <summary>Answers that nothing has changed, where the browser has what is there.</summary>
    /// <returns>Whether that was the answer.</returns>
    public static bool IsUnchanged(HttpContext context, string tag)
    {
        context.Response.Headers.ETag = tag;
        var known = context.Request.GetTypedHeaders().IfNoneMatch;
        if (!known.Any(one => one.Tag == "*" || one.Tag == tag))
        {
            return false;
        }

        context.Response.StatusCode = StatusCodes.Status304NotModified;
        return true;
    }
}
