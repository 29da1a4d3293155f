using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Fretloom.Pages.Tests.Pdf;

/// <summary>Reads the tags of a PDF (ISO 32000-1, 14.7 Logical Structure): kinds and alternative texts, in order.</summary>
internal sealed record StructureTree(string? Language, IReadOnlyList<(string Kind, string? Alternative)> Elements)
{
    public static StructureTree Of(PdfDocument document)
    {
        var catalog = document.Structure.Catalog.CatalogDictionary;
        var elements = new List<(string, string?)>();
        Visit(document, catalog.Data["StructTreeRoot"], elements);
        return new(catalog.Data.TryGetValue("Lang", out var language) ? Text(language) : null, elements);
    }

    private static void Visit(PdfDocument document, IToken token, List<(string, string?)> elements)
    {
        switch (token)
        {
            case IndirectReferenceToken reference:
                Visit(document, document.Structure.GetObject(reference.Data).Data, elements);
                break;
            case ArrayToken array:
                array.Data.ToList().ForEach(child => Visit(document, child, elements));
                break;
            case DictionaryToken dictionary:
                if (dictionary.Data.TryGetValue("S", out var kind))
                {
                    elements.Add(
                        (
                            ((NameToken)kind).Data,
                            dictionary.Data.TryGetValue("Alt", out var alternative) ? Text(alternative) : null
                        )
                    );
                }

                if (dictionary.Data.TryGetValue("K", out var children))
                {
                    Visit(document, children, elements);
                }

                break;
        }
    }

    private static string? Text(IToken token) =>
        token switch
        {
            StringToken text => text.Data,
            HexToken text => text.Data,
            _ => null,
        };
}
