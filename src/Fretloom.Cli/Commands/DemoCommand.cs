using System.CommandLine;
using Fretloom.Cli.Json;
using Fretloom.Pages.Documents;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom demo</c>: the demo lessons made into handouts.</summary>
internal static class DemoCommand
{
    /// <summary>Where the demo lessons lie beside the program.</summary>
    public static string LessonsFolder { get; } = Path.Combine(AppContext.BaseDirectory, "lessons");

    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var folder = HandoutRun.FolderOption();
        var json = new Option<bool>("--json") { Description = "Print one JSON document." };
        var command = new Command("demo", "Makes the demo lessons into handouts and says where they are.")
        {
            folder,
            json,
        };
        command.SetAction(parsed =>
        {
            var lessons = Directory.GetFiles(LessonsFolder, "*.md").Order(StringComparer.Ordinal).ToList();
            var options = new BuildOptions(parsed.GetValue(folder)!);
            using var handouts = new HandoutRun(terminal);
            var (code, made) = handouts.Build(lessons, options, parsed.GetValue(json));
            if (parsed.GetValue(json))
            {
                terminal.Print(new DemoDocument(made), Documents.Contract.DemoDocument);
            }
            else if (code == ExitCode.Done)
            {
                terminal.Output.WriteLine();
                terminal.Output.WriteLine($"{lessons.Count} lessons are in {Path.GetFullPath(options.Folder)}");
            }

            return code;
        });
        return command;
    }
}
