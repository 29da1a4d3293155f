using System.Security.Cryptography;

namespace Fretloom.Scores.Engraving;

/// <summary>Keeps engraved systems in a folder, each file named by the hash of all they were engraved from.</summary>
/// <remarks>
/// Safe when several builds use the folder at once: files appear whole or not at all. Each begins with the hash of the rest, and one that does
/// not fit it is as good as none, as is one that cannot be read or written. What was not used for longest is deleted when the folder holds more
/// than <see cref="MostBytes"/>; that is looked after at the first file that is written, and at every hundredth after it.
/// </remarks>
/// <param name="folder">The folder; made when it is first needed.</param>
/// <param name="clock">Tells when a file was used; null for the system's.</param>
public sealed class EngravingCache(string folder, TimeProvider? clock = null)
{
    private const int WritesBetweenLooks = 100;

    private readonly TimeProvider clock = clock ?? TimeProvider.System;
    private int writes;

    /// <summary>What the folder may hold, in bytes: 64 MB, some 1,500 exercises of four bars. Ours, without source.</summary>
    public long MostBytes { get; init; } = 64_000_000;

    /// <summary>The user's own cache; null where the user has no folder for it.</summary>
    public static EngravingCache? OfUser() =>
        UsersFolder(
            Environment.GetEnvironmentVariable("XDG_CACHE_HOME"),
            Environment.GetFolderPath(
                OperatingSystem.IsWindows()
                    ? Environment.SpecialFolder.LocalApplicationData
                    : Environment.SpecialFolder.UserProfile
            )
        )
            is { } folder
            ? new(folder)
            : null;

    /// <summary>Where a user's engravings are kept (XDG Base Directory Specification 0.8, from memory): a path that is not absolute counts as none.</summary>
    /// <param name="cacheHome">What <c>XDG_CACHE_HOME</c> says.</param>
    /// <param name="home">The user's home; on Windows the folder of local data.</param>
    internal static string? UsersFolder(string? cacheHome, string home) =>
        Path.IsPathFullyQualified(cacheHome ?? "") ? Path.Combine(cacheHome!, "fretloom", "engraving")
        : !Path.IsPathFullyQualified(home) ? null
        : OperatingSystem.IsWindows() ? Path.Combine(home, "fretloom", "engraving")
        : Path.Combine(home, ".cache", "fretloom", "engraving");

    /// <summary>What was kept under a name; null for nothing.</summary>
    internal EngravedSystem[]? Read(string key)
    {
        byte[] kept;
        try
        {
            kept = File.ReadAllBytes(PathOf(key));
        }
        catch (Exception reason) when (IsOfFiles(reason))
        {
            return null;
        }

        var start = SHA256.HashSizeInBytes;
        if (kept.Length < start || !SHA256.HashData(kept.AsSpan(start)).SequenceEqual(kept.AsSpan(0, start)))
        {
            return null;
        }

        Touch(key);
        return Systems(new MemoryStream(kept, start, kept.Length - start));
    }

    /// <summary>Keeps systems under a name.</summary>
    internal void Write(string key, IReadOnlyCollection<EngravedSystem> systems)
    {
        var content = Bytes(systems);
        try
        {
            MakeFolder();
            var draft = Path.Combine(folder, Path.GetRandomFileName());
            try
            {
                File.WriteAllBytes(draft, [.. SHA256.HashData(content), .. content]);
                File.SetLastWriteTimeUtc(draft, clock.GetUtcNow().UtcDateTime);
                File.Move(draft, PathOf(key), overwrite: true);
            }
            finally
            {
                File.Delete(draft);
            }

            if ((Interlocked.Increment(ref writes) - 1) % WritesBetweenLooks == 0)
            {
                Prune();
            }
        }
        catch (Exception reason) when (IsOfFiles(reason)) { }
    }

    private void Prune()
    {
        var held = 0L;
        foreach (var file in new DirectoryInfo(folder).GetFiles().OrderByDescending(file => file.LastWriteTimeUtc))
        {
            held += file.Length;
            if (held > MostBytes)
            {
                file.Delete();
            }
        }
    }

    // A folder that may only be read is still of use.
    private void Touch(string key)
    {
        try
        {
            File.SetLastWriteTimeUtc(PathOf(key), clock.GetUtcNow().UtcDateTime);
        }
        catch (Exception reason) when (IsOfFiles(reason)) { }
    }

    // The specification wants what is made here to be the user's alone.
    private void MakeFolder()
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(
                folder,
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute
            );
        }
    }

    private string PathOf(string key) => Path.Combine(folder, key);

    private static bool IsOfFiles(Exception reason) => reason is IOException or UnauthorizedAccessException;

    private static byte[] Bytes(IReadOnlyCollection<EngravedSystem> systems)
    {
        using var bytes = new MemoryStream();
        using var writer = new BinaryWriter(bytes);
        writer.Write(systems.Count);
        foreach (var system in systems)
        {
            writer.Write(system.Svg);
            writer.Write(system.WidthMm);
            writer.Write(system.HeightMm);
            writer.Write(system.FirstBar);
            writer.Write(system.LastBar);
        }

        writer.Flush();
        return bytes.ToArray();
    }

    private static EngravedSystem[] Systems(Stream content)
    {
        using var reader = new BinaryReader(content);
        var systems = new EngravedSystem[reader.ReadInt32()];
        for (var at = 0; at < systems.Length; at++)
        {
            systems[at] = new(
                reader.ReadString(),
                reader.ReadDouble(),
                reader.ReadDouble(),
                reader.ReadInt32(),
                reader.ReadInt32()
            );
        }

        return systems;
    }
}
