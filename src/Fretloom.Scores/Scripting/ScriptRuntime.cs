using System.Reflection;
using Microsoft.ClearScript.JavaScript;
using Microsoft.ClearScript.V8;

namespace Fretloom.Scores.Scripting;

/// <summary>The one V8 of a process. The engraver of notation and the typesetter of documents are script libraries that run in it.</summary>
/// <remarks>
/// Two of V8's isolates in one process can wait for each other for ever when one of them ends while the other prepares machine code.
/// So there is one, all engines are contexts of it, and whoever starts, uses or ends an engine holds <see cref="Gate"/>.
/// It ends with its last engine; one that still runs when the process exits brings the process down.
/// </remarks>
public static class ScriptRuntime
{
    private static readonly Lazy<bool> isQuick = new(MachineCodeFlags.Set);
    private static V8Runtime? runtime;
    private static int engines;

    /// <summary>To be held while an engine is started, used or ended.</summary>
    public static Lock Gate { get; } = new();

    /// <summary>Whether machine code is made by the quick compiler alone; see <see cref="MachineCodeFlags"/>.</summary>
    internal static bool IsQuick => isQuick.Value;

    /// <summary>Starts an engine that has <c>console</c>, <c>TextEncoder</c> and the like. End it with <see cref="End"/>.</summary>
    /// <exception cref="InvalidOperationException">The gate is not held.</exception>
    public static V8ScriptEngine Start()
    {
        CheckGate();
        _ = IsQuick;
        runtime ??= new V8Runtime();
        var engine = runtime.CreateScriptEngine();
        engines++;
        engine.Execute(EmbeddedScript("script-globals.js"));
        return engine;
    }

    /// <summary>Bytes as the scripts of an engine take them, a <c>Uint8Array</c>.</summary>
    public static ITypedArray<byte> Bytes(V8ScriptEngine engine, ReadOnlySpan<byte> content)
    {
        ArgumentNullException.ThrowIfNull(engine);
        var array = (ITypedArray<byte>)engine.Invoke("newBytes", content.Length);
        if (!content.IsEmpty)
        {
            array.Write(content, 0, (ulong)content.Length, 0);
        }

        return array;
    }

    /// <summary>Ends an engine.</summary>
    /// <exception cref="InvalidOperationException">The gate is not held.</exception>
    public static void End(V8ScriptEngine engine)
    {
        ArgumentNullException.ThrowIfNull(engine);
        CheckGate();
        engine.Dispose();
        engines--;
        if (engines == 0)
        {
            runtime!.Dispose();
            runtime = null;
        }
        else
        {
            runtime!.CollectGarbage(exhaustive: true);
        }
    }

    /// <summary>A script that lies inside this assembly.</summary>
    internal static string EmbeddedScript(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private static void CheckGate()
    {
        if (!Gate.IsHeldByCurrentThread)
        {
            throw new InvalidOperationException("Hold ScriptRuntime.Gate while an engine is started or ended.");
        }
    }
}
