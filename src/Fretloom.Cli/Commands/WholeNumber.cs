using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Fretloom.Cli.Commands;

/// <summary>Options that take a whole number, and say so.</summary>
internal static class WholeNumber
{
    /// <summary>Reads the value of an option; 0 with an error when it is none.</summary>
    public static int Read(ArgumentResult given)
    {
        var text = given.Tokens.Count == 1 ? given.Tokens[0].Value : "";
        if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            var name = given.Parent is OptionResult option ? option.Option.Name : "This";
            given.AddError($"{name} takes a whole number, not '{text}'.");
        }

        return number;
    }
}
