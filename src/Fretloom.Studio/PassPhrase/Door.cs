using System.Globalization;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using Fretloom.Studio.Http;
using Microsoft.AspNetCore.Http;

namespace Fretloom.Studio.PassPhrase;

/// <summary>Lets in who knows the pass phrase, and knows them again by a cookie until the studio closes.</summary>
/// <remarks>What goes over the network is not encrypted: it is for a network whose users may know it.</remarks>
/// <param name="phrase">The pass phrase.</param>
/// <param name="clock">Tells the time.</param>
internal sealed class Door(string phrase, TimeProvider clock)
{
    private const string LoginPath = "/login";
    private const int KeyBytes = 32;

    private static readonly string Page = ReadPage();

    private readonly byte[] _phrase = Digest(phrase);
    private readonly string _key = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(KeyBytes));
    private readonly WrongTries _tries = new(clock);

    /// <summary>Asks for the pass phrase who has not given it yet.</summary>
    public Task Guard(HttpContext context, RequestDelegate next)
    {
        var request = context.Request;
        return request.Path == LoginPath && HttpMethods.IsPost(request.Method) ? LogIn(context)
            : IsKnown(context) ? next(context)
            : IsForProgram(request.Path)
                ? Problems.Write(context, StatusCodes.Status401Unauthorized, "The pass phrase has not been given.")
            : Ask(context, StatusCodes.Status401Unauthorized, "");
    }

    private async Task LogIn(HttpContext context)
    {
        if (!SameOrigin.IsSame(context.Request))
        {
            await Problems.Write(context, StatusCodes.Status403Forbidden, "Another page may not use the studio.");
            return;
        }

        // Read first: many tries that are held back would else all be judged before the first of them counts.
        var said = await Said(context);
        var address = context.Connection.RemoteIpAddress ?? IPAddress.None;
        if (_tries.WaitOf(address) is { Ticks: > 0 } wait)
        {
            var seconds = Math.Ceiling(wait.TotalSeconds).ToString(CultureInfo.InvariantCulture);
            context.Response.Headers.RetryAfter = seconds;
            await Ask(context, StatusCodes.Status429TooManyRequests, $"Wait {seconds} s before you try again.");
            return;
        }

        if (!CryptographicOperations.FixedTimeEquals(Digest(said), _phrase))
        {
            _tries.Add(address);
            await Ask(context, StatusCodes.Status401Unauthorized, "This is not the pass phrase.");
            return;
        }

        _tries.Forgive(address);
        context.Response.Cookies.Append(
            CookieName(context),
            _key,
            new CookieOptions
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Strict,
                Path = "/",
            }
        );
        context.Response.Redirect("/");
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
    }

    private static async Task<string> Said(HttpContext context)
    {
        if (!context.Request.HasFormContentType)
        {
            return "";
        }

        var form = await context.Request.ReadFormAsync(context.RequestAborted);
        return form["phrase"].ToString();
    }

    private bool IsKnown(HttpContext context) =>
        context.Request.Cookies[CookieName(context)] is { } key
        && CryptographicOperations.FixedTimeEquals(Digest(key), Digest(_key));

    // Browsers do not tell the ports of a host apart.
    private static string CookieName(HttpContext context) =>
        string.Create(CultureInfo.InvariantCulture, $"fretloom-{context.Connection.LocalPort}");

    private static bool IsForProgram(PathString path) =>
        path.StartsWithSegments("/api") || Path.GetFileName(path.Value ?? "").Contains('.');

    private static Task Ask(HttpContext context, int status, string said)
    {
        context.Response.StatusCode = status;
        context.Response.Headers.CacheControl = "no-store";
        var page = Page.Replace(
            "<!-- said -->",
            said.Length == 0 ? "" : $"<p role=\"alert\">{said}</p>",
            StringComparison.Ordinal
        );
        return Answers.Bytes(context, Encoding.UTF8.GetBytes(page), "text/html; charset=utf-8");
    }

    private static byte[] Digest(string text) => SHA256.HashData(Encoding.UTF8.GetBytes(text));

    private static string ReadPage()
    {
        using var stream = typeof(Door).Assembly.GetManifestResourceStream("login.html")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
