using System.CommandLine;
using Fretloom.Cli.Json;
using Fretloom.Exhibits;
using Fretloom.Pages.Text;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom show</c>: one sentence, or one a line, answered as text, JSON or a picture.</summary>
internal static class ShowCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var sentence = new Argument<string[]>("sentence")
        {
            Description = "What to show, such as \"the notes of the key, in D major, on strings 4-1\".",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var json = new Option<bool>("--json") { Description = "Print one JSON document." };
        var lines = new Option<bool>("--lines")
        {
            Description = "Read one sentence a line from standard input and print one JSON document a line.",
        };
        var file = new Option<string?>("--out")
        {
            Description = "Write the pictures to this file instead: .svg or .png.",
            HelpName = "FILE",
        };
        var command = new Command("show", "Shows notes, landmarks and shapes on a neck.")
        {
            sentence,
            json,
            lines,
            file,
        };
        command.Validators.Add(result =>
        {
            var words = result.GetValue(sentence) ?? [];
            if (Array.Find(words, word => word.StartsWith("--", StringComparison.Ordinal)) is { } unknown)
            {
                result.AddError($"There is no option {unknown}.");
            }

            var isNamed = words.Length > 0;
            if (isNamed == result.GetValue(lines))
            {
                result.AddError(
                    isNamed
                        ? "Give a sentence or --lines, not both."
                        : "Say what to show, such as \"the notes of the key, in D major\"."
                );
            }
        });
        command.SetAction(parsed =>
        {
            var text = string.Join(' ', parsed.GetValue(sentence) ?? []);
            return parsed.GetValue(lines) ? ShowLines(terminal)
                : parsed.GetValue(json) ? ShowJson(text, terminal)
                : Show(text, parsed.GetValue(file), terminal);
        });
        return command;
    }

    private static int ShowLines(Terminal terminal)
    {
        var worst = ExitCode.Done;
        while (terminal.Input.ReadLine() is { } line)
        {
            worst = Math.Max(worst, ShowJson(line, terminal));
        }

        return worst;
    }

    private static int ShowJson(string text, Terminal terminal)
    {
        var answer = ShowQuestion.Answer(text, ShowDefaults.Standard);
        if (!answer.IsRead)
        {
            terminal.PrintError(answer.Errors[0].Message, answer.Errors[0].Column);
            return ExitCode.Misused;
        }

        terminal.Print(ShowDocument.Of(answer.Value), Documents.Contract.ShowDocument);
        return ExitCode.Done;
    }

    private static int Show(string text, string? file, Terminal terminal)
    {
        var answer = ShowQuestion.Answer(text, ShowDefaults.Standard);
        if (!answer.IsRead)
        {
            terminal.Explain(text, answer.Errors[0]);
            return ExitCode.Misused;
        }

        if (file is not null)
        {
            return PictureFiles.Write(answer.Value, file, terminal);
        }

        terminal.Output.Write(PlainText.Write(answer.Value, terminal.Width));
        return ExitCode.Done;
    }
}
