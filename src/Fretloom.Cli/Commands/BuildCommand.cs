using System.CommandLine;
using Fretloom.Cli.Json;
using Fretloom.Lessons;
using Fretloom.Pages.Documents;
using Fretloom.Theory;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom build</c>: a lesson file made into handouts.</summary>
internal static class BuildCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var lesson = new Argument<string>("lesson") { Description = "The lesson file.", HelpName = "LESSON.md" };
        var folder = HandoutRun.FolderOption();
        var key = new Option<string?>("--key")
        {
            Description = "Another key than the lesson's: 'D', 'Bb minor', or 'all' for twelve.",
            HelpName = "KEY",
        };
        var order = new Option<string>("--order")
        {
            Description = "The order of all keys.",
            DefaultValueFactory = _ => "fourths",
        };
        order.AcceptOnlyFromAmong([.. BuildWords.Orders.Keys]);
        var formats = new Option<string>("--format")
        {
            Description = "What to make, with commas between: pdf, html, svg, png; of exercises musicxml, midi, wav.",
            HelpName = "KINDS",
            DefaultValueFactory = _ => "pdf,html,svg,musicxml,midi",
        };
        formats.Validators.Add(result =>
        {
            if (Formats(result.GetValueOrDefault<string>()) is null)
            {
                result.AddError("--format takes pdf, html, svg, png, musicxml, midi and wav, with commas between.");
            }
        });
        key.Validators.Add(result =>
        {
            if (BuildWords.Keys(result.GetValueOrDefault<string?>(), KeyOrder.Fourths) is null)
            {
                result.AddError("--key takes a tonic such as 'D', a key such as 'Bb minor', or 'all'.");
            }
        });
        var paper = new Option<string>("--paper") { Description = "The paper.", DefaultValueFactory = _ => "a4" };
        paper.AcceptOnlyFromAmong([.. BuildWords.Papers.Keys]);
        var isLarge = new Option<bool>("--large-print") { Description = "Set the PDF in 18 point." };
        var isKeepGoing = new Option<bool>("--keep-going")
        {
            Description = "Build a lesson with errors all the same, with the errors in their place.",
        };
        var json = new Option<bool>("--json") { Description = "Print one JSON document." };
        var command = new Command("build", "Makes a lesson into handouts: PDF, HTML and pictures.")
        {
            lesson,
            folder,
            key,
            order,
            formats,
            paper,
            isLarge,
            isKeepGoing,
            json,
        };
        command.SetAction(parsed =>
        {
            var options = new BuildOptions(parsed.GetValue(folder)!)
            {
                Formats = Formats(parsed.GetValue(formats))!.Value,
                Keys = BuildWords.Keys(parsed.GetValue(key), BuildWords.Orders[parsed.GetValue(order)!])!,
                Paper = BuildWords.Papers[parsed.GetValue(paper)!],
                IsLargePrint = parsed.GetValue(isLarge),
                IsKeepGoing = parsed.GetValue(isKeepGoing),
            };
            using var handouts = new HandoutRun(terminal);
            var (code, made) = handouts.Build([parsed.GetValue(lesson)!], options, parsed.GetValue(json));
            if (parsed.GetValue(json))
            {
                terminal.Print(made[0], Documents.Contract.BuildDocument);
            }

            return code;
        });
        return command;
    }

    private static ValueList<HandoutFormat>? Formats(string? text) =>
        BuildWords.Formats((text ?? "").Split(',', StringSplitOptions.TrimEntries));
}
