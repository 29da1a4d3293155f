using System.CommandLine;

namespace Fretloom.Cli;

/// <summary>The tree of commands that <c>fretloom</c> understands.</summary>
internal static class Commands
{
    /// <summary>The root command with all its subcommands.</summary>
    public static RootCommand Root() =>
        new("Works out fretted necks, finds shapes that a hand can play, and makes handouts for teachers.");
}
