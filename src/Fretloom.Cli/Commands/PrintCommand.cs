using System.CommandLine;
using Fretloom.Cli.Json;
using Fretloom.Exhibits;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Engraving;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom print</c>: one sentence as a sheet of paper, without a lesson.</summary>
internal static class PrintCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var words = new Argument<string[]>("sentence")
        {
            Description = "What to show or play, such as \"the triads, in D major, on strings 3-1\".",
            Arity = ArgumentArity.OneOrMore,
        };
        var file = SentenceCall.File(
            "Write the sheet to this file: .pdf (named after what is on it if left out).",
            path =>
                Path.GetExtension(path).Equals(".pdf", StringComparison.OrdinalIgnoreCase)
                    ? null
                    : $"The file's name must end in .pdf: '{path}'."
        );
        var paper = new Option<string>("--paper") { Description = "The paper.", DefaultValueFactory = _ => "a4" };
        paper.AcceptOnlyFromAmong([.. BuildWords.Papers.Keys]);
        var isLarge = new Option<bool>("--large-print") { Description = "Set it in 18 point." };
        var json = new Option<bool>("--json") { Description = "Print one JSON document." };
        var command = new Command("print", "Makes one sentence into a sheet to print: PDF.")
        {
            words,
            file,
            paper,
            isLarge,
            json,
        };
        command.Validators.Add(result =>
        {
            var said = result.GetValue(words) ?? [];
            if (Array.Find(said, word => word.StartsWith("--", StringComparison.Ordinal)) is { } unknown)
            {
                result.AddError($"There is no option {unknown}.");
            }
        });
        command.SetAction(parsed =>
            Print(
                string.Join(' ', parsed.GetValue(words)!),
                parsed.GetValue(file),
                new PrintOptions(BuildWords.Papers[parsed.GetValue(paper)!], parsed.GetValue(isLarge)),
                parsed.GetValue(json),
                terminal
            )
        );
        return command;
    }

    private static int Print(string text, string? file, PrintOptions options, bool isJson, Terminal terminal)
    {
        if (SentenceSheet.Read(text, ShowDefaults.Standard, out var error) is not { } sheet)
        {
            return terminal.Explain(text, error!, isJson);
        }

        if (sheet.WhatIsMissing is { } missing)
        {
            terminal.Error.WriteLine(missing);
        }

        var path = file ?? sheet.FileName + ".pdf";
        using var typst = new TypstCompiler();
        using var engraver = new Engraver(EngravingCache.OfUser());
        var problem = OutFiles.Write(
            path,
            () => sheet.ToPdf(options, typst, engraver, words => terminal.Error.WriteLine($"{words}.")),
            terminal.Listen()
        );
        if (problem is not null)
        {
            return terminal.Fail(problem, isJson);
        }

        if (isJson)
        {
            terminal.Print(
                new PrintDocument(sheet.Sentence, sheet.Title, [new FileDocument(path, "pdf")]),
                Documents.Contract.PrintDocument
            );
        }
        else
        {
            terminal.Output.WriteLine(path);
        }

        return ExitCode.Done;
    }
}
