using System.Text.Json;
using Fretloom.Cli.Json;
using Fretloom.Hand;
using Fretloom.Pages.Text;

namespace Fretloom.Cli.Commands;

/// <summary>Answers requests for fingers.</summary>
internal static class FingerRun
{
    /// <summary>Answers the lines of the input.</summary>
    public static int AnswerLines(Terminal terminal) => terminal.AnswerLines(line => AnswerLine(line, terminal));

    /// <summary>Answers one request.</summary>
    /// <param name="asked">The request.</param>
    /// <param name="columns">Where each note stands in what was typed, from 1; empty when it was not typed.</param>
    /// <param name="isJson">Whether to print JSON.</param>
    /// <param name="terminal">Where to.</param>
    public static int Answer(FingerRequestDocument asked, IReadOnlyList<int> columns, bool isJson, Terminal terminal)
    {
        if (FingerRequestReader.Read(asked, out var request) is { } wrong)
        {
            return Refuse(wrong, columns, isJson, terminal);
        }

        var answer = request!.Answer();
        if (!answer.IsFound)
        {
            return Refuse(answer.Refusal, columns, isJson, terminal);
        }

        if (isJson)
        {
            terminal.Print(
                FingerDocument.Of(request.Player.Hand, answer.Fingerings),
                Documents.Contract.FingerDocument
            );
        }
        else
        {
            terminal.Output.Write(FingeringText.Write(request, answer.Fingerings, terminal.Width));
        }

        return ExitCode.Done;
    }

    private static int AnswerLine(string line, Terminal terminal)
    {
        FingerRequestDocument? asked;
        try
        {
            asked = JsonSerializer.Deserialize(line, Documents.Contract.FingerRequestDocument);
        }
        catch (JsonException problem)
        {
            terminal.PrintError(Said(problem), (int)(problem.BytePositionInLine ?? 0) + 1);
            return ExitCode.Misused;
        }

        return Answer(asked ?? new FingerRequestDocument(), [], isJson: true, terminal);
    }

    private static int Refuse(FingeringRefusal wrong, IReadOnlyList<int> columns, bool isJson, Terminal terminal)
    {
        var column = wrong.Note is { } note && note < columns.Count ? columns[note] : 1;
        if (isJson)
        {
            terminal.PrintError(wrong.Message, column);
        }
        else
        {
            terminal.Error.WriteLine(wrong.Message);
        }

        return ExitCode.Misused;
    }

    private static string Said(JsonException problem)
    {
        var where = problem.Path is { Length: > 1 } path ? $" at '{path.TrimStart('$', '.')}'" : "";
        return $"This line is not a request{where}. A request looks like {Example}";
    }

    private const string Example =
        "{\"on\": \"guitar\", \"hand\": \"adult\", \"together\": true, \"spots\": [{\"string\": 4, \"fret\": 9}]}.";
}
