using Fretloom.Studio.Folder;
using Fretloom.Studio.Http;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace Fretloom.Studio.Site;

/// <summary>
/// The studio's own pages. What is there when the studio is opened is read and listed by its address, so that no address can lead to any other file.
/// </summary>
internal sealed class StudioPages
{
    private const string Start = "/index.html";

    // Shipped with the program, fetched by the pages when they first engrave.
    private static readonly string[] Shared = ["verovio/verovio-toolkit-wasm.js"];

    // The best first.
    private static readonly (string Ending, string Encoding)[] Packings = [(".br", "br"), (".gz", "gzip"), ("", "")];

    private readonly Dictionary<string, List<PageFile>> _files = new(StringComparer.Ordinal);

    /// <summary>Lists the files.</summary>
    /// <param name="folder">The pages.</param>
    /// <param name="assets">The program's assets.</param>
    public StudioPages(string folder, string assets)
    {
        var root = RealPath.Of(folder);
        foreach (
            var path in Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        )
        {
            Add("/" + Path.GetRelativePath(root, path).Replace(Path.DirectorySeparatorChar, '/'), path);
        }

        foreach (var name in Shared.Where(name => File.Exists(Path.Combine(assets, name))))
        {
            Add("/assets/" + name, Path.Combine(assets, name));
        }

        foreach (var packed in _files.Values)
        {
            packed.Sort((one, other) => Rank(one).CompareTo(Rank(other)));
        }
    }

    /// <summary>Answers with a file; with the start page where the address is one that the pages show by themselves.</summary>
    public Task Send(HttpContext context)
    {
        var path = context.Request.Path.Value ?? "/";
        var isPage = !context.Request.Path.StartsWithSegments("/api") && !Path.GetFileName(path).Contains('.');
        if (!_files.TryGetValue(path, out var files) && !(isPage && _files.TryGetValue(Start, out files)))
        {
            return Problems.Write(context, StatusCodes.Status404NotFound, "There is nothing here.");
        }

        if (!Methods.Read.Contains(context.Request.Method))
        {
            context.Response.Headers.Allow = string.Join(", ", Methods.Read);
            context.Response.StatusCode = StatusCodes.Status405MethodNotAllowed;
            return Task.CompletedTask;
        }

        return Send(context, files);
    }

    // Pages and scripts belong together, so nothing is used before it was asked whether it is still the same.
    private static async Task Send(HttpContext context, List<PageFile> files)
    {
        var headers = context.Response.Headers;
        headers.CacheControl = "no-cache";
        headers.Vary = "Accept-Encoding";
        var accepted = context.Request.GetTypedHeaders().AcceptEncoding;
        if (files.Find(file => IsAccepted(file.Encoding, accepted)) is not { } file)
        {
            await Problems.Write(context, StatusCodes.Status406NotAcceptable, "This is only there packed.");
            return;
        }

        if (Answers.IsUnchanged(context, file.Tag))
        {
            return;
        }

        if (file.Encoding.Length > 0)
        {
            headers.ContentEncoding = file.Encoding;
        }

        var plain = file.Encoding.Length > 0 ? Path.GetFileNameWithoutExtension(file.Location) : file.Location;
        await Answers.Bytes(context, file.Content, ContentKind.Of(plain));
    }

    private static bool IsAccepted(string encoding, IList<StringWithQualityHeaderValue> accepted)
    {
        if (encoding.Length == 0)
        {
            return true;
        }

        var named = accepted.Where(one => one.Value.Equals(encoding, StringComparison.OrdinalIgnoreCase)).ToList();
        return named.Count > 0 && named.TrueForAll(one => one.Quality is not 0);
    }

    private static int Rank(PageFile file) => Array.FindIndex(Packings, packing => packing.Encoding == file.Encoding);

    // A packed file answers for the plain one, and has no address of its own.
    private void Add(string address, string path)
    {
        var (ending, encoding) = Array.Find(
            Packings,
            packing => address.EndsWith(packing.Ending, StringComparison.Ordinal)
        );
        var plain = address[..^ending.Length];
        if (!_files.TryGetValue(plain, out var files))
        {
            _files[plain] = files = [];
        }

        files.Add(new PageFile(path, encoding));
    }
}
