namespace Fretloom.Cli.Tests;

public class CommandsTests
{
    [Fact]
    public void Help_names_the_program_as_it_is_called()
    {
        var output = new StringWriter();
        var code = Commands.Root().Parse(["--help"]).Invoke(new() { Output = output });

        Assert.Equal(0, code);
        Assert.Contains("fretloom [", output.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Unknown_option_is_named_in_the_error()
    {
        var error = new StringWriter();
        var code = Commands.Root().Parse(["--bogus"]).Invoke(new() { Output = TextWriter.Null, Error = error });

        Assert.NotEqual(0, code);
        Assert.Contains("--bogus", error.ToString(), StringComparison.Ordinal);
    }
}
