using System.Security.Cryptography;

namespace Fretloom.Studio.Site;

/// <summary>A file of the studio's pages, plain or packed beforehand.</summary>
/// <param name="path">Where it is.</param>
/// <param name="encoding">How it is packed, as headers say it; empty for plain.</param>
internal sealed class PageFile(string path, string encoding)
{
    private readonly Lazy<string> _tag = new(() => TagOf(path, encoding));

    /// <summary>Where it is.</summary>
    public string Location => path;

    /// <summary>How it is packed, as headers say it; empty for plain.</summary>
    public string Encoding => encoding;

    /// <summary>Its entity tag.</summary>
    public string Tag => _tag.Value;

    // The plain file and the packed ones are different representations (RFC 9110, 8.8.3).
    private static string TagOf(string path, string encoding)
    {
        using var file = File.OpenRead(path);
        var hash = Convert.ToHexStringLower(SHA256.HashData(file).AsSpan(0, 16));
        return encoding.Length == 0 ? $"\"{hash}\"" : $"\"{hash}-{encoding}\"";
    }
}
