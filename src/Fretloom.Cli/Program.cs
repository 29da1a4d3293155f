using System.Text;

namespace Fretloom.Cli;

/// <summary>The entry of the <c>fretloom</c> program.</summary>
internal static class Program
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <returns>The <see cref="ExitCode"/>.</returns>
    private static int Main(string[] args)
    {
        // The streams are flushed by the run and never closed: closing would try once more to write what could not be written.
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        var output = new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = false };
        var error = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true };
        var input = new StreamReader(Console.OpenStandardInput(), utf8);
        return CommandLine.Run(args, new Terminal(input, output, error) { Listen = Interruption.Listen });
    }
}
