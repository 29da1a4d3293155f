using System.CommandLine;
using System.CommandLine.Parsing;
using System.Text.Json;
using System.Text.RegularExpressions;
using Fretloom.Cli.Json;

namespace Fretloom.Cli.Commands;

/// <summary><c>fretloom finger</c>: fingers for a chord, an arpeggio or a line, one request or one a line.</summary>
internal static partial class FingerCommand
{
    /// <summary>Makes the command.</summary>
    public static Command Create(Terminal terminal)
    {
        var notes = new Option<string?>("--spots", "--notes")
        {
            Description =
                "The notes in the order played, as string:fret, \"4:9 3:7 2:6 1:5\", or by pitch, \"C4 D4 E4\": then strings and frets are chosen too.",
            HelpName = "NOTES",
        };
        var together = new Option<bool>("--together") { Description = "The notes are a chord, held together." };
        var arpeggio = new Option<bool>("--arpeggio")
        {
            Description = "The notes are a shape played one after another, with one finger a string.",
        };
        var on = new Option<string?>("--on")
        {
            Description = "The instrument, as in a sentence (a guitar if left out).",
            HelpName = "INSTRUMENT",
        };
        var capo = new Option<int>("--capo")
        {
            Description = "The fret of the capo; frets are counted from it.",
            HelpName = "FRET",
            CustomParser = WholeNumber.Read,
        };
        var hand = new Option<string?>("--hand")
        {
            Description = "small, adult, large, child, or a length such as \"176 mm\" (adult, 189 mm, if left out).",
            HelpName = "HAND",
        };
        var turnedOver = new Option<bool>("--turned-over")
        {
            Description = "The instrument is held the other way round, without being restrung.",
        };
        var thumb = new Option<bool>("--thumb")
        {
            Description = "The thumb may stop strings over the edge of the neck.",
        };
        var rules = new Option<string[]>("--rule")
        {
            Description = "What a line must keep to, such as \"start with finger 2\"; may be repeated.",
            HelpName = "RULE",
        };
        var alternatives = new Option<int>("--alternatives")
        {
            Description = "How many of the next best fingerings to add.",
            HelpName = "N",
            CustomParser = WholeNumber.Read,
        };
        var json = new Option<bool>("--json") { Description = "Print one JSON document." };
        var lines = new Option<bool>("--lines")
        {
            Description = "Read one request a line from standard input, as JSON, and print one JSON document a line.",
        };
        var command = new Command(
            "finger",
            "Finds the fingers of the fretting hand for a chord, an arpeggio or a line."
        )
        {
            notes,
            together,
            arpeggio,
            on,
            capo,
            hand,
            turnedOver,
            thumb,
            rules,
            alternatives,
            json,
            lines,
        };
        command.Validators.Add(result =>
        {
            if (result.GetValue(lines))
            {
                if (
                    result
                        .Children.OfType<OptionResult>()
                        .Any(given => !given.Implicit && given.Option != lines && given.Option != json)
                )
                {
                    result.AddError("With --lines everything stands in the lines; leave the other options out.");
                }
            }
            else if (result.GetValue(notes) is null)
            {
                result.AddError("Name the notes, such as --spots \"4:9 3:7 2:6 1:5\" or --notes \"C4 D4 E4\".");
            }
        });
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(lines))
            {
                return FingerRun.AnswerLines(terminal);
            }

            var typed = Word().Matches(parsed.GetValue(notes)!);
            var asked = new FingerRequestDocument
            {
                Notes = [.. typed.Select(word => word.Value)],
                Together = parsed.GetValue(together),
                Arpeggio = parsed.GetValue(arpeggio),
                On = parsed.GetValue(on),
                Capo = parsed.GetValue(capo),
                Hand = parsed.GetValue(hand) is { } size
                    ? JsonSerializer.SerializeToElement(Bare().Replace(size, "$0 mm"), Documents.Contract.String)
                    : null,
                TurnedOver = parsed.GetValue(turnedOver),
                Thumb = parsed.GetValue(thumb),
                Rules = parsed.GetValue(rules),
                Alternatives = parsed.GetValue(alternatives),
            };
            return FingerRun.Answer(asked, ColumnOf, parsed.GetValue(json), terminal);

            int ColumnOf(FingerProblem wrong) =>
                Enumerable.Range(0, typed.Count).FirstOrDefault(at => wrong.Field == $"notes[{at}]", -1)
                    is >= 0
                        and var note
                    ? typed[note].Index + 1
                    : wrong.Column;
        });
        return command;
    }

    [GeneratedRegex("[^,\\s]+")]
    private static partial Regex Word();

    // A length without its unit.
    [GeneratedRegex("^[0-9.]+$")]
    private static partial Regex Bare();
}
