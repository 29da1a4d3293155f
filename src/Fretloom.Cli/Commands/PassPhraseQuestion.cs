using System.Text;

namespace Fretloom.Cli.Commands;

/// <summary>Asks for the pass phrase that others need to come into the studio.</summary>
internal static class PassPhraseQuestion
{
    /// <summary>The fewest characters. Ours, without source.</summary>
    private const int Fewest = 8;

    private const string Variable = "FRETLOOM_PASSPHRASE";

    /// <summary>Takes it from the variable <c>FRETLOOM_PASSPHRASE</c>, or asks for it on the terminal, unseen.</summary>
    /// <returns>Null when there is none; then that has been said.</returns>
    public static string? Ask(Terminal terminal)
    {
        var phrase = Environment.GetEnvironmentVariable(Variable);
        if (phrase is null && Console.IsInputRedirected)
        {
            terminal.Error.WriteLine(
                $"--listen needs a pass phrase: put one into {Variable}, or start the studio in a terminal."
            );
            return null;
        }

        phrase ??= ReadUnseen(terminal);
        if (phrase.Length < Fewest)
        {
            terminal.Error.WriteLine($"A pass phrase has at least {Fewest} characters.");
            return null;
        }

        return phrase;
    }

    private static string ReadUnseen(Terminal terminal)
    {
        terminal.Error.Write($"Pass phrase for those who come in (at least {Fewest} characters): ");
        var phrase = new StringBuilder();
        for (
            var key = Console.ReadKey(intercept: true);
            key.Key != ConsoleKey.Enter;
            key = Console.ReadKey(intercept: true)
        )
        {
            if (key.Key == ConsoleKey.Backspace)
            {
                phrase.Length = Math.Max(0, phrase.Length - 1);
            }
            else if (!char.IsControl(key.KeyChar))
            {
                phrase.Append(key.KeyChar);
            }
        }

        terminal.Error.WriteLine();
        return phrase.ToString();
    }
}
