using System.Buffers;
using System.Text;

namespace Fretloom.Studio.Folder;

/// <summary>Which names a lesson file may have: those that lie in the folder itself and mean the same file on every system.</summary>
internal static class LessonName
{
    /// <summary>What every name ends in.</summary>
    public const string Ending = ".md";

    // Handouts get longer names than their lesson; systems take 255 bytes.
    private const int MostBytes = 200;

    private static readonly SearchValues<char> Forbidden = SearchValues.Create("/\\:*?\"<>|");

    // Names of devices on Windows, whatever their ending (Naming Files, Paths, and Namespaces, learn.microsoft.com; from memory).
    private static readonly HashSet<string> Devices = new(
        [
            "CON",
            "PRN",
            "AUX",
            "NUL",
            .. from device in new[] { "COM", "LPT" } from number in "0123456789¹²³" select $"{device}{number}",
        ],
        StringComparer.OrdinalIgnoreCase
    );

    /// <summary>Whether a name is one.</summary>
    public static bool IsFine(string name) =>
        name.Length > Ending.Length
        && name.EndsWith(Ending, StringComparison.Ordinal)
        && name[0] is not ('.' or ' ')
        && !name.AsSpan().ContainsAny(Forbidden)
        && !name.Any(char.IsControl)
        && IsWellFormed(name)
        // A slash that was written %2F in an address, and left so.
        && !name.Contains("%2F", StringComparison.OrdinalIgnoreCase)
        && !Devices.Contains(name.Split('.')[0].TrimEnd());

    private static bool IsWellFormed(string name)
    {
        var left = name.AsSpan();
        while (Rune.DecodeFromUtf16(left, out _, out var length) == OperationStatus.Done)
        {
            left = left[length..];
        }

        return left.IsEmpty && Encoding.UTF8.GetByteCount(name) <= MostBytes;
    }
}
