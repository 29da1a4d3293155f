using System.CommandLine;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
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
        Require(count, number => number is >= 1 and <= 100, "--count takes 1 to 100.");
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
        var picture = new Option<int?>("--picture")
        {
            Description = "Print line N alone, with the neck that shows it and the nearest failure.",
            HelpName = "N",
        };
        Require(picture, number => number >= 1, "--picture takes the number of a line, 1 or more.");
        var command = new Command("discover", "Finds true statements worth teaching that nobody asked for.")
        {
            scope,
            json,
            count,
            seed,
            file,
            picture,
        };
        command.Validators.Add(result =>
        {
            if (
                result.GetResult(picture) is { Implicit: false }
                && (result.GetValue(json) || result.GetResult(file) is { Implicit: false })
            )
            {
                result.AddError("--picture prints text; leave --json and --out out.");
            }
        });
        command.SetAction(parsed =>
            Discover(
                string.Join(' ', parsed.GetValue(scope) ?? []),
                new DiscoveryOptions { Count = parsed.GetValue(count), Seed = parsed.GetValue(seed) },
                parsed.GetValue(file),
                parsed.GetValue(picture),
                parsed.GetValue(json),
                terminal
            )
        );
        return command;
    }

    private static void Require(Option option, Func<int, bool> isFine, string otherwise) =>
        option.Validators.Add(result =>
        {
            if (
                result.Tokens is [var token]
                && !(
                    int.TryParse(token.Value, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number)
                    && isFine(number)
                )
            )
            {
                result.AddError(otherwise);
            }
        });

    private static int Discover(
        string text,
        DiscoveryOptions options,
        string? file,
        int? picture,
        bool isJson,
        Terminal terminal
    )
    {
        var scope = DiscoveryParser.Parse(text);
        if (!scope.IsRead)
        {
            return terminal.Explain(text, scope.Errors[0], isJson);
        }

        var stop = terminal.Listen();
        var result = ProgressBar.Over(
            "Looking for what is true",
            report => ClaimDiscovery.Run(scope.Value, options, ProgressBar.Share(report), stop)
        );
        if (file is not null && !TryWrite(file, DiscoveryReport.Write(result), out var problem))
        {
            return terminal.Fail(problem, isJson);
        }

        var (landmarks, laws) = (result.Landmarks.Count, result.Laws.Count);
        if (picture > landmarks + laws)
        {
            return terminal.Fail(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"There is no line {picture}: {landmarks} landmarks and {laws} laws were found, 1 to {landmarks + laws}."
                ),
                isJson
            );
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
            terminal.Output.Write(
                picture is { } number
                    ? DiscoveryText.WritePictures(result, number, terminal.Width)
                    : DiscoveryText.Write(result, terminal.Width)
            );
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
}
