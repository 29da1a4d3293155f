using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Fretloom.Cli.Json;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Cli.Commands;

/// <summary>What is wrong with a request.</summary>
/// <param name="Message">What, and what would go.</param>
/// <param name="Field">Where: <c>on</c>, <c>spots[2]</c>.</param>
/// <param name="Column">Where in the text of the field, counted from 1.</param>
internal sealed record FingerProblem(string Message, string Field, int Column = 1)
{
    /// <summary>A request that no hand can play.</summary>
    public static FingerProblem Of(FingeringRefusal refusal, FingerRequestDocument asked)
    {
        var notes = asked.Notes is not null ? "notes" : "spots";
        return new(
            refusal.Message,
            refusal.Note is { } note && note < Math.Max(asked.Notes?.Count ?? 0, asked.Spots?.Count ?? 0)
                    ? string.Create(CultureInfo.InvariantCulture, $"{notes}[{note}]")
                : refusal.Rule is { } rule ? string.Create(CultureInfo.InvariantCulture, $"rules[{rule}]")
                : notes
        );
    }
}

/// <summary>Makes a request out of what was typed or sent.</summary>
internal sealed partial class FingerRequestReader
{
    private const int MostAlternatives = 50;
    private const int MostNumber = 99;

    private readonly FingerRequestDocument _asked;
    private readonly List<LineNote> _notes = [];
    private readonly List<LineRule> _rules = [];
    private Player _player = new(Catalogue.Default);

    private FingerRequestReader(FingerRequestDocument asked) => _asked = asked;

    /// <summary>Reads a request.</summary>
    /// <param name="asked">What was asked.</param>
    /// <param name="request">The request; null when there is a refusal.</param>
    /// <returns>What is wrong, or null.</returns>
    public static FingerProblem? Read(FingerRequestDocument asked, out FingeringRequest? request)
    {
        var reader = new FingerRequestReader(asked);
        var wrong =
            reader.CheckKind() ?? reader.ReadPlayer() ?? reader.ReadSpots() ?? reader.ReadNotes() ?? reader.ReadRules();
        request = wrong is null ? reader.Request() : null;
        return wrong;
    }

    private FingeringRequest Request()
    {
        var kind =
            _asked.Together ? FingeringKind.Together
            : _asked.Arpeggio ? FingeringKind.Arpeggio
            : FingeringKind.Line;
        return new(_player, kind, _notes.ToValueList(), _rules.ToValueList(), _asked.Alternatives + 1);
    }

    private FingerProblem? CheckKind() =>
        _asked is { Together: true, Arpeggio: true }
            ? new("Together or arpeggio, not both: a chord is held, an arpeggio is played note by note.", "arpeggio")
        : _asked is { Spots: not null, Notes: not null }
            ? new("Name the notes as spots or as notes, not both.", "notes")
        : _asked is { Spots: not { Count: > 0 }, Notes: not { Count: > 0 } }
            ? new("There is no note to finger; name some, such as 4:9 for string 4, fret 9.", NotesField)
        : _asked.Alternatives is < 0 or > MostAlternatives
            ? new($"0 to {MostAlternatives} alternatives can be had, not {_asked.Alternatives}.", "alternatives")
        : CheckSize();

    // What is printed grows with both, so that neither is bounded alone.
    private FingerProblem? CheckSize()
    {
        var notes = (_asked.Spots ?? []).Count + (_asked.Notes ?? []).Count;
        var most = LineFingering.MostNotesOfAll / notes;
        return _asked.Alternatives == 0 || _asked.Alternatives < most ? null
            : most <= 1 ? new($"{notes} notes are too many for alternatives: ask for 0.", "alternatives")
            : new(
                $"{_asked.Alternatives} alternatives to {notes} notes are too many: at most {most - 1}.",
                "alternatives"
            );
    }

    private string NotesField => _asked.Notes is not null ? "notes" : "spots";

