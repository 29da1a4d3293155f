using System.CommandLine;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom check</c>: a claim, one a line, or those of a lesson, proved or shown to be false.</summary>
internal static class CheckCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var claim = new Argument<string[]>("claim")
        {
            Description =
                "A claim, such as \"In every major key, on guitar strings 4-1, there are exactly 3 full frets.\", or a lesson file (.md).",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var json = new Option<bool>("--json") { Description = "Print one JSON document." };
        var lines = new Option<bool>("--lines")
        {
            Description = "Read one claim a line from standard input and print one JSON document a line.",
        };
        var command = new Command("check", "Checks a claim in every case that it speaks of.") { claim, json, lines };
        command.Validators.Add(result =>
        {
            var words = result.GetValue(claim) ?? [];
            if (Array.Find(words, word => word.StartsWith("--", StringComparison.Ordinal)) is { } unknown)
            {
                result.AddError($"There is no option {unknown}.");
            }

            var isNamed = words.Length > 0;
            if (isNamed == result.GetValue(lines))
            {
                result.AddError(
                    isNamed
                        ? "Give a claim or --lines, not both."
                        : "Say what to check, such as \"In every major key, on bass, there are exactly 3 full frets.\""
                );
            }
        });
        command.SetAction(parsed =>
        {
            var run = new CheckRun(terminal);
            var words = parsed.GetValue(claim) ?? [];
            var isJson = parsed.GetValue(json);
            return parsed.GetValue(lines) ? run.CheckLines()
                : words is [var path] && path.EndsWith(".md", StringComparison.OrdinalIgnoreCase)
                    ? run.CheckLesson(path, isJson)
                : run.Check(string.Join(' ', words), isJson);
        });
        return command;
    }
}
