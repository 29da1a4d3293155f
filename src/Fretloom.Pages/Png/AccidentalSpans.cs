using System.Text;
using System.Xml;
using System.Xml.Linq;
using Fretloom.Pages.Fonts;

namespace Fretloom.Pages.Png;

/// <summary>
/// Gives the accidentals in an SVG text their own face by name. The rasteriser looks for another face when a
/// character is missing, but then draws all the text with the first.
/// </summary>
internal static class AccidentalSpans
{
    /// <summary>The document with each run of accidentals in a <c>tspan</c> of its own.</summary>
    /// <exception cref="XmlException">The text is not XML, or not SVG.</exception>
    public static string Mark(string svg)
    {
        using var reader = XmlReader.Create(
            new StringReader(svg),
            new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null }
        );
        var document = XDocument.Load(reader, LoadOptions.PreserveWhitespace);
        if (document.Root!.Name.LocalName != "svg")
        {
            throw new XmlException($"The document is a {document.Root.Name.LocalName}, not an svg.");
        }

        var texts = document
            .DescendantNodes()
            .OfType<XText>()
            .Where(text =>
                text.Parent?.Name.LocalName is "text" or "tspan" && text.Value.EnumerateRunes().Any(IsAccidental)
            )
            .ToList();
        foreach (var text in texts)
        {
            var name = text.Parent!.Name.Namespace + "tspan";
            text.ReplaceWith(
                Runs(text.Value)
                    .Select(run =>
                        run.IsAccidental
                            ? (object)
                                new XElement(
                                    name,
                                    new XAttribute("style", $"font-family:'{TextFaces.Accidentals}'"),
                                    run.Text
                                )
                            : new XText(run.Text)
                    )
            );
        }

        return document.ToString(SaveOptions.DisableFormatting);
    }

    private static IEnumerable<(string Text, bool IsAccidental)> Runs(string text)
    {
        var run = new StringBuilder();
        var isAccidental = false;
        foreach (var rune in text.EnumerateRunes())
        {
            if (run.Length > 0 && IsAccidental(rune) != isAccidental)
            {
                yield return (run.ToString(), isAccidental);
                run.Clear();
            }

            isAccidental = IsAccidental(rune);
            run.Append(rune.ToString());
        }

        yield return (run.ToString(), isAccidental);
    }

    private static bool IsAccidental(Rune rune) => rune.Value is >= 0x266D and <= 0x266F or 0x1D12A or 0x1D12B;
}
