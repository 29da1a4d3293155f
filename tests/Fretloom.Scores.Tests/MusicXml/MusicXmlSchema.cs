using System.Xml;
using System.Xml.Schema;
using Fretloom.Testing;

namespace Fretloom.Scores.Tests.MusicXml;

/// <summary>The schema of MusicXML 4.0 (W3C Community Group Final Report, 2021), where it is at hand.</summary>
internal static class MusicXmlSchema
{
    private const string Variable = "FRETLOOM_MUSICXML_SCHEMA";

    private static readonly string Folder =
        Environment.GetEnvironmentVariable(Variable) ?? Repository.PathTo("..", "shared", "references", "musicxml-4.0");

    private static readonly Lazy<XmlSchemaSet> Schema = new(Load);

    /// <summary>Why nothing can be validated here; null when it can.</summary>
    public static string? WhyNot =>
        File.Exists(Path.Combine(Folder, "musicxml.xsd")) ? null : "skipped: schema not found";

    /// <summary>What in a document does not fit the schema; empty when all fits.</summary>
    public static List<string> Errors(string document)
    {
        var errors = new List<string>();
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Ignore,
            ValidationType = ValidationType.Schema,
            ValidationFlags =
                XmlSchemaValidationFlags.ProcessIdentityConstraints | XmlSchemaValidationFlags.ReportValidationWarnings,
            Schemas = Schema.Value,
        };
        settings.ValidationEventHandler += (_, problem) =>
            errors.Add($"line {problem.Exception.LineNumber}: {problem.Message}");
        using var reader = XmlReader.Create(new StringReader(document), settings);
        while (reader.Read()) { }
        return errors;
    }

    // The schema names the places of its imports on the web; the files lie beside it.
    private static XmlSchemaSet Load()
    {
        var set = new XmlSchemaSet { XmlResolver = null };
        foreach (var file in new[] { "xml.xsd", "xlink.xsd", "musicxml.xsd" })
        {
            using var reader = XmlReader.Create(
                Path.Combine(Folder, file),
                new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null }
            );
            set.Add(null, reader);
        }

        set.Compile();
        return set;
    }
}
