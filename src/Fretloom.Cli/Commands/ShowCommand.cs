using System.CommandLine;
using Fretloom.Cli.Json;
using Fretloom.Exhibits;
using Fretloom.Pages.Text;
using Fretloom.Sentences;

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
            Description = "Write the pictures to this file: .svg or .png.",
            HelpName = "FILE",
        };
        file.Validators.Add(result =>
        {
            var path = result.GetValueOrDefault<string?>() ?? "";
            if (!PictureFiles.IsKnown(path))
            {
                result.AddError($"The file's name must end in .svg or .png: '{path}'.");
            }
        });
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

            if (result.GetValue(lines) && result.GetResult(file) is { Implicit: false })
            {
                result.AddError("--lines prints JSON and writes no pictures; leave --out out.");
            }
        });
        command.SetAction(parsed =>
        {
            var text = string.Join(' ', parsed.GetValue(sentence) ?? []);
            return parsed.GetValue(lines)
                ? terminal.AnswerLines(line => Show(line, file: null, isJson: true, terminal))
                : Show(text, parsed.GetValue(file), parsed.GetValue(json), terminal);
        });
        return command;
    }

    private static int Show(string text, string? file, bool isJson, Terminal terminal)
    {
        var answer = ShowQuestion.Answer(text, ShowDefaults.Standard);
        if (!answer.IsRead)
        {
            return terminal.Explain(text, answer.Errors[0], isJson);
        }

        var exhibit = answer.Value;
        if (exhibit.WhatIsMissing is { } missing)
        {
            terminal.Error.WriteLine(missing);
        }

        List<string> names = [];
        if (file is not null && PictureFiles.Write(exhibit, file, names) is { } problem)
        {
            return terminal.Fail(problem, isJson);
        }

        if (isJson)
        {
            terminal.Print(ShowDocument.Of(exhibit), Documents.Contract.ShowDocument);
        }
        else if (file is null)
        {
            terminal.Output.Write(PlainText.Write(exhibit, terminal.Width));
        }
        else
        {
            names.ForEach(terminal.Output.WriteLine);
            terminal.Error.Write(PlainText.WriteHandNotes(exhibit, terminal.Width));
        }

        return ExitCode.Done;
    }
}
