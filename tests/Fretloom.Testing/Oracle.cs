using System.Text.Json;

namespace Fretloom.Testing;

/// <summary>Independent programs and data that results are compared with. They lie in <c>tests/oracles</c>.</summary>
public static class Oracle
{
    /// <summary>Why a test that asks an oracle cannot run here; null when it can.</summary>
    public static string? WhyNot =>
        !Run.IsInstalled("node") ? "skipped: node is not installed"
        : !Directory.Exists(Repository.PathTo("tests", "oracles", "node_modules"))
            ? "skipped: oracles are not installed"
        : null;

    /// <summary>Evaluates an expression of JavaScript in which <c>tonal</c> is the theory library of that name.</summary>
    /// <param name="expression">Its value must be writable as JSON. One call is a process: ask for many values at once.</param>
    /// <exception cref="InvalidOperationException">The expression failed; the message is the program's.</exception>
    public static async Task<JsonElement> AskTonalAsync(string expression)
    {
        var result = await Run.ProgramAsync(
            "node",
            ["-"],
            Repository.PathTo("tests", "oracles"),
            $"const tonal = require('tonal'); console.log(JSON.stringify({expression}));"
        );
        return result.ExitCode == 0
            ? JsonDocument.Parse(result.Output).RootElement
            : throw new InvalidOperationException(result.Error);
    }

    /// <summary>Reads a Standard MIDI File with the package midi-file: <c>header</c>, and <c>tracks</c> of events with <c>deltaTime</c> in ticks.</summary>
    /// <remarks>Text is taken as UTF-8.</remarks>
    /// <exception cref="InvalidOperationException">It cannot be read; the message is the program's.</exception>
    public static async Task<JsonElement> ReadMidiAsync(byte[] file)
    {
        var result = await Run.ProgramAsync(
            "node",
            ["-"],
            Repository.PathTo("tests", "oracles"),
            $$"""
            const file = require('midi-file').parseMidi(Buffer.from('{{Convert.ToBase64String(file)}}', 'base64'));
            for (const event of file.tracks.flat())
                if (event.text !== undefined) event.text = Buffer.from(event.text, 'latin1').toString('utf8');
            console.log(JSON.stringify(file));
            """
        );
        return result.ExitCode == 0
            ? JsonDocument.Parse(result.Output).RootElement
            : throw new InvalidOperationException(result.Error);
    }

    /// <summary>Validates JSON documents with the package ajv (JSON Schema 2020-12).</summary>
    /// <param name="pairs">A schema and a document each, as text.</param>
    /// <returns>What does not fit, a line each; empty when all fits.</returns>
    public static async Task<string> ValidateAsync(IEnumerable<(string Schema, string Document)> pairs)
    {
        var listed = string.Join(",", pairs.Select(pair => $"[{pair.Schema},{pair.Document}]"));
        var result = await Run.ProgramAsync(
            "node",
            ["-"],
            Repository.PathTo("tests", "oracles"),
            $$"""
            const Ajv = require('ajv/dist/2020');
            const ajv = new Ajv({ allErrors: true, strict: false });
            for (const [schema, document] of [{{listed}}]) {
                const validate = ajv.compile(schema);
                if (!validate(document)) console.log(ajv.errorsText(validate.errors));
            }
            """
        );
        return result.ExitCode == 0 ? result.Output : throw new InvalidOperationException(result.Error);
    }

    /// <summary>The published fingerings for one instrument, as the package chords-db gives them.</summary>
    /// <param name="instrument"><c>guitar</c> or <c>ukulele</c>.</param>
    public static JsonElement PublishedChords(string instrument) =>
        JsonDocument
            .Parse(
                File.ReadAllText(
                    Repository.PathTo(
                        "tests",
                        "oracles",
                        "node_modules",
                        "@tombatossals",
                        "chords-db",
                        "lib",
                        $"{instrument}.json"
                    )
                )
            )
            .RootElement;
}
