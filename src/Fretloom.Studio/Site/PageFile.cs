using System.Security.Cryptography;

namespace Fretloom.Studio.Site;

/// <summary>A file of the studio's pages, plain or packed beforehand.</summary>
/// <remarks>It is kept in memory: a page that is built anew must not be mixed with one that is open.</remarks>
/// <param name="path">Where it is when the studio is opened.</param>
/// <param name="encoding">How it is packed, as headers say it; empty for plain.</param>
internal sealed class PageFile(string path, string encoding)
{
    private readonly byte[] _content = File.ReadAllBytes(path);
    private string? _tag;

    /// <summary>Where it is.</summary>
    public string Location => path;

    /// <summary>What it holds.</summary>
    public ReadOnlyMemory<byte> Content => _content;

    /// <summary>How it is packed, as headers say it; empty for plain.</summary>
    public string Encoding => encoding;

    /// <summary>Its entity tag.</summary>
    public string Tag => _tag ??= TagOf(_content, encoding);

    // The plain file and the packed ones are different representations (RFC 9110, 8.8.3).
    private static string TagOf(byte[] content, string encoding)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(content).AsSpan(0, 16));
        return encoding.Length == 0 ? $"\"{hash}\"" : $"\"{hash}-{encoding}\"";
    }
}
