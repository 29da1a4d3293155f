using Microsoft.AspNetCore.Http;

namespace Fretloom.Studio.Http;

/// <summary>What every answer tells the browser not to allow (Content Security Policy Level 3, Fetch, HTML; from memory).</summary>
internal static class SecurityHeaders
{
    // WebAssembly asks for 'wasm-unsafe-eval'; the pictures carry styles of their own.
    private const string Policy =
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self' 'unsafe-inline'; "
        + "img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self'; manifest-src 'self'; "
        + "frame-src 'self'; base-uri 'self'; form-action 'self'; frame-ancestors 'self'";

    /// <summary>The names and values.</summary>
    public static IReadOnlyDictionary<string, string> All { get; } =
        new Dictionary<string, string>
        {
            ["Content-Security-Policy"] = Policy,
            ["X-Content-Type-Options"] = "nosniff",
            ["Referrer-Policy"] = "same-origin",
            ["Cross-Origin-Opener-Policy"] = "same-origin",
            ["Cross-Origin-Resource-Policy"] = "same-origin",
            ["Permissions-Policy"] =
                "camera=(), display-capture=(), geolocation=(), payment=(), usb=(), microphone=(self), midi=(self)",
        };

    /// <summary>Puts them on an answer, whatever comes of the request.</summary>
    public static Task Add(HttpContext context, RequestDelegate next)
    {
        foreach (var (name, value) in All)
        {
            context.Response.Headers[name] = value;
        }

        return next(context);
    }
}
