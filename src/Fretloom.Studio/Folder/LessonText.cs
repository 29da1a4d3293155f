using System.Security.Cryptography;

namespace Fretloom.Studio.Folder;

/// <summary>The content of a lesson file at one moment.</summary>
/// <param name="Bytes">The bytes; of a file that is too large for a lesson one more than the most.</param>
internal sealed record LessonText(byte[] Bytes)
{
    /// <summary>The entity tag: the SHA-256 of the bytes in hexadecimal, between quotation marks.</summary>
    public string Tag { get; } = TagOf(Bytes);

    /// <summary>The entity tag of a content.</summary>
    public static string TagOf(ReadOnlySpan<byte> content) =>
        $"\"{Convert.ToHexStringLower(SHA256.HashData(content))}\"";
}
