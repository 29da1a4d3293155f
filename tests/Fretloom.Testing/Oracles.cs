using System.Text.Json;

namespace Fretloom.Testing;

/// <summary>Independent programs and open data from npm, in <c>tests/oracles</c>.</summary>
public static class Oracles
{
    private static readonly string Folder = Repository.PathTo("tests", "oracles");

    private static readonly Lazy<Task<string?>> Missing = new(InstallAsync);

    /// <summary>Why the oracles cannot be used here; null when they can. Fetches them when they are not there yet.</summary>
    public static Task<string?> WhyMissingAsync() => Missing.Value;

    /// <summary>A JSON file of a package, by its path below <c>node_modules</c>.</summary>
    public static JsonElement ReadJson(params string[] path) =>
        JsonDocument.Parse(File.ReadAllText(Path.Combine([Folder, "node_modules", .. path]))).RootElement;

    /// <summary>Asks tonal a list of questions; see <c>tests/oracles/tonal.mjs</c>.</summary>
    /// <returns>One list of answers a question, in their order; empty where tonal has no answer.</returns>
    public static async Task<string[][]> AskTonalAsync(IEnumerable<string[]> questions)
    {
        var result = await Run.ProgramAsync("node", ["tonal.mjs"], Folder, JsonSerializer.Serialize(questions));
        return result.ExitCode == 0
            ? JsonSerializer.Deserialize<string[][]>(result.Output)!
            : throw new InvalidOperationException(result.Error);
    }

    private static async Task<string?> InstallAsync()
    {
        if (!Run.IsInstalled("node"))
        {
            return "node is not installed";
        }

        if (Directory.Exists(Path.Combine(Folder, "node_modules", "tonal")))
        {
            return null;
        }

        if (!Run.IsInstalled("npm"))
        {
            return "npm is not installed";
        }

        var result = await Run.ProgramAsync("npm", ["ci", "--loglevel=error"], Folder);
        return result.ExitCode == 0 ? null : $"npm ci failed: {result.Error}";
    }
}
