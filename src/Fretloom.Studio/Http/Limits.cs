using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Fretloom.Studio.Http;

/// <summary>How much a request may ask of the host. All limits are ours, without source.</summary>
internal static class Limits
{
    /// <summary>The largest request with nothing but a sentence and some words around it, in bytes.</summary>
    public const int Sentence = 64 * 1024;

    /// <summary>The largest request that carries a lesson as JSON: every byte of it may be written as six.</summary>
    public const int LessonInJson = (Lessons.SourceText.MaxBytes * 6) + Sentence;

    /// <summary>Gives the limits to the server.</summary>
    public static void Set(KestrelServerLimits limits)
    {
        limits.MaxRequestLineSize = 8 * 1024;
        limits.MaxRequestHeadersTotalSize = 16 * 1024;
        limits.MaxRequestHeaderCount = 60;
        limits.MaxRequestBodySize = Sentence;
        limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        limits.MaxConcurrentConnections = 200;
    }
}
