using Microsoft.AspNetCore.Http;

namespace Fretloom.Studio.Http;

/// <summary>Lets only the studio's own pages, and programs that are no browser, use what changes or tells something.</summary>
internal static class SameOrigin
{
    /// <summary>Refuses what another page asks for (Fetch Metadata Request Headers, from memory), 403.</summary>
    public static Task Check(HttpContext context, RequestDelegate next) =>
        NeedsIt(context.Request) && !IsSame(context.Request)
            ? Problems.Write(context, StatusCodes.Status403Forbidden, "Another page may not use the studio.")
            : next(context);

    private static bool NeedsIt(HttpRequest request) =>
        request.Path.StartsWithSegments("/api")
        || !(HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method));

    /// <summary>Whether a request comes from the studio's own pages, or from no page.</summary>
    internal static bool IsSame(HttpRequest request)
    {
        var own = $"{request.Scheme}://{request.Host.Value}";
        return request.Headers.Origin.All(origin => string.Equals(origin, own, StringComparison.OrdinalIgnoreCase))
            && request.Headers["Sec-Fetch-Site"].All(site => site is "same-origin" or "none");
    }
}
