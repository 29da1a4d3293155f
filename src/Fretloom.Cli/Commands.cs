using System.CommandLine;
using System.CommandLine.Help;

namespace Fretloom.Cli;

/// <summary>The tree of commands that <c>fretloom</c> understands.</summary>
internal static class Commands
{
    /// <summary>
    /// The command that holds all others. It is a plain command and not a <see cref="RootCommand"/>, whose name in the
    /// help would be that of the executable file.
    /// </summary>
    public static Command Root() =>
        new("fretloom", "Works out fretted necks, finds shapes that a hand can play, and makes handouts for teachers.")
        {
            new HelpOption(),
            new VersionOption(),
        };
}
