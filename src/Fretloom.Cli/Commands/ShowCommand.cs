using System.CommandLine;
using Fretloom.Cli.Json;
using Fretloom.Exhibits;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Text;
using Fretloom.Sentences;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom show</c>: one sentence, or one a line, answered as text, JSON or a picture.</summary>
internal static class ShowCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var call = new SentenceCall(
            "sentence",
            "What to show, such as \"the notes of the key, in D major, on strings 4-1\".",
            "Say what to show, such as \"the notes of the key, in D major\"."
        );
        var file = SentenceCall.File("Write the pictures to this file: .svg or .png.", PictureFiles.WhyNot);
        var command = call.Command("show", "Shows notes, landmarks and shapes on a neck.", file);
        command.SetAction(parsed =>
            call.IsLines(parsed)
                ? terminal.AnswerLines(line => Show(line, file: null, isJson: true, terminal))
                : Show(call.Text(parsed), parsed.GetValue(file), call.IsJson(parsed), terminal)
        );
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

        var pictures = file is null ? [] : PictureFiles.Of(exhibit, file);
        if (file is not null && Write(exhibit, file, pictures) is { } problem)
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
            foreach (var (name, _) in pictures)
            {
                terminal.Output.WriteLine(name);
            }

            terminal.Error.Write(PlainText.WriteHandNotes(exhibit, terminal.Width));
        }

        return ExitCode.Done;
    }

    private static string? Write(Exhibit exhibit, string file, IReadOnlyList<(string, Func<byte[]>)> pictures) =>
        pictures.Count == 0 ? $"There is nothing to draw: {exhibit.Sentence}" : OutFiles.Write(file, pictures);
}
