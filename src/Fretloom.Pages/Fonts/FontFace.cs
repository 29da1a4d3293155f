namespace Fretloom.Pages.Fonts;

/// <summary>One cut of a family: the file for print and pictures, and a smaller one for pages that carry their fonts.</summary>
public sealed class FontFace
{
    private readonly Lazy<byte[]> trueType;
    private readonly Lazy<byte[]> web;

    internal FontFace(
        string family,
        int weight,
        bool isItalic,
        string webFormat,
        Func<byte[]> readTrueType,
        Func<byte[]> readWeb
    )
    {
        Family = family;
        Weight = weight;
        IsItalic = isItalic;
        WebFormat = webFormat;
        trueType = new Lazy<byte[]>(readTrueType);
        web = new Lazy<byte[]>(readWeb);
    }

    /// <summary>Family name as CSS, SVG and Typst write it.</summary>
    public string Family { get; }

    /// <summary>CSS weight: 400, 600 or 700.</summary>
    public int Weight { get; }

    /// <summary>Whether the cut is italic.</summary>
    public bool IsItalic { get; }

    /// <summary>The whole font as a TrueType file.</summary>
    /// <exception cref="IOException">The font file is missing beside the assembly.</exception>
    public ReadOnlyMemory<byte> TrueType => trueType.Value;

    /// <summary>The font cut down to the characters of Western handouts, in <see cref="WebFormat"/>.</summary>
    /// <exception cref="IOException">The font file is missing beside the assembly.</exception>
    public ReadOnlyMemory<byte> Web => web.Value;

    /// <summary>Subtype of the MIME type <c>font/…</c> and CSS format hint of <see cref="Web"/>: <c>woff2</c> or <c>ttf</c>.</summary>
    public string WebFormat { get; }

    /// <summary>Family, weight and slant, such as <c>Source Serif 4 400 italic</c>.</summary>
    public override string ToString() => $"{Family} {Weight}{(IsItalic ? " italic" : "")}";
}
