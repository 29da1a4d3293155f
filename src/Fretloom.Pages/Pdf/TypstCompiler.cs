using System.Globalization;
using System.Text.Json;
using Fretloom.Pages.Fonts;
using Microsoft.ClearScript;
using Microsoft.ClearScript.JavaScript;
using Microsoft.ClearScript.V8;

namespace Fretloom.Pages.Pdf;

/// <summary>
/// Sets Typst sources as PDF. The compiler (Typst 0.14 as WebAssembly) is started on the first call and kept
/// warm: make one of these for as many documents as there are, and dispose it.
/// </summary>
/// <remarks>
/// Safe to use from several threads; documents are set one after another. The same input gives the same bytes
/// as long as the source says <c>#set document(date: none)</c>, as the handout template does. Only the faces of
/// <see cref="TextFaces"/> are known to it, and only the files handed over: it reads neither disk nor network.
/// </remarks>
/// <example>
/// <code>
/// using var typst = new TypstCompiler();
/// byte[] pdf = typst.Compile("#set document(date: none)\n= B♭ major\n#image(\"neck.svg\", alt: \"A neck\")",
///     new Dictionary&lt;string, byte[]&gt; { ["neck.svg"] = svg });
/// </code>
/// </example>
public sealed class TypstCompiler : IDisposable
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "assets", "typst");
    private readonly Lock gate = new();
    private V8ScriptEngine? engine;
    private bool isDisposed;

    /// <summary>Sets one document.</summary>
    /// <param name="mainTyp">The Typst source; it stands at <c>/main.typ</c>.</param>
    /// <param name="files">Files the source names, by path from the root, such as <c>figures/neck.svg</c>.</param>
    /// <returns>The PDF.</returns>
    /// <exception cref="TypstException">The source has errors.</exception>
    /// <exception cref="IOException">The compiler's files are missing beside the assembly.</exception>
    /// <exception cref="ObjectDisposedException">After <see cref="Dispose"/>.</exception>
    public byte[] Compile(string mainTyp, IReadOnlyDictionary<string, byte[]> files)
    {
        ArgumentNullException.ThrowIfNull(mainTyp);
        ArgumentNullException.ThrowIfNull(files);
        lock (gate)
        {
            ObjectDisposedException.ThrowIf(isDisposed, this);
            engine ??= Start();
            var typst = (ScriptObject)engine.Script.typst;
            typst.InvokeMethod("forgetFiles");
            foreach (var (path, content) in files)
            {
                typst.InvokeMethod("addFile", "/" + path.TrimStart('/'), Bytes(typst, content));
            }

            var answer = (ScriptObject)typst.InvokeMethod("compile", mainTyp);
            var pdf = (answer["pdf"] as ITypedArray<byte>)?.ToArray();
            var diagnostics = Read((string)answer["diagnostics"]);
            if (answer["hasCrashed"] is true)
            {
                engine.Dispose();
                engine = null;
            }

            return pdf ?? throw new TypstException(diagnostics);
        }
    }

    /// <summary>
    /// Starts the compiler before the first document needs it. Meant for another thread; does nothing when it runs or is
    /// disposed. What goes wrong is told by <see cref="Compile"/>, which tries again.
    /// </summary>
    internal void WarmUp()
    {
        lock (gate)
        {
            if (!isDisposed)
            {
                engine ??= Start();
            }
        }
    }

    /// <summary>Ends the engine. A process that leaves one running is ended by the system when it exits.</summary>
    public void Dispose()
    {
        lock (gate)
        {
            isDisposed = true;
            engine?.Dispose();
            engine = null;
        }
    }

    private static V8ScriptEngine Start()
    {
        var wasm = File.ReadAllBytes(Path.Combine(Folder, "typst_ts_web_compiler_bg.wasm"));
        var library = File.ReadAllText(Path.Combine(Folder, "typst_ts_web_compiler.mjs"));
        var engine = new V8ScriptEngine();
        try
        {
            engine.DocumentSettings.AddSystemDocument("typst_ts_web_compiler.mjs", ModuleCategory.Standard, library);
            engine.Execute(EmbeddedText.Read("typst-globals.js"));
            engine.Execute(
                new DocumentInfo("typst-host.js") { Category = ModuleCategory.Standard },
                EmbeddedText.Read("typst-host.js")
            );
            var typst = (ScriptObject)engine.Script.typst;
            var fonts = (ScriptObject)engine.Evaluate("[]");
            foreach (var face in TextFaces.All)
            {
                fonts.InvokeMethod("push", Bytes(typst, face.TrueType.Span));
            }

            typst.InvokeMethod("start", Bytes(typst, wasm), fonts);
            return engine;
        }
        catch
        {
            engine.Dispose();
            throw;
        }
    }

    private static ITypedArray<byte> Bytes(ScriptObject typst, ReadOnlySpan<byte> content)
    {
        var array = (ITypedArray<byte>)typst.InvokeMethod("newBytes", content.Length);
        if (!content.IsEmpty)
        {
            array.Write(content, 0, (ulong)content.Length, 0);
        }

        return array;
    }

    private static List<TypstDiagnostic> Read(string json)
    {
        using var document = JsonDocument.Parse(json);
        return [.. document.RootElement.EnumerateArray().Select(Read)];
    }

    // A range reads "line:column-line:column", counted from 0.
    private static TypstDiagnostic Read(JsonElement one)
    {
        var start = one.GetProperty("range").GetString()!.Split('-')[0].Split(':');
        var isKnown = start.Length == 2;
        return new TypstDiagnostic(
            one.GetProperty("path").GetString()!,
            isKnown ? int.Parse(start[0], CultureInfo.InvariantCulture) + 1 : 0,
            isKnown ? int.Parse(start[1], CultureInfo.InvariantCulture) + 1 : 0,
            one.GetProperty("severity").GetString() == "error",
            one.GetProperty("message").GetString()!
        );
    }
}
