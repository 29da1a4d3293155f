using System.CommandLine;

namespace Fretloom.Cli;

/// <summary>The entry of the <c>fretloom</c> program.</summary>
internal static class Program
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <returns>0 done; 1 a claim fails or a lesson has errors; 2 the call or the sentence was wrong.</returns>
    private static int Main(string[] args) => Commands.Root().Parse(args).Invoke();
}
