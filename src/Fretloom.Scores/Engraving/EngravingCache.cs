using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace Fretloom.Scores.Engraving;

/// <summary>Keeps engraved systems in a folder, each file named by the hash of what it was engraved from.</summary>
/// <remarks>
/// Safe when several builds use the folder at once: files appear whole or not at all, and one that cannot be read or written is as good as none.
/// </remarks>
/// <param name="folder">The folder; made when it is first needed.</param>
public sealed class EngravingCache(string folder)
{
    // Changes when the same score is engraved differently.
    private const string Edition = "1";

    /// <summary>The folder of the user's own cache.</summary>
    public static string UsersFolder =>
        Path.Combine(
            Environment.GetEnvironmentVariable("XDG_CACHE_HOME") is { Length: > 0 } cache ? cache
                : OperatingSystem.IsWindows()
                    ? Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData)
                : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".cache"),
            "fretloom",
            "engraving"
        );

    /// <summary>The name of what is engraved from a score with some options.</summary>
    internal static string Key(string score, string options) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{Edition}\n{options}\n{score}")));

    /// <summary>What was kept under a name; null for nothing.</summary>
    internal EngravedSystem[]? Read(string key)
    {
        try
        {
            return JsonSerializer.Deserialize<EngravedSystem[]>(File.ReadAllBytes(PathOf(key)));
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException or JsonException)
        {
            return null;
        }
    }

    /// <summary>Keeps systems under a name.</summary>
    internal void Write(string key, EngravedSystem[] systems)
    {
        try
        {
            Directory.CreateDirectory(folder);
            var draft = Path.Combine(folder, Path.GetRandomFileName());
            File.WriteAllBytes(draft, JsonSerializer.SerializeToUtf8Bytes(systems));
            File.Move(draft, PathOf(key), overwrite: true);
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException) { }
    }

    private string PathOf(string key) => Path.Combine(folder, key + ".json");
}
