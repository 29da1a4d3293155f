using System.Text.Json;
using Fretloom.Cli.Json;
using Fretloom.Pages.Text;
using Fretloom.Sentences;

namespace Fretloom.Cli;

/// <summary>The three streams of a run: results go to the output, everything said about them to the error stream.</summary>
/// <param name="Input">What is read with <c>--lines</c>.</param>
/// <param name="Output">Results.</param>
/// <param name="Error">Progress and messages.</param>
internal sealed record Terminal(TextReader Input, TextWriter Output, TextWriter Error)
{
    private const int UsualWidth = 80;

    /// <summary>Columns of text to fill: those of the window, or 80 where there is none.</summary>
    public int Width { get; init; } = WindowWidth();

    /// <summary>Gives a token that is cancelled when the user wants the run to end: Ctrl-C for the program itself.</summary>
    public Func<CancellationToken> Listen { get; init; } = () => CancellationToken.None;

    /// <summary>Whether an error that should not happen is shown with the places it came through.</summary>
    public bool ShowsTraces { get; init; } = Environment.GetEnvironmentVariable("FRETLOOM_TRACE") == "1";

    /// <summary>Says what went wrong, for JSON as an error document too.</summary>
    /// <returns><see cref="ExitCode.Misused"/>.</returns>
    public int Fail(string message, bool isJson)
    {
        Error.WriteLine(message);
        if (isJson)
        {
            PrintError(message, 1);
        }

        return ExitCode.Misused;
    }

    /// <summary>Prints one JSON document on one line.</summary>
    public void Print<T>(T document, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> type) =>
        Output.WriteLine(JsonSerializer.Serialize(document, type));

    /// <summary>Prints an error document.</summary>
    public void PrintError(string message, int column) =>
        Print(new ErrorDocument(new ErrorBody(message, column)), Documents.Contract.ErrorDocument);

    /// <summary>Shows an error under the sentence it is in, or as an error document.</summary>
    /// <returns><see cref="ExitCode.Misused"/>.</returns>
    public int Explain(string sentence, SentenceError error, bool isJson)
    {
        if (isJson)
        {
            PrintError(error.Message, error.Column);
            return ExitCode.Misused;
        }

        Error.WriteLine(sentence);
        Error.WriteLine(new string(' ', error.Column - 1) + new string('^', Math.Max(1, error.Length)));
        Error.WriteLine(error.Message);
        return ExitCode.Misused;
    }

    /// <summary>Answers the lines of the input, each as soon as it is read: the program that asks may wait for it before it asks again.</summary>
    /// <param name="answer">Prints the answer to a line and gives its <see cref="ExitCode"/>.</param>
    /// <returns>The worst of the codes.</returns>
    /// <exception cref="OperationCanceledException">The user stopped it while it waited, or the answer was stopped.</exception>
    public int AnswerLines(Func<string, int> answer)
    {
        var (stop, worst) = (Listen(), ExitCode.Done);
        while (NextLine(stop) is { } line)
        {
            worst = Math.Max(worst, answer(line));
            Output.Flush();
        }

        return worst;
    }

    // A console or a pipe cannot be read with a token, so a thread reads that may be left behind.
    private string? NextLine(CancellationToken stop) =>
        Task.Run(Input.ReadLine, stop).WaitAsync(stop).GetAwaiter().GetResult();

    private static int WindowWidth()
    {
        if (Console.IsOutputRedirected)
        {
            return UsualWidth;
        }

        try
        {
            return Math.Max(PlainText.SmallestWidth, Console.WindowWidth);
        }
        catch (IOException)
        {
            return UsualWidth;
        }
    }
}
