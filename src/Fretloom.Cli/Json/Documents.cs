using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Fretloom.Cli.Json;

/// <summary>Writes the documents of the machine-readable output: camel case, parts that were not asked for left out.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(ShowDocument))]
[JsonSerializable(typeof(PlayDocument))]
[JsonSerializable(typeof(FingerDocument))]
[JsonSerializable(typeof(FingerRequestDocument))]
[JsonSerializable(typeof(CheckDocument))]
[JsonSerializable(typeof(LessonCheckDocument))]
[JsonSerializable(typeof(DiscoverDocument))]
[JsonSerializable(typeof(BuildDocument))]
[JsonSerializable(typeof(DemoDocument))]
[JsonSerializable(typeof(PrintDocument))]
[JsonSerializable(typeof(ErrorDocument))]
internal sealed partial class Documents : JsonSerializerContext
{
    /// <summary>The contract: readable Unicode (the output goes to a terminal or a program, never into a page).</summary>
    public static Documents Contract =>
        field ??= new(
            new JsonSerializerOptions(Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }
        );
}
