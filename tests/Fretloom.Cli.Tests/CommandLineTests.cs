namespace Fretloom.Cli.Tests;

public class CommandLineTests
{
    [Fact]
    public void Help_names_the_program_as_it_is_called()
    {
        var help = Call.Fretloom("--help");

        Assert.Equal(0, help.Code);
        Assert.Contains("fretloom [", help.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("show")]
    [InlineData("finger")]
    [InlineData("check")]
    [InlineData("build")]
    [InlineData("demo")]
    [InlineData("print")]
    [InlineData("studio")]
    public void Help_of_every_command_ends_with_its_examples(string command)
    {
        var help = Call.Fretloom(command, "--help");

        Assert.Equal(0, help.Code);
        Assert.NotEmpty(Examples.Of(command));
        Assert.EndsWith(
            string.Concat(Examples.Of(command).Select(example => $"  {example}\n")),
            help.Output,
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("--bogus")]
    [InlineData("show", "--bogus", "the triads")]
    [InlineData("build")]
    [InlineData("build", "x.md", "--paper", "a3")]
    [InlineData("build", "x.md", "--format", "pdf,docx")]
    [InlineData("build", "x.md", "--key", "H major")]
    [InlineData("build", "x.md", "--order", "random")]
    [InlineData("show")]
    [InlineData("check")]
    [InlineData("check", "--bogus", "In every key.")]
    [InlineData("check", "In every key.", "--lines")]
    [InlineData("finger")]
    [InlineData("finger", "--lines", "--hand", "small")]
    [InlineData("finger", "--spots", "4:9", "--alternatives", "two")]
    [InlineData("show", "the triads", "--lines")]
    [InlineData("show", "--lines", "--out", "x.svg")]
    [InlineData("show", "the triads", "--out", "x.gif")]
    [InlineData("build", "x.md", "--out", "")]
    [InlineData("demo", "--out", "")]
    [InlineData("print")]
    [InlineData("print", "the triads", "--bogus")]
    [InlineData("print", "the triads", "--out", "x.svg")]
    [InlineData("print", "the triads", "--paper", "a3")]
    [InlineData("studio", "--port", "seven")]
    [InlineData("studio", "--port", "65536")]
    [InlineData("studio", "--port", "-1")]
    [InlineData("studio", "--lessons", "/no/such/folder")]
    [InlineData("studio", "--listen", "everywhere")]
    public void A_wrong_call_exits_with_2_and_says_where_help_is(params string[] args)
    {
        var call = Call.Fretloom(args);

        Assert.Equal(2, call.Code);
        Assert.Empty(call.Output);
        Assert.Contains("--help", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_call_for_JSON_prints_an_error_document()
    {
        var call = Call.Fretloom("show", "--bogus", "the triads", "--json");

        Assert.Equal(2, call.Code);
        Assert.Contains(
            "--bogus",
            call.Json.GetProperty("error").GetProperty("message").GetString(),
            StringComparison.Ordinal
        );
    }
}
