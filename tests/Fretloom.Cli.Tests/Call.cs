using System.Text.Json;

namespace Fretloom.Cli.Tests;

/// <summary>One call of the program inside the test's own process.</summary>
internal sealed record Call(int Code, string Output, string Error)
{
    /// <summary>The one JSON document that was printed.</summary>
    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    /// <summary>The JSON documents that were printed, one a line.</summary>
    public IReadOnlyList<JsonElement> JsonLines =>
        [
            .. Output
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Select(line => JsonDocument.Parse(line).RootElement),
        ];

    public static Call Fretloom(params string[] args) => FretloomReading("", args);

    public static Call FretloomReading(string input, params string[] args)
    {
        var (output, error) = (new StringWriter { NewLine = "\n" }, new StringWriter { NewLine = "\n" });
        var code = CommandLine.Run(args, new Terminal(new StringReader(input), output, error));
        return new(code, output.ToString(), error.ToString());
    }
}
