using System.CommandLine;
using System.CommandLine.Help;

namespace Fretloom.Cli;

/// <summary>The commands that <c>fretloom</c> understands.</summary>
internal static class CommandLine
{
    /// <summary>Parses and runs one call. Whatever goes wrong is said in a line, never as an exception.</summary>
    /// <returns>The <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        var isJson = args.Contains("--json");
        try
        {
            var code = Run(Root(terminal).Parse(args), isJson, terminal);
            terminal.Output.Flush();
            return code;
        }
        catch (OperationCanceledException)
        {
            return LastWords("Stopped; nothing is left half written.", ExitCode.Stopped, isJson, terminal);
        }
        catch (Exception problem)
        {
            var reason = problem.Message.ReplaceLineEndings(" ");
            var message = problem is IOException or UnauthorizedAccessException
                ? reason
                : $"Something went wrong inside ({reason}). FRETLOOM_TRACE=1 shows where.";
            var trace = terminal.ShowsTraces ? $"\n{problem}" : "";
            return LastWords(message + trace, ExitCode.Misused, isJson, terminal);
        }
    }

    private static int Run(ParseResult parsed, bool isJson, Terminal terminal)
    {
        if (parsed.Errors.Count == 0)
        {
            return parsed.Invoke(
                new InvocationConfiguration
                {
                    Output = terminal.Output,
                    Error = terminal.Error,
                    EnableDefaultExceptionHandler = false,
                }
            );
        }

        terminal.Fail(string.Join(" ", parsed.Errors.Select(error => error.Message)), isJson);
        terminal.Error.WriteLine($"Try: {Named(parsed.CommandResult.Command)} --help");
        return ExitCode.Misused;
    }

    // It may be the very streams that fail, as when a disk is full.
    private static int LastWords(string message, int code, bool isJson, Terminal terminal)
    {
        try
        {
            terminal.Fail($"fretloom: {message}", isJson);
            terminal.Output.Flush();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            // Nobody is left to be told.
        }

        return code;
    }

    /// <summary>
    /// The command that holds all others. It is a plain command and not a <see cref="RootCommand"/>, whose name in the
    /// help would be that of the executable file.
    /// </summary>
    private static Command Root(Terminal terminal)
    {
        var root = new Command(
            "fretloom",
            "Works out fretted necks, finds shapes that a hand can play, and makes exercises and handouts for teachers."
        )
        {
            Commands.ShowCommand.Create(terminal),
            Commands.PlayCommand.Create(terminal),
            Commands.FingerCommand.Create(terminal),
            Commands.CheckCommand.Create(terminal),
            Commands.DiscoverCommand.Create(terminal),
            Commands.BuildCommand.Create(terminal),
            Commands.DemoCommand.Create(terminal),
            Commands.PrintCommand.Create(terminal),
            Commands.StudioCommand.Create(terminal),
            new VersionOption(),
        };
        Examples.AddTo(root);
        return root;
    }

    private static string Named(Command command) =>
        command.Name == "fretloom" ? "fretloom" : $"fretloom {command.Name}";
}