    private FingerProblem? ReadPlayer()
    {
        var instrument = ShowParser.ParseInstrument(_asked.On ?? Catalogue.Default.Name);
        if (!instrument.IsRead)
        {
            return new(instrument.Errors[0].Message, "on", instrument.Errors[0].Column);
        }

        if (_asked.Capo < 0 || _asked.Capo >= instrument.Value.Frets)
        {
            return new($"The {instrument.Value.Name} takes a capo at frets 1 to {instrument.Value.Frets - 1}.", "capo");
        }

        if (ReadHand(out var hand) is { } wrong)
        {
            return wrong;
        }

        _player = new(instrument.Value.WithCapo(_asked.Capo), hand, _asked.TurnedOver, _asked.Thumb);
        return null;
    }

    private FingerProblem? ReadHand(out HandSize hand)
    {
        hand = HandSize.Adult;
        switch (_asked.Hand)
        {
            case null or { ValueKind: JsonValueKind.Null }:
                return null;
            case { ValueKind: JsonValueKind.Number } number
                when number.GetDouble() is >= HandSize.LeastMm and <= HandSize.MostMm:
                hand = new HandSize(number.GetDouble());
                return null;
            case { ValueKind: JsonValueKind.String } text:
                var read = ShowParser.ParseHand(text.GetString()!);
                hand = read.IsRead ? read.Value : hand;
                return read.IsRead ? null : new(read.Errors[0].Message, "hand", read.Errors[0].Column);
            default:
                return new(
                    $"A hand is 'small', 'adult', 'large', 'child' or {HandSize.LeastMm} to {HandSize.MostMm} mm.",
                    "hand"
                );
        }
    }

    private FingerProblem? ReadSpots()
    {
        foreach (var (at, spot) in (_asked.Spots ?? []).Index())
        {
            if (spot is null)
            {
                return new($"Note {at + 1} is missing; name its string and fret.", $"spots[{at}]");
            }

            if (spot is not { String: >= 1 and <= MostNumber, Fret: >= 0 and <= MostNumber })
            {
                return new($"Note {at + 1}: there is no string {spot.String}, fret {spot.Fret}.", $"spots[{at}]");
            }

            _notes.Add(new LineNote.At(new Spot(spot.String, spot.Fret)));
        }

        return null;
    }

    private FingerProblem? ReadNotes()
    {
        foreach (var (at, text) in (_asked.Notes ?? []).Index())
        {
            if (Spot.TryParse(text, out var spot))
            {
                _notes.Add(new LineNote.At(spot));
            }
            else if (Pitch.TryParse(text, out var pitch))
            {
                _notes.Add(new LineNote.Sounding(pitch));
            }
            else
            {
                return new(
                    $"Note {at + 1}: '{text}' is neither a string and fret, such as 4:9, nor a pitch, such as E4.{Meant(text)}",
                    $"notes[{at}]"
                );
            }
        }

        return null;
    }

    private static string Meant(string? text) =>
        text is null ? ""
        : Pitch.TryParse($"{text}4", out var pitch) ? $" A pitch has its octave: middle C is C4. Did you mean {pitch}?"
        : Spot.TryParse(Sign().Replace(text, ":"), out var spot) ? $" Did you mean {spot}?"
        : text.StartsWith("0:", StringComparison.Ordinal) ? " Strings are counted from 1, nearest the floor."
        : "";

    private FingerProblem? ReadRules()
    {
        foreach (var (at, text) in (_asked.Rules ?? []).Index())
        {
            if (text is null)
            {
                return new(
                    $"Rule {at + 1} is missing; a rule is a text such as 'start with finger 2'.",
                    $"rules[{at}]"
                );
            }

            var rule = RuleParser.Parse(text);
            if (!rule.IsRead)
            {
                return new($"Rule '{text}': {rule.Errors[0].Message}", $"rules[{at}]", rule.Errors[0].Column);
            }

            _rules.Add(rule.Value);
        }

        return null;
    }

    // What people write between string and fret.
    [GeneratedRegex("[/.;-]")]
    private static partial Regex Sign();
}
