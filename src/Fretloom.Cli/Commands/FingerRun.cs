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
    /// <param name="columnOf">Where something that is wrong stands in what was typed or sent, from 1.</param>
    /// <param name="isJson">Whether to print JSON.</param>
    /// <param name="terminal">Where to.</param>
    public static int Answer(
        FingerRequestDocument asked,
        Func<FingerProblem, int> columnOf,
        bool isJson,
        Terminal terminal
    )
    {
        if (FingerRequestReader.Read(asked, out var request) is { } wrong)
        {
            return Refuse(wrong, columnOf, isJson, terminal);
        }

        var answer = request!.Answer();
        if (!answer.IsFound)
        {
            return Refuse(FingerProblem.Of(answer.Refusal, asked), columnOf, isJson, terminal);
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
            terminal.PrintError(Said(problem), JsonColumns.Of(line, problem));
            return ExitCode.Misused;
        }

        return Answer(
            asked ?? new FingerRequestDocument(),
            wrong => JsonColumns.Of(line, wrong.Field, wrong.Column),
            isJson: true,
            terminal
        );
    }

    private static int Refuse(FingerProblem wrong, Func<FingerProblem, int> columnOf, bool isJson, Terminal terminal)
    {
        if (isJson)
        {
            terminal.PrintError(wrong.Message, columnOf(wrong));
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
