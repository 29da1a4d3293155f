using System.CommandLine;
using System.CommandLine.Parsing;

namespace Fretloom.Cli.Commands;

/// <summary>What the commands that answer a sentence share: the sentence in the call or one a line of the input, JSON, and a file.</summary>
/// <param name="noun">What is given: <c>sentence</c>, <c>claim</c>.</param>
/// <param name="description">What it says, with an example.</param>
/// <param name="ask">What to say when none is given.</param>
internal sealed class SentenceCall(string noun, string description, string ask)
{
    private readonly Argument<string[]> _words = new(noun)
    {
        Description = description,
        Arity = ArgumentArity.ZeroOrMore,
    };

    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON document." };

    private readonly Option<bool> _lines = new("--lines")
    {
        Description = $"Read one {noun} a line from standard input and print one JSON document a line.",
    };

    /// <summary>The command, without its action.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="purpose">What it does.</param>
    /// <param name="options">Its own options.</param>
    public Command Command(string name, string purpose, params ReadOnlySpan<Option> options)
    {
        var command = new Command(name, purpose) { _words, _json, _lines };
        foreach (var option in options)
        {
            command.Add(option);
        }

        command.Validators.Add(Check);
        return command;
    }

    /// <summary>The option that names a file to write, which does not go with many sentences.</summary>
    /// <param name="endings">What it says of the endings of its name.</param>
    /// <param name="whyNot">What is wrong with its name, or null.</param>
    public static Option<string?> File(string endings, Func<string, string?> whyNot)
    {
        var file = new Option<string?>("--out") { Description = endings, HelpName = "FILE" };
        file.Validators.Add(result =>
        {
            if (whyNot(result.GetValueOrDefault<string?>() ?? "") is { } problem)
            {
                result.AddError(problem);
            }
        });
        return file;
    }

    /// <summary>The words that were given.</summary>
    public string[] Words(ParseResult parsed) => parsed.GetValue(_words) ?? [];

    /// <summary>The words that were given, as one text.</summary>
    public string Text(ParseResult parsed) => string.Join(' ', Words(parsed));

    /// <summary>Whether JSON is to be printed.</summary>
    public bool IsJson(ParseResult parsed) => parsed.GetValue(_json);

    /// <summary>Whether sentences come one a line.</summary>
    public bool IsLines(ParseResult parsed) => parsed.GetValue(_lines);

    private void Check(CommandResult result)
    {
        var words = result.GetValue(_words) ?? [];
        if (Array.Find(words, word => word.StartsWith("--", StringComparison.Ordinal)) is { } unknown)
        {
            result.AddError($"There is no option {unknown}.");
        }

        var isNamed = words.Length > 0;
        if (isNamed == result.GetValue(_lines))
        {
            result.AddError(isNamed ? $"Give a {noun} or --lines, not both." : ask);
        }

        if (result.GetValue(_lines) && result.Children.Any(IsFile))
        {
            result.AddError("--lines prints JSON and writes no files; leave --out out.");
        }
    }

    private static bool IsFile(SymbolResult given) => given is OptionResult { Implicit: false, Option.Name: "--out" };
}
