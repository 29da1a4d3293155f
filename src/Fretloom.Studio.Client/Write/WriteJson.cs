using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;

namespace Fretloom.Studio.Client.Write;

/// <summary>What goes between the studio, its scripts and the host as JSON, written without looking at types at run time: they are trimmed.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(List<LessonEntry>))]
[JsonSerializable(typeof(Vocabulary))]
[JsonSerializable(typeof(IReadOnlyList<Underline>))]
[JsonSerializable(typeof(Underlined))]
[JsonSerializable(typeof(ShownPage))]
[JsonSerializable(typeof(List<Draft>))]
[JsonSerializable(typeof(EngraverAnswer))]
internal sealed partial class WriteJson : JsonSerializerContext
{
    // Read by our own scripts, never put into markup: HTML need not be escaped.
    private static readonly WriteJson Plain = new(
        new JsonSerializerOptions(JsonSerializerDefaults.Web) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }
    );

    /// <summary>The vocabulary.</summary>
    public static string Of(Vocabulary words) => JsonSerializer.Serialize(words, Plain.Vocabulary);

    /// <summary>What is underlined.</summary>
    public static string Of(IReadOnlyList<Underline> found) =>
        JsonSerializer.Serialize(found, Plain.IReadOnlyListUnderline);

    /// <summary>A change that mends something.</summary>
    public static string Of(Underlined repair) => JsonSerializer.Serialize(repair, Plain.Underlined);

    /// <summary>A page of the preview.</summary>
    public static string Of(ShownPage page) => JsonSerializer.Serialize(page, Plain.ShownPage);

    /// <summary>What the engraver answers.</summary>
    public static EngraverAnswer Engraved(string json) =>
        JsonSerializer.Deserialize(json, Plain.EngraverAnswer) ?? new(null, null, null);

    /// <summary>Drafts.</summary>
    public static IReadOnlyList<Draft> Drafts(string json) => JsonSerializer.Deserialize(json, Plain.ListDraft) ?? [];
}

/// <summary>A finding, as the editor underlines it; lines and columns counted from 1.</summary>
internal sealed record Underline(int Line, int Column, int Length, string Severity, string Message, Underlined? Repair);

/// <summary>A change that mends a finding, and what its button says.</summary>
internal sealed record Underlined(int Start, int Length, string Text, string Label);

/// <summary>A page of the preview: of each part its key and line, and the HTML of those that the frame does not have.</summary>
internal sealed record ShownPage(
    string Language,
    string Title,
    string? Styles,
    int[][] Order,
    Dictionary<int, string> Html
);
