using System.Globalization;
using System.Text.Json;
using Fretloom.Scores.Scripting;
using Microsoft.ClearScript;
using Microsoft.ClearScript.V8;

namespace Fretloom.Scores.Engraving;

/// <summary>One running engraver. Whoever uses it holds <see cref="ScriptRuntime.Gate"/>.</summary>
internal sealed class EngraverEngine : IEngravingEngine, IDisposable
{
    /// <summary>Where its file lies beside the program.</summary>
    public static readonly string Library = Path.Combine(
        AppContext.BaseDirectory,
        "assets",
        "verovio",
        "verovio-toolkit-wasm.js"
    );

    private readonly V8ScriptEngine engine = ScriptRuntime.Start();
    private readonly ScriptObject host;

    /// <summary>Starts it.</summary>
    /// <param name="library">Its file.</param>
    /// <exception cref="EngravingException">The file cannot be read, or is no engraver.</exception>
    public EngraverEngine(string library)
    {
        From = library;
        try
        {
            engine.Execute(ScriptRuntime.EmbeddedScript("engraver-globals.js"));
            var script = EngraverScript.Of(File.ReadAllBytes(library));
            engine.Script[EngraverScript.Name] = ScriptRuntime.Bytes(engine, script.Packed);
            engine.Execute(new DocumentInfo("verovio-toolkit-wasm.js"), script.Text);
            engine.Execute(new DocumentInfo("engraver-host.js"), ScriptRuntime.EmbeddedScript("engraver-host.js"));
            host = (ScriptObject)engine.Script.engraver;
            host.InvokeMethod("start");
        }
        catch (Exception cause)
            when (cause is ScriptEngineException or InvalidCastException or IOException or UnauthorizedAccessException)
        {
            Dispose();
            throw new EngravingException($"it cannot be started: {FirstLine(cause.Message)}", cause);
        }
    }

    /// <summary>The file it was started from.</summary>
    public string From { get; }

    /// <summary>Whether it has crashed, and another should take its place.</summary>
    public bool IsSpent { get; private set; }

    /// <summary>What it warned of when it read the last score; empty for nothing.</summary>
    public string Log { get; private set; } = "";

    /// <summary>Engraves a score, a picture for each page.</summary>
    /// <param name="score">MEI or MusicXML.</param>
    /// <param name="options">The engraver's options as JSON.</param>
    /// <exception cref="EngravingException">The score cannot be read, or the engraver crashed.</exception>
    public string[] Engrave(string score, string options)
    {
        var answer = (ScriptObject)host.InvokeMethod("engrave", score, options);
        IsSpent = answer["hasCrashed"] is true;
        if (answer["error"] is string error)
        {
            throw new EngravingException(FirstLine(error));
        }

        Log = Convert.ToString(answer["log"], CultureInfo.InvariantCulture) ?? "";
        return JsonSerializer.Deserialize<string[]>((string)answer["pages"])!;
    }

    /// <inheritdoc/>
    public Task<string[]> EngraveAsync(string score, string options) => Task.FromResult(Engrave(score, options));

    private static string FirstLine(string words) => words.Split('\n')[0].Trim().TrimEnd('.');

    /// <summary>Ends it.</summary>
    public void Dispose() => ScriptRuntime.End(engine);
}
