using System.Runtime.InteropServices;
using Microsoft.ClearScript.V8;

namespace Fretloom.Scores.Scripting;

/// <summary>Tells V8 to make machine code of WebAssembly quickly rather than well.</summary>
/// <remarks>
/// V8 has two compilers for WebAssembly: one that is done at once, and one that takes some ten times as long for code that runs up to twice as fast.
/// A process of ours that sets one handout ends before the better code has paid for itself: see docs/decisions/0015. Functions
/// are checked when they are first run, too, not all of them at the start. The package that wraps V8 has
/// no setting for this, but its native library shows V8's own <c>v8::V8::SetFlagsFromString(const char*)</c>. Where it does not, nothing
/// changes but the time that is taken.
/// </remarks>
internal static class MachineCodeFlags
{
    private const string Library = "ClearScriptV8.linux-x64";

    // As the Itanium C++ ABI writes the function's name.
    private const string Setter = "_ZN2v82V818SetFlagsFromStringEPKc";

    private delegate void SetFlags([MarshalAs(UnmanagedType.LPUTF8Str)] string flags);

    /// <summary>Sets the flags. To be called before the first V8 of a process is started, and never later: V8 then keeps its flags where nobody may write.</summary>
    /// <returns>Whether V8 was told.</returns>
    public static bool Set()
    {
        if (
            !NativeLibrary.TryLoad(Library, typeof(V8Runtime).Assembly, null, out var library)
            || !NativeLibrary.TryGetExport(library, Setter, out var setter)
        )
        {
            return false;
        }

        Marshal.GetDelegateForFunctionPointer<SetFlags>(setter)("--liftoff-only --wasm-lazy-validation");
        return true;
    }
}
