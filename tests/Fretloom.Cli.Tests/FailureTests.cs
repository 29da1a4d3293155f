namespace Fretloom.Cli.Tests;

/// <summary>Whatever fails, the user reads one line, and a program that asked for JSON gets a document.</summary>
public class FailureTests
{
    private sealed class BrokenReader(Exception problem) : TextReader
    {
        public override string? ReadLine() => throw problem;
    }

    private sealed class FullDisk : StringWriter
    {
        public override void Flush() => throw new IOException("No space left on device");
    }

    private static (int Code, string Output, string Error) Broken(
        Exception problem,
        bool showsTraces,
        params string[] args
    )
    {
        var (output, error) = (new StringWriter { NewLine = "\n" }, new StringWriter { NewLine = "\n" });
        var terminal = new Terminal(new BrokenReader(problem), output, error) { ShowsTraces = showsTraces };
        return (CommandLine.Run(args, terminal), output.ToString(), error.ToString());
    }

    [Fact]
    public void What_should_not_happen_is_one_line()
    {
        var (code, output, error) = Broken(new InvalidOperationException("a\nb"), false, "show", "--lines");

        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Equal("fretloom: Something went wrong inside (a b). FRETLOOM_TRACE=1 shows where.\n", error);
    }

    [Fact]
    public void Where_it_happened_is_shown_on_request()
    {
        var (_, _, error) = Broken(new InvalidOperationException("a"), true, "show", "--lines");

        Assert.Contains(nameof(BrokenReader), error, StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_a_document_for_JSON()
    {
        var (_, output, _) = Broken(new InvalidOperationException("a"), false, "show", "--lines", "--json");

        Assert.StartsWith("""{"error":{"message":"fretloom: Something went wrong""", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stopped_run_has_a_code_of_its_own()
    {
        var (code, _, error) = Broken(new OperationCanceledException(), false, "show", "--lines");

        Assert.Equal((130, "fretloom: Stopped; nothing is left half written.\n"), (code, error));
    }

    [Fact]
    public void An_output_that_cannot_be_written_is_said()
    {
        var error = new StringWriter { NewLine = "\n" };

        var code = CommandLine.Run(["show", "every D", "--json"], new Terminal(TextReader.Null, new FullDisk(), error));

        Assert.Equal((2, "fretloom: No space left on device\n"), (code, error.ToString()));
    }
}
