using Fretloom.Pages.Pdf;
using Fretloom.Pages.Tests.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

[assembly: AssemblyFixture(typeof(TypstFixture))]

namespace Fretloom.Pages.Tests.Pdf;

/// <summary>One warm compiler for all tests of the assembly, and ways to read back what it made.</summary>
public sealed class TypstFixture : IDisposable
{
    internal static IReadOnlyDictionary<string, byte[]> NoFiles { get; } = new Dictionary<string, byte[]>();

    /// <summary>A neck with three strings, an accidental on it, and a size of 300 by 60.</summary>
    internal static byte[] Picture { get; } =
        """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 300 60" width="300" height="60" font-family="'Source Sans 3'">
          <path d="M10 10H290M10 30H290M10 50H290" stroke="#1B1A17"/>
          <text x="150" y="36" text-anchor="middle" font-weight="700" font-size="18">B♭</text>
        </svg>
        """u8.ToArray();

    /// <summary>The compiler.</summary>
    public TypstCompiler Compiler { get; } = new();

    /// <summary>Sets a body alone, without the handout around it, on pages of any height.</summary>
    public string TextOf(TypstMarkup body, string width = "400pt") =>
        TextOf(
            Compiler.Compile(
                $"#set document(date: none)\n#set page(width: {width}, height: auto)\n#set text(font: (\"Source Serif 4\", \"Fretloom Accidentals\"))\n{body}",
                NoFiles
            )
        );

    /// <summary>The text of all pages in reading order.</summary>
    public static string TextOf(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        return string.Join('\n', document.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)));
    }

    /// <inheritdoc />
    public void Dispose() => Compiler.Dispose();
}
