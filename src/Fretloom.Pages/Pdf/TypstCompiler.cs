using Fretloom.Scores.Scripting;

namespace Fretloom.Pages.Pdf;

/// <summary>
/// Sets Typst sources as PDF. The compiler (Typst 0.14 as WebAssembly) is started on the first call and kept
/// warm: make one of these for as many documents as there are, and dispose it. All of a process share one engine.
/// </summary>
/// <remarks>
/// Safe to use from several threads; documents are set one after another. The same input gives the same bytes
/// as long as the source says <c>#set document(date: none)</c>, as the handout template does. Only the faces of
/// <see cref="Fonts.TextFaces"/> are known to it, and only the files handed over: it reads neither disk nor network.
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
    private static TypstEngine? engine;
    private static int users;

    private bool isDisposed;

    /// <summary>Promises that <see cref="Dispose"/> will be called; nothing is started yet.</summary>
    public TypstCompiler()
    {
        lock (ScriptRuntime.Gate)
        {
            users++;
        }
    }

    /// <summary>
    /// Starts the compiler ahead of the first document and lets it set a word, which prepares most of its machine
    /// code. Meant for another thread, while the document is being made; does nothing when disposed.
    /// </summary>
    /// <exception cref="IOException">The compiler's files are missing beside the assembly.</exception>
    public void WarmUp()
    {
        lock (ScriptRuntime.Gate)
        {
            if (!isDisposed && engine is null)
            {
                Compile("Fret", new Dictionary<string, byte[]>());
            }
        }
    }

    /// <summary>Sets one document.</summary>
    /// <param name="mainTyp">The Typst source; it stands at <c>/main.typ</c>.</param>
    /// <param name="files">
    /// Files the source names, by path from the root, such as <c>figures/neck.svg</c>. A Typst source among them must
    /// stay the same for all documents.
    /// </param>
    /// <returns>The PDF.</returns>
    /// <exception cref="TypstException">The source has errors.</exception>
    /// <exception cref="IOException">The compiler's files are missing beside the assembly.</exception>
    /// <exception cref="ObjectDisposedException">After <see cref="Dispose"/>.</exception>
    public byte[] Compile(string mainTyp, IReadOnlyDictionary<string, byte[]> files)
    {
        ArgumentNullException.ThrowIfNull(mainTyp);
        ArgumentNullException.ThrowIfNull(files);
        lock (ScriptRuntime.Gate)
        {
            ObjectDisposedException.ThrowIf(isDisposed, this);
            if (engine is { IsSpent: true })
            {
                engine.Dispose();
                engine = null;
            }

            engine ??= new();
            return engine.Compile(mainTyp, files);
        }
    }

    /// <summary>
    /// Gives the engine up; the last one to do so ends it. An engine that still runs when the process exits brings
    /// the process down.
    /// </summary>
    public void Dispose()
    {
        lock (ScriptRuntime.Gate)
        {
            if (isDisposed)
            {
                return;
            }

            isDisposed = true;
            users--;
            if (users == 0)
            {
                engine?.Dispose();
                engine = null;
            }
        }
    }
}
