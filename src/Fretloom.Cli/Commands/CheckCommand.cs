using System.CommandLine;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom check</c>: a claim, one a line, or those of a lesson, proved or shown to be false.</summary>
internal static class CheckCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var call = new SentenceCall(
            "claim",
            "A claim, such as \"In every major key, on guitar strings 4-1, there are exactly 3 full frets.\", or a lesson file (.md).",
            "Say what to check, such as \"In every major key, on bass, there are exactly 3 full frets.\""
        );
        var command = call.Command("check", "Checks a claim in every case that it speaks of.");
        command.SetAction(parsed =>
        {
            var run = new CheckRun(terminal);
            var isJson = call.IsJson(parsed);
            return call.IsLines(parsed) ? run.CheckLines()
                : call.Words(parsed) is [var path] && path.EndsWith(".md", StringComparison.OrdinalIgnoreCase)
                    ? run.CheckLesson(path, isJson)
                : run.Check(call.Text(parsed), isJson);
        });
        return command;
    }
}
