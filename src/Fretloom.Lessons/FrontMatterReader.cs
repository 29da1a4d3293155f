using System.Globalization;
using System.Text.RegularExpressions;
using Fretloom.Claims;
using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Lessons.Markdown;
using Fretloom.Lessons.Syntax;
using Fretloom.Lessons.Yaml;
using Fretloom.Neck;
using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Lessons;

/// <summary>Reads the lines between <c>---</c> at the start of a lesson.</summary>
internal sealed partial class FrontMatterReader(SourceText source, DiagnosticList found, DiagnosticList bound)
{
    private const string StringSets = "string-sets";

    internal static readonly string[] Known =
    [
        "title",
        "subtitle",
        "instrument",
        "capo",
        "key",
        "hand",
        "strings",
        StringSets,
        "frets",
        "player",
        "note-names",
        "course",
        "teacher",
        "date",
        "sheet",
        "language",
    ];

    private FrontMatter _read = new();

    /// <summary>Reads the front matter.</summary>
    /// <param name="end">The place in the text where the lesson proper begins.</param>
    public FrontMatter Read(out int end)
    {
        end = 0;
        if (!IsFence(source.Line(1)))
        {
            found.Error(0, "A lesson begins with a line '---', lines such as 'title: Three frets', and a line '---'.");
            return _read;
        }

        var last = Enumerable.Range(2, source.LineCount - 1).FirstOrDefault(line => IsFence(source.Line(line)));
        if (last == 0)
        {
            found.Error(0, "The lines above the lesson are never closed; put a line '---' below them.");
            end = source.Text.Length;
            return _read;
        }

        end = source.StartOf(last) + source.Line(last).Length;
        var lines = Enumerable
            .Range(2, last - 2)
            .Select(line => new PlacedLine(source.Line(line), source.StartOf(line)));
        var text = new PlacedText([.. lines]);
        var entries = FlatYaml.Read(text.Text, text.OffsetOf, Known, found, StringSets);
        foreach (var entry in entries.OrderBy(entry => Array.IndexOf(Known, entry.Parent ?? entry.Key)))
        {
            Take(entry);
        }

        // Where a line could not be read, the title may stand in it.
        if (found.IsEmpty && !entries.Exists(entry => entry is { Key: "title", Parent: null }))
        {
            found.Error(0, "The lesson has no title; add a line such as 'title: Three frets that carry the key'.");
        }

        return Curled(_read);
    }

    private static FrontMatter Curled(FrontMatter front)
    {
        return front with
        {
            Title = Quotes.Curl(front.Title, front.Language),
            Subtitle = Curl(front.Subtitle),
            Course = Curl(front.Course),
            Teacher = Curl(front.Teacher),
            Date = Curl(front.Date),
            Sheet = Curl(front.Sheet),
        };

        string? Curl(string? text) => text is null ? null : Quotes.Curl(text, front.Language);
    }

    private static bool IsFence(string line) => line.TrimEnd() == "---";

    private void Take(YamlEntry entry)
    {
        if (string.IsNullOrWhiteSpace(entry.Value))
        {
            found.Error(entry.ValueOffset, $"'{entry.Key}' is empty; write something after the colon or leave it out.");
            return;
        }

        if (entry.Parent is not null)
        {
            TakeStringSet(entry);
            return;
        }

        KeyWords.Check(entry.Value, entry.ValueOffset, found);
        if (entry.Key is "title" or "subtitle")
        {
            ProseCheck.Check(entry.Value, entry.ValueOffset, bound);
        }

        var (value, at) = (entry.Value, entry.ValueOffset);
        switch (entry.Key)
        {
            case "title":
                _read = _read with { Title = value };
                break;
            case "subtitle":
                _read = _read with { Subtitle = value };
                break;
            case "course":
                _read = _read with { Course = value };
                break;
            case "teacher":
                _read = _read with { Teacher = value };
                break;
            case "date":
                _read = _read with { Date = value };
                break;
            case "sheet":
                _read = _read with { Sheet = value };
                break;
            case "language" when LanguageTag().IsMatch(value):
                _read = _read with { Language = value };
                break;
            case "language":
                found.Error(at, $"{Suggestion.Quoted(value)} is not a language; expected letters such as en or en-GB.");
                break;
            case "capo":
                TakeCapo(value, at);
                break;
            case "player":
                TakePlayer(value, at);
                break;
            case "note-names":
                TakeNoteNames(value, at);
                break;
            default:
                TakeSetting(entry);
                break;
        }
    }

