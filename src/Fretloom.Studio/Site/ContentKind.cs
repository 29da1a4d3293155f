namespace Fretloom.Studio.Site;

/// <summary>The media type of a file, by the ending of its name (IANA media types).</summary>
internal static class ContentKind
{
    /// <summary>The type of a file whose ending says nothing.</summary>
    public const string Unknown = "application/octet-stream";

    private static readonly Dictionary<string, string> Kinds = new(StringComparer.OrdinalIgnoreCase)
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
        [".mjs"] = "text/javascript; charset=utf-8",
        [".json"] = "application/json; charset=utf-8",
        [".map"] = "application/json; charset=utf-8",
        [".webmanifest"] = "application/manifest+json; charset=utf-8",
        [".txt"] = "text/plain; charset=utf-8",
        [".md"] = "text/markdown; charset=utf-8",
        [".wasm"] = "application/wasm",
        [".svg"] = "image/svg+xml",
        [".png"] = "image/png",
        [".ico"] = "image/x-icon",
        [".woff2"] = "font/woff2",
        [".ttf"] = "font/ttf",
        [".pdf"] = "application/pdf",
        [".zip"] = "application/zip",
        [".wav"] = "audio/wav",
        [".mid"] = "audio/midi",
        [".musicxml"] = "application/vnd.recordare.musicxml+xml",
        [".mxl"] = "application/vnd.recordare.musicxml",
    };

    /// <summary>The type of a file.</summary>
    public static string Of(string name) => Kinds.GetValueOrDefault(Path.GetExtension(name), Unknown);
}
