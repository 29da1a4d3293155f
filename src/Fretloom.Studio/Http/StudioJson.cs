using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Fretloom.Studio.Folder;
using Fretloom.Studio.Work;

namespace Fretloom.Studio.Http;

/// <summary>Writes and reads the studio's JSON: camel case.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true
)]
[JsonSerializable(typeof(IReadOnlyList<ListedLesson>))]
[JsonSerializable(typeof(FolderChange))]
[JsonSerializable(typeof(HandoutRequest))]
[JsonSerializable(typeof(HandoutTicket))]
[JsonSerializable(typeof(HandoutStatus))]
[JsonSerializable(typeof(PictureRequest))]
[JsonSerializable(typeof(PrintRequest))]
[JsonSerializable(typeof(ExerciseRequest))]
[JsonSerializable(typeof(ErrorDocument))]
internal sealed partial class StudioJson : JsonSerializerContext
{
    /// <summary>Readable Unicode: what is sent is JSON and said to be, never part of a page.</summary>
    public static StudioJson Contract =>
        field ??= new(
            new JsonSerializerOptions(Default.Options) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }
        );
}

/// <summary>What is wrong with a request.</summary>
/// <param name="Error">The error.</param>
internal sealed record ErrorDocument(ErrorBody Error);

/// <summary>An error.</summary>
/// <param name="Message">What is wrong, what was expected, and a suggestion.</param>
/// <param name="Column">The column in the sentence, from 1; left out where there is no sentence.</param>
internal sealed record ErrorBody(
    string Message,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] int? Column
);
