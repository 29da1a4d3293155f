using System.Text;

namespace Fretloom.Cli;

/// <summary>The entry of the <c>fretloom</c> program.</summary>
internal static class Program
{
    /// <summary>Runs one command.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <returns>0 done; 1 a claim fails or a lesson has errors; 2 the call or the sentence was wrong.</returns>
    private static int Main(string[] args)
    {
        var utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        using var output = new StreamWriter(Console.OpenStandardOutput(), utf8) { AutoFlush = false };
        using var error = new StreamWriter(Console.OpenStandardError(), utf8) { AutoFlush = true };
        using var input = new StreamReader(Console.OpenStandardInput(), utf8);
        try
        {
            return CommandLine.Run(args, new Terminal(input, output, error));
        }
        catch (IOException closed) when (closed.HResult == BrokenPipe)
        {
            return ExitCode.Done;
        }
    }

    /// <summary>What a write fails with after the reader of a pipe has gone, as <c>head</c> does: errno EPIPE.</summary>
    private const int BrokenPipe = 32;
}
