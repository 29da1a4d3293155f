using System.ComponentModel;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Fretloom.Cli.Json;
using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

/// <summary>The schemas in docs/json are made from the types that are printed, and what is printed fits them.</summary>
public class SchemaTests
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    public static TheoryData<string> Names =>
        [
            "show",
            "play",
            "finger",
            "finger-request",
            "check",
            "check-lesson",
            "discover",
            "build",
            "demo",
            "print",
            "error",
        ];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_published_schema_is_that_of_the_types(string name) =>
        Approved.Matches(SchemaOf(name).ToJsonString(Indented), "..", "docs", "json", $"{name}.schema.json");

    [Fact]
    public async Task What_is_printed_fits_the_schema_by_an_independent_validator()
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");
        var shown = Call.FretloomReading(
            """
            the notes of the key, the landmarks and the symmetries, in Bb major
            the seventh chords, on a low-G ukulele, with a capo at 2
            C, F and G7, on a guitar, in first position
            A minor pentatonic, in fifth position, as fingers
            every D, in fifth position, with fingers
            the seventh chords, for a small hand
            """,
            "show",
            "--lines"
        );
        var played = Call.FretloomReading(
            """
            the seventh chords from I to IV, up and down, in swing eighths, at 72, with a count-in
            C, F and G7, strum down down-up up-down-up, on a ukulele
            the scale, in every key by fourths, in 6/8, from 60 to 72 in steps of 6
            """,
            "play",
            "--lines"
        );
        var wrong = Call.Fretloom("show", "the kee", "--json");
        var fingered = Call.Fretloom(
            "finger",
            "--spots",
            "4:5 3:4 1:1",
            "--hand",
            "child",
            "--alternatives",
            "2",
            "--json"
        );
        var discovered = Call.Fretloom("discover", "on a ukulele, on strings 3-1, in every major key", "--json");
        var built = Call.Fretloom("build", "missing.md", "--json");
        var checkedClaims = Call.FretloomReading(
            """
            In every key, on guitar strings 4-1, there are exactly 3 full frets.
            In every major key, on bass, the key pattern is its own half-turn.
            In the key of C major, on guitar strings 6-3, every empty fret lies next to a full fret.
            In every major key, on every 4 string tuning, the key pattern is its own half-turn.
            In every key, on every listed string set, every third shape of strings 9-8 spans at most 5 frets.
            """,
            "check",
            "--lines"
        );
        var checkedLesson = Call.Fretloom(
            "check",
            Repository.PathTo("lessons", "three-frets-that-carry-the-key.md"),
            "--json"
        );

        List<(string Name, JsonElement Document)> printed =
        [
            .. shown.JsonLines.Select(document => ("show", document)),
            .. played.JsonLines.Select(document => ("play", document)),
            .. checkedClaims.JsonLines.Select(document => ("check", document)),
            ("check-lesson", checkedLesson.Json),
            ("finger", fingered.Json),
            ("error", wrong.Json),
            ("discover", discovered.Json),
            ("error", Call.Fretloom("check", "In evry key.", "--json").Json),
            ("error", Call.Fretloom("check", "missing.md", "--json").Json),
            ("error", Call.Fretloom("discover", "on a gitar", "--json").Json),
            ("build", built.Json),
        ];
        var checks = printed.Select(one => (SchemaOf(one.Name).ToJsonString(), one.Document.GetRawText()));
        Assert.Equal("", await Oracle.ValidateAsync(checks));
    }

    [Fact]
    public async Task The_validator_finds_what_does_not_fit()
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");

        var said = await Oracle.ValidateAsync([(SchemaOf("error").ToJsonString(), """{"error": {"message": 3}}""")]);

        Assert.Contains("message", said, StringComparison.Ordinal);
    }

    private static JsonNode Described(JsonSchemaExporterContext context, JsonNode schema)
    {
        var told = context.PropertyInfo?.AttributeProvider?.GetCustomAttributes(typeof(DescriptionAttribute), false);
        if (told is [DescriptionAttribute description, ..] && schema is JsonObject described)
        {
            described.Insert(0, "description", description.Description);
        }

        return schema;
    }

    private static JsonObject SchemaOf(string name)
    {
        JsonTypeInfo type = name switch
        {
            "show" => Documents.Contract.ShowDocument,
            "play" => Documents.Contract.PlayDocument,
            "finger" => Documents.Contract.FingerDocument,
            "finger-request" => Documents.Contract.FingerRequestDocument,
            "check" => Documents.Contract.CheckDocument,
            "check-lesson" => Documents.Contract.LessonCheckDocument,
            "discover" => Documents.Contract.DiscoverDocument,
            "build" => Documents.Contract.BuildDocument,
            "demo" => Documents.Contract.DemoDocument,
            "print" => Documents.Contract.PrintDocument,
            _ => Documents.Contract.ErrorDocument,
        };
        var exporter = new JsonSchemaExporterOptions
        {
            TreatNullObliviousAsNonNullable = true,
            TransformSchemaNode = Described,
        };
        var schema = type.GetJsonSchemaAsNode(exporter).AsObject();
        schema.Insert(0, "$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.Insert(
            1,
            "title",
            name switch
            {
                "finger-request" => "a line of fretloom finger --lines",
                "check-lesson" => "fretloom check LESSON.md --json",
                _ => $"fretloom {name} --json",
            }
        );
        return schema;
    }
}
