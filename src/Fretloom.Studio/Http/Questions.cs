using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace Fretloom.Studio.Http;

/// <summary>Reads what is sent with a request, up to a limit.</summary>
internal static class Questions
{
    /// <summary>Reads the bytes.</summary>
    /// <exception cref="BadHttpRequestException">There are more than the most; 413.</exception>
    public static async Task<byte[]> Bytes(HttpContext context, long most)
    {
        if (context.Request.ContentLength > most)
        {
            throw new BadHttpRequestException("too large", StatusCodes.Status413PayloadTooLarge);
        }

        context.Features.GetRequiredFeature<IHttpMaxRequestBodySizeFeature>().MaxRequestBodySize = most;
        using var content = new MemoryStream();
        await context.Request.Body.CopyToAsync(content, context.RequestAborted);
        return content.ToArray();
    }

    /// <summary>Reads one JSON document.</summary>
    /// <exception cref="BadHttpRequestException">It is too large, no JSON, or not the document that was expected.</exception>
    public static async Task<T> Json<T>(HttpContext context, JsonTypeInfo<T> type, long most)
    {
        if (!context.Request.HasJsonContentType())
        {
            throw new BadHttpRequestException("not JSON", StatusCodes.Status415UnsupportedMediaType);
        }

        var content = await Bytes(context, most);
        try
        {
            return JsonSerializer.Deserialize(content, type) ?? throw new JsonException();
        }
        catch (JsonException problem)
        {
            throw new BadHttpRequestException("not the document", StatusCodes.Status400BadRequest, problem);
        }
    }
}
