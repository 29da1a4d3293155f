using System.Globalization;
using System.Text.Json;
using Fretloom.Pages.Fonts;
using Fretloom.Scores.Scripting;
using Microsoft.ClearScript;
using Microsoft.ClearScript.JavaScript;
using Microsoft.ClearScript.V8;

namespace Fretloom.Pages.Pdf;

/// <summary>One running Typst compiler. Whoever uses it holds <see cref="ScriptRuntime.Gate"/>.</summary>
internal sealed class TypstEngine : IDisposable
{
    private const string MainPath = "/main.typ";
    private const string Library = "typst_ts_web_compiler.mjs";

    // The compiler remembers what it has set, some 13 MB for ten pages, gives nothing back, and can take 4 GB at most.
    private const double MostMemory = 768e6;

    // The compiler numbers every path it has met with 16 bits.
    private const int MostPaths = 60_000;

    private readonly V8ScriptEngine engine = ScriptRuntime.Start();
    private readonly ScriptObject host;
    private int documents;
    private int paths;
    private bool hasCrashed;

    /// <summary>Starts the compiler and gives it the faces of <see cref="TextFaces"/>.</summary>
    /// <exception cref="IOException">Its files are missing beside the assembly.</exception>
    /// <exception cref="TypstException">Its files are damaged.</exception>
    public TypstEngine()
    {
        try
        {
            var folder = Path.Combine(AppContext.BaseDirectory, "assets", "typst");
            engine.DocumentSettings.AddSystemDocument(
                Library,
                ModuleCategory.Standard,
                File.ReadAllText(Path.Combine(folder, Library))
            );
            engine.Execute(
                new DocumentInfo("typst-host.js") { Category = ModuleCategory.Standard },
                EmbeddedText.Read("typst-host.js")
            );
            host = (ScriptObject)engine.Script.typst;
            var fonts = (ScriptObject)engine.Evaluate("[]");
            foreach (var face in TextFaces.All)
            {
                fonts.InvokeMethod("push", Bytes(face.TrueType.Span));
            }

            var module = File.ReadAllBytes(Path.Combine(folder, "typst_ts_web_compiler_bg.wasm"));
            host.InvokeMethod("start", Bytes(module), fonts);
        }
        catch (Exception cause)
        {
            Dispose();
            if (cause is ScriptEngineException or InvalidCastException)
            {
                throw new TypstException($"the typesetter cannot be started: {cause.Message.Split('\n')[0]}", cause);
            }

            throw;
        }
    }

    /// <summary>Whether it has crashed or grown too large, and another should take its place.</summary>
    public bool IsSpent =>
        hasCrashed
        || paths > MostPaths
        || Convert.ToDouble(host.InvokeMethod("memoryInUse"), CultureInfo.InvariantCulture) > MostMemory;

    /// <summary>Sets one document; see <see cref="TypstCompiler.Compile"/>.</summary>
    public byte[] Compile(string mainTyp, IReadOnlyDictionary<string, byte[]> files)
    {
        host.InvokeMethod("forgetFiles");
        paths += files.Count + 1;
        foreach (var (name, content) in files)
        {
            host.InvokeMethod("addFile", "/" + name.TrimStart('/'), Bytes(content));
        }

        // A source at a path that had another is parsed by its changes only, and wrongly: each gets a path of its own.
        var path = $"/main{documents++}.typ";
        var answer = (ScriptObject)host.InvokeMethod("compile", path, mainTyp);
        hasCrashed = answer["hasCrashed"] is true;
        return answer["pdf"] is ITypedArray<byte> pdf
            ? pdf.ToArray()
            : throw new TypstException(Diagnostics((string)answer["diagnostics"], path));
    }

    /// <summary>Ends it.</summary>
    public void Dispose() => ScriptRuntime.End(engine);

    private ITypedArray<byte> Bytes(ReadOnlySpan<byte> content) => ScriptRuntime.Bytes(engine, content);

    private static List<TypstDiagnostic> Diagnostics(string json, string mainPath)
    {
        using var document = JsonDocument.Parse(json);
        return [.. document.RootElement.EnumerateArray().Select(one => Diagnostic(one, mainPath))];
    }

    // A range reads "line:column-line:column", counted from 0.
    private static TypstDiagnostic Diagnostic(JsonElement one, string mainPath)
    {
        var path = one.GetProperty("path").GetString()!;
        var start = one.GetProperty("range").GetString()!.Split('-')[0].Split(':');
        var isKnown = start.Length == 2;
        return new(
            path == mainPath ? MainPath : path,
            isKnown ? int.Parse(start[0], CultureInfo.InvariantCulture) + 1 : 0,
            isKnown ? int.Parse(start[1], CultureInfo.InvariantCulture) + 1 : 0,
            one.GetProperty("severity").GetString() == "error",
            one.GetProperty("message").GetString()!
        );
    }
}
