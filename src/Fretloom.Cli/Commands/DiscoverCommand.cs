using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using Fretloom.Claims;
using Fretloom.Cli.Json;
using Fretloom.Pages.Documents;
using Fretloom.Pages.Html;
using Fretloom.Pages.Text;
using Fretloom.Sentences;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom discover</c>: true statements about a string set that nobody asked for.</summary>
internal static class DiscoverCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var scope = new Argument<string[]>("scope")
        {
            Description = "Where to look, such as \"on a guitar, on strings 4-1, in every major key\".",
            Arity = ArgumentArity.OneOrMore,
        };
        var json = new Option<bool>("--json") { Description = "Print one JSON document." };
        var count = new Option<int>("--count")
        {
            Description = "How many claims of each list at most, 1 to 100 (20 if left out).",
            HelpName = "N",
            DefaultValueFactory = _ => DiscoveryOptions.Default.Count,
        };
        count.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && result.GetValueOrDefault<int>() is < 1 or > 100)
            {
                result.AddError("--count takes 1 to 100.");
            }
        });
        var seed = new Option<int>("--seed")
        {
            Description = "Decides which tunings are drawn where there are too many to try all (1 if left out).",
            HelpName = "N",
            DefaultValueFactory = _ => DiscoveryOptions.Default.Seed,
        };
        var file = new Option<string?>("--out")
        {
            Description = "Write a report to this file: .html.",
            HelpName = "FILE",
        };
        file.Validators.Add(result =>
        {
            var path = result.GetValueOrDefault<string?>() ?? "";
            if (!path.EndsWith(".html", StringComparison.OrdinalIgnoreCase))
            {
                result.AddError($"The report's name must end in .html: '{path}'.");
            }
        });
        var command = new Command("discover", "Finds true statements worth teaching that nobody asked for.")
        {
            scope,
            json,
            count,
            seed,
            file,
        };
        command.SetAction(parsed =>
            Discover(
                string.Join(' ', parsed.GetValue(scope) ?? []),
                new DiscoveryOptions { Count = parsed.GetValue(count), Seed = parsed.GetValue(seed) },
                parsed.GetValue(file),
                parsed.GetValue(json),
                terminal
            )
        );
        return command;
    }

    private static int Discover(string text, DiscoveryOptions options, string? file, bool isJson, Terminal terminal)
    {
        var scope = DiscoveryParser.Parse(text);
        if (!scope.IsRead)
        {
            return terminal.Explain(text, scope.Errors[0], isJson);
        }

        using var interruption = new Interruption();
        var result = ProgressBar.Over(
            "Looking for what is true",
            report => ClaimDiscovery.Run(scope.Value, options, new Share(report), interruption.Token)
        );
        if (file is not null && !TryWrite(file, DiscoveryReport.Write(result), out var problem))
        {
            return terminal.Fail(problem, isJson);
        }

        if (isJson)
        {
            terminal.Print(DiscoverDocument.Of(result), Documents.Contract.DiscoverDocument);
        }
        else if (file is not null)
        {
            terminal.Output.WriteLine(file);
        }
        else
        {
            terminal.Output.Write(DiscoveryText.Write(result, terminal.Width));
        }

        return ExitCode.Done;
    }

    private static bool TryWrite(string path, string page, [NotNullWhen(false)] out string? problem)
    {
        try
        {
            using var files = new StagedFiles(Path.GetDirectoryName(Path.GetFullPath(path))!);
            files.Add(Path.GetFileName(path), Encoding.UTF8.GetBytes(page));
            files.Publish();
            problem = null;
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            problem = $"Cannot write {path}: {error.Message}";
            return false;
        }
    }

    private sealed class Share(Action<int, int> report) : IProgress<double>
    {
        private const int Whole = 1000;

        public void Report(double value) => report((int)(value * Whole), Whole);
    }
}
