using System.CommandLine;
using System.CommandLine.Help;

namespace Fretloom.Cli;

/// <summary>The commands that <c>fretloom</c> understands.</summary>
internal static class CommandLine
{
    /// <summary>Parses and runs one call.</summary>
    /// <returns>The <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        var parsed = Root(terminal).Parse(args);
        if (parsed.Errors.Count == 0)
        {
            return parsed.Invoke(new InvocationConfiguration { Output = terminal.Output, Error = terminal.Error });
        }

        var message = string.Join(" ", parsed.Errors.Select(error => error.Message));
        if (args.Contains("--json"))
        {
            terminal.PrintError(message, 1);
        }

        terminal.Error.WriteLine(message);
        terminal.Error.WriteLine($"Try: {Named(parsed.CommandResult.Command)} --help");
        return ExitCode.Misused;
    }

    /// <summary>
    /// The command that holds all others. It is a plain command and not a <see cref="RootCommand"/>, whose name in the
    /// help would be that of the executable file.
    /// </summary>
    private static Command Root(Terminal terminal)
    {
        var root = new Command(
            "fretloom",
            "Works out fretted necks, finds shapes that a hand can play, and makes handouts for teachers."
        )
        {
            Commands.ShowCommand.Create(terminal),
            Commands.BuildCommand.Create(terminal),
            Commands.DemoCommand.Create(terminal),
            new VersionOption(),
        };
        Examples.AddTo(root);
        return root;
    }

    private static string Named(Command command) =>
        command.Name == "fretloom" ? "fretloom" : $"fretloom {command.Name}";
}