    private void TakePlayer(string value, int at)
    {
        var said = ShowParser.Parse($"the thirds, {value}").Value;
        var player = new ShowSentence
        {
            Subjects = [new Subject.TheThirds()],
            IsLeftHanded = said?.IsLeftHanded,
            IsTurnedOver = said?.IsTurnedOver == true,
            UsesThumb = said?.UsesThumb,
        };
        if (said != player)
        {
            found.Error(
                at,
                $"{Suggestion.Quoted(value)} is not a player; expected left-handed or right-handed, and perhaps 'turned over' or 'with the thumb' after a comma."
            );
            return;
        }

        _read = _read with
        {
            Defaults = _read.Defaults with
            {
                IsLeftHanded = player.IsLeftHanded == true,
                IsTurnedOver = player.IsTurnedOver,
                UsesThumb = player.UsesThumb == true,
            },
        };
    }

    private void TakeNoteNames(string value, int at)
    {
        NoteNaming? naming = value switch
        {
            "english" => NoteNaming.English,
            "german" => NoteNaming.German,
            "fixed-do" => NoteNaming.FixedDo,
            "movable-do" => NoteNaming.MovableDo,
            _ => null,
        };
        if (naming is null)
        {
            found.Error(
                at,
                $"{Suggestion.Quoted(value)} is no way to name notes; expected english, german, fixed-do or movable-do."
            );
        }

        _read = _read with { Defaults = _read.Defaults with { NoteNames = naming ?? NoteNaming.English } };
    }

    private void TakeSetting(YamlEntry entry)
    {
        var (value, at) = (entry.Value, entry.ValueOffset);
        var defaults = _read.Defaults;
        var changed = entry.Key switch
        {
            "instrument" when Take(ShowParser.ParseInstrument(value)) is { } instrument => defaults with
            {
                Instrument = instrument,
            },
            "key" when Take(ShowParser.ParseKey(value)) is { } key => defaults with { Key = key },
            "hand" when ShowParser.ParseHand(value) is { IsRead: true } hand => defaults with { Hand = hand.Value },
            "hand" => Refused(ShowParser.ParseHand(value)),
            "strings" when value == "all" => defaults with { Strings = null },
            "strings" when TakeStrings(value, at) is { } strings => defaults with { Strings = strings },
            "frets" when TakePhrase("frets ", value, at) is { Frets: { } frets } => defaults with { Frets = frets },
            _ => defaults,
        };
        _read = _read with { Defaults = changed };

        T? Take<T>(SentenceResult<T> result)
            where T : notnull => SentenceReader.Take(result, at, 0, found);

        ShowDefaults Refused(SentenceResult<HandSize> result)
        {
            if (value.Any(char.IsAsciiDigit))
            {
                Take(result);
            }
            else
            {
                found.Error(
                    at,
                    $"{Suggestion.Quoted(value)} is not a hand; expected adult, small, large, child, or a length such as 176 mm."
                );
            }

            return defaults;
        }
    }

    private StringSet? TakeStrings(string value, int at) => TakePhrase("on strings ", value, at)?.Strings;

    private ShowSentence? TakePhrase(string words, string value, int at)
    {
        var lead = "the notes of the key, " + words;
        return SentenceReader.Take(ShowParser.Parse(lead + value, _read.Defaults.Instrument), at, lead.Length, found);
    }

    // A name is tried in a claim: some words already mean other strings there.
    private void TakeStringSet(YamlEntry entry)
    {
        if (TakeStrings(entry.Value, entry.ValueOffset) is not { } strings)
        {
            return;
        }

        var named = SetName().IsMatch(entry.Key) ? new NamedStrings(entry.Key, strings) : null;
        var isTaken = named is null || _read.StringSets.Any(set => set.Name.Equals(named.Name, IgnoringCase));
        var defaults = new ClaimDefaults(_read.Defaults.Instrument, null, named is null ? [] : [named]);
        if (isTaken || !MeansThem($"the {entry.Key} strings") || !MeansThem($"{entry.Key} strings"))
        {
            found.Error(
                entry.KeyOffset,
                $"{Suggestion.Quoted(entry.Key)} cannot name strings; expected one to five words of your own without 'strings', such as 'top' or 'low four'."
            );
            return;
        }

        _read = _read with { StringSets = [.. _read.StringSets, named!] };

        bool MeansThem(string words) =>
            ClaimParser.Parse($"In every key, on {words}, there is at least 1 full fret.", defaults).Value?.Places
                is PlaceScope.On on
            && (on.Strings ?? defaults.Instrument.AllStrings) == strings;
    }

    private const StringComparison IgnoringCase = StringComparison.OrdinalIgnoreCase;

    private void TakeCapo(string value, int at)
    {
        var last = _read.Defaults.Instrument.Frets - 1;
        if (!int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var fret) || fret > last)
        {
            found.Error(at, $"{Suggestion.Quoted(value)} is not a fret for a capo here; expected 0 to {last}.");
            return;
        }

        _read = _read with { Capo = fret };
    }

    [GeneratedRegex(@"^\p{L}+( \p{L}+){0,4}\z", RegexOptions.CultureInvariant)]
    private static partial Regex SetName();

    [GeneratedRegex(@"^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*\z", RegexOptions.CultureInvariant)]
    private static partial Regex LanguageTag();
}
