using System.Text.Json;

namespace Fretloom.Cli.Tests;

public class FingerTests
{
    [Fact]
    public void The_document_has_the_parts_of_the_contract_in_its_order()
    {
        // Four fingers at four frets can stand in one order only: there is no alternative.
        var call = Call.Fretloom("finger", "--spots", "4:9 3:7 2:6 1:5", "--arpeggio", "--alternatives", "2", "--json");

        Assert.Equal(0, call.Code);
        Assert.Empty(call.Error);
        Assert.Equal("""{"string":4,"fret":9,"finger":4}""", call.Json.GetProperty("notes")[0].GetRawText());
        Assert.Equal([4, 3, 2, 1], Fingers(call.Json));
        var terms = call.Json.GetProperty("terms").EnumerateObject().Sum(term => term.Value.GetDouble());
        Assert.Equal(call.Json.GetProperty("cost").GetDouble(), terms, 0.01);
        Assert.Equal(102.0, call.Json.GetProperty("stretchMm").GetDouble(), 1.0);
        Assert.Equal(JsonValueKind.Array, call.Json.GetProperty("cautions").ValueKind);
        Assert.Equal(0, call.Json.GetProperty("alternatives").GetArrayLength());
    }

    [Fact]
    public void Alternatives_are_dearer_one_by_one_and_without_alternatives_of_their_own()
    {
        var json = Call.Fretloom(
            "finger",
            "--spots",
            "5:3 4:2 3:0 2:1 1:0",
            "--together",
            "--alternatives",
            "3",
            "--json"
        ).Json;

        var alternatives = json.GetProperty("alternatives").EnumerateArray().ToList();
        var costs = alternatives.Prepend(json).Select(one => one.GetProperty("cost").GetDouble()).ToList();
        Assert.Equal(costs.Order(), costs);
        Assert.Equal(4, alternatives.Prepend(json).Select(one => string.Join(' ', Fingers(one))).Distinct().Count());
        Assert.All(alternatives, one => Assert.False(one.TryGetProperty("alternatives", out _)));
    }

    [Fact]
    public void Without_asking_there_is_an_empty_list_of_alternatives() =>
        Assert.Equal(
            0,
            Call.Fretloom("finger", "--spots", "4:9", "--json").Json.GetProperty("alternatives").GetArrayLength()
        );

    // Common practice, no source.
    [Theory]
    [InlineData("5:3 4:2 3:0 2:1 1:0", "guitar", "3 2 0 1 0")]
    [InlineData("6:1 5:3 4:3 3:2 2:1 1:1", "guitar", "1 3 4 2 1 1")]
    [InlineData("4:2 3:0 2:1 1:0", "ukulele", "2 0 1 0")]
    public void Chords_that_everyone_knows(string spots, string instrument, string fingers) =>
        Assert.Equal(
            fingers,
            string.Join(
                ' ',
                Fingers(Call.Fretloom("finger", "--spots", spots, "--together", "--on", instrument, "--json").Json)
            )
        );

    // Common practice, no source: the C major scale in first position.
    [Fact]
    public void A_melody_gets_strings_frets_and_fingers()
    {
        var json = Call.Fretloom("finger", "--notes", "C3 D3 E3 F3 G3 A3 B3 C4", "--json").Json;

        Assert.Equal("5:3 4:0 4:2 4:3 3:0 3:2 2:0 2:1", Spots(json));
        Assert.Equal([3, 0, 2, 3, 0, 2, 0, 1], Fingers(json));
    }

    [Fact]
    public void A_rule_is_kept()
    {
        var json = Call.Fretloom("finger", "--notes", "C3, D3, E3", "--rule", "no open strings", "--json").Json;

        Assert.DoesNotContain(0, Fingers(json));
    }

    [Fact]
    public void A_wide_stretch_comes_with_cautions_and_a_small_hand_finds_it_wider()
    {
        string[] asked = ["finger", "--spots", "4:5 3:4 2:3 1:1", "--arpeggio", "--json", "--hand"];

        var small = Call.Fretloom([.. asked, "small"]).Json;
        var large = Call.Fretloom([.. asked, "large"]).Json;

        Assert.Equal("very wide", small.GetProperty("width").GetString());
        var said = small.GetProperty("cautions").EnumerateArray().Select(one => one.GetString()).ToList();
        Assert.StartsWith(
            "Very wide for a hand of 165 mm on this instrument: 128 mm",
            said[0],
            StringComparison.Ordinal
        );
        Assert.Contains("do not force it", said[1], StringComparison.Ordinal);
        Assert.NotEqual("very wide", large.GetProperty("width").GetString());
    }

    [Fact]
    public void A_child_is_sent_to_the_teacher()
    {
        var call = Call.Fretloom("finger", "--spots", "4:5 3:4 2:3 1:1", "--arpeggio", "--hand", "child");

        Assert.Contains("tell your teacher or a parent", call.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void The_text_shows_strings_frets_fingers_and_reasons()
    {
        var call = Call.Fretloom("finger", "--spots", "4:9 3:7 2:5", "--arpeggio", "--alternatives", "1");

        Assert.Equal(0, call.Code);
        Assert.Contains("guitar, hand of 189 mm, as an arpeggio", call.Output, StringComparison.Ordinal);
        Assert.Contains(
            "string    4   3   2\nfret      9   7   5\nfinger    4   3   1\n",
            call.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("\n2. cost", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Fewer_fingerings_than_asked_for_are_said_to_be_all()
    {
        var only = Call.Fretloom("finger", "--spots", "4:9 3:7 2:6 1:5", "--together", "--alternatives", "1");
        var enough = Call.Fretloom("finger", "--spots", "4:9 3:7 2:5", "--together", "--alternatives", "1");

        Assert.EndsWith("There is no other fingering.\n", only.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("There is no", enough.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("4:9 x 2:6", 5)]
    [InlineData("4:9 3:7 7:2", 9)]
    [InlineData("4:9 3:25", 5)]
    public void A_wrong_note_is_named_with_its_column(string spots, int column)
    {
        var call = Call.Fretloom("finger", "--spots", spots, "--json");

        Assert.Equal(2, call.Code);
        Assert.Equal(column, call.Json.GetProperty("error").GetProperty("column").GetInt32());
    }

    [Theory]
    [InlineData("--on", "banjolin")]
    [InlineData("--hand", "tiny")]
    [InlineData("--hand", "50 mm")]
    [InlineData("--capo", "40")]
    [InlineData("--alternatives", "-1")]
    [InlineData("--rule", "play nicely")]
    public void A_wrong_option_is_explained(string option, string value)
    {
        var call = Call.Fretloom("finger", "--spots", "4:9 3:7", option, value);

        Assert.Equal(2, call.Code);
        Assert.Empty(call.Output);
        Assert.NotEmpty(call.Error);
    }

    [Theory]
    [InlineData("4/9", "Did you mean 4:9?")]
    [InlineData("4-9", "Did you mean 4:9?")]
    [InlineData("Bb", "Did you mean Bb4?")]
    [InlineData("0:3", "Strings are counted from 1, nearest the floor.")]
    [InlineData("9:4", "The string stands first: did you mean 4:9?")]
    public void What_may_be_meant_by_a_note_is_said(string note, string said)
    {
        var call = Call.Fretloom("finger", "--spots", note);

        Assert.Equal(2, call.Code);
        Assert.EndsWith(said + "\n", call.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--capo", "2.5")]
    [InlineData("--alternatives", "lots")]
    public void A_number_that_is_none_is_named_in_plain_words(string option, string value) =>
        Assert.StartsWith(
            $"{option} takes a whole number, not '{value}'.",
            Call.Fretloom("finger", "--spots", "4:9", option, value).Error,
            StringComparison.Ordinal
        );

    [Fact]
    public void A_hand_may_be_a_number_of_millimetres_without_the_unit()
    {
        string[] asked = ["finger", "--spots", "4:5 3:4 2:3 1:1", "--arpeggio", "--json", "--hand"];

        Assert.Equal(Call.Fretloom([.. asked, "176 mm"]).Output, Call.Fretloom([.. asked, "176"]).Output);
    }

    [Fact]
    public void A_chord_that_no_hand_can_hold_says_so()
    {
        var call = Call.Fretloom("finger", "--together", "--spots", "6:1 5:3 4:5 3:7 2:9", "--json");

        Assert.Equal(2, call.Code);
        Assert.NotEmpty(call.Json.GetProperty("error").GetProperty("message").GetString()!);
    }

    [Fact]
    public void Lines_are_answered_in_order_with_errors_in_their_place()
    {
        var call = Call.FretloomReading(
            """
            {"on": "guitar", "hand": "adult", "together": true, "spots": [{"string": 4, "fret": 2}, {"string": 3, "fret": 2}]}
            {"spots": [{"string": 9, "fret": 2}]}
            not json
            {"on": "ukulele", "hand": 170, "notes": ["D4", "E4"], "rules": ["no open strings"], "alternatives": 1}
            {"tpgether": true, "spots": []}
            []
            null

            """,
            "finger",
            "--lines"
        );

        Assert.Equal(2, call.Code);
        Assert.Equal(
            ["notes", "error", "error", "notes", "error", "error", "error"],
            call.JsonLines.Select(line => line.EnumerateObject().First().Name)
        );
        Assert.Contains("tpgether", call.Output, StringComparison.Ordinal);
    }

    // A fret that is left out or misspelled must not become an open string.
    [Theory]
    [InlineData("""{"string": 4}""", "at 'spots[0]'")]
    [InlineData("""{"fret": 4}""", "at 'spots[0]'")]
    [InlineData("""{"string": 4, "frett": 9}""", "at 'spots[0].frett'")]
    [InlineData("""{"string": 4, "fret": 9, "finger": 1}""", "finger")]
    [InlineData("null", "Note 1 is missing; name its string and fret.")]
    [InlineData("""{"string": 0, "fret": 9}""", "Note 1: there is no string 0, fret 9.")]
    public void A_spot_that_is_not_whole_is_refused(string spot, string message)
    {
        var call = Call.FretloomReading($$"""{"spots": [{{spot}}]}""", "finger", "--lines");

        Assert.Equal(2, call.Code);
        Assert.Contains(
            message,
            call.Json.GetProperty("error").GetProperty("message").GetString(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("""{"notes": ["E4", "‸H4"]}""")]
    [InlineData("""{"notes": ["E4", "‸4:40"]}""")]
    [InlineData("""{"spots": [{"string":4,"fret":2}, ‸{"string":9,"fret":2}]}""")]
    [InlineData("""{"on": "a ‸gitar", "notes": ["E4"]}""")]
    [InlineData("""{"hand": ‸3, "notes": ["E4"]}""")]
    [InlineData("""{"hand": "a hand of ‸300 mm", "notes": ["E4"]}""")]
    [InlineData("""{"notes": ["E4"], "rules": ["start with ‸fingr 2"]}""")]
    [InlineData("""{"notes": ["E4"], "rules": ["\u0073tart with ‸fingr 2"]}""")]
    [InlineData("""{"notes": ["E4", "‸F4"], "rules": ["note 2 open"]}""")]
    [InlineData("""{"notes": ["E4"], "rules": ["‸note 2 open"]}""")]
    [InlineData("""{"notes": ["E4"], "rules": [‸null]}""")]
    [InlineData("""{"notes": ["E4"], "alternatives": ‸51}""")]
    [InlineData("""{"notes": ["E4"], "capo": ‸30}""")]
    [InlineData("""{"notes": ["E4"], "capo": ‸"two"}""")]
    [InlineData("""{‸"ñ": 1, "notes": ["E4"]}""")]
    [InlineData("""{"spots": [{"string":4,‸"frett":2}]}""")]
    [InlineData("""{"spots": [‸{"string":4}]}""")]
    [InlineData("""{"notes": ["ñ", "E4" ‸"F4"]}""")]
    [InlineData("""{"together": true, "arpeggio": ‸true, "notes": ["E4"]}""")]
    [InlineData("""{"notes": ‸[]}""")]
    [InlineData("‸{}")]
    [InlineData("‸[]")]
    [InlineData("n‸ot json")]
    public void What_is_wrong_in_a_line_stands_at_its_column(string marked)
    {
        var line = marked.Replace("‸", "", StringComparison.Ordinal);
        var error = Call.FretloomReading(line, "finger", "--lines").Json.GetProperty("error");

        Assert.Equal(marked.IndexOf('‸', StringComparison.Ordinal) + 1, error.GetProperty("column").GetInt32());
    }

    [Fact]
    public void Long_lines_have_few_alternatives()
    {
        var notes = string.Join(", ", Enumerable.Repeat("\"E4\"", 100_000));
        var call = Call.FretloomReading($$"""{"alternatives": 50, "notes": [{{notes}}]}""", "finger", "--lines");

        Assert.Equal(
            "50 alternatives to 100000 notes are too many: at most 9.",
            call.Json.GetProperty("error").GetProperty("message").GetString()
        );
    }

    [Fact]
    public void Turned_over_the_hand_finds_the_strings_the_other_way_round()
    {
        string[] asked = ["finger", "--together", "--json", "--spots"];

        var usual = Call.Fretloom([.. asked, "5:2 4:2 3:2"]).Json;
        var turned = Call.Fretloom([.. asked, "2:2 3:2 4:2", "--turned-over"]).Json;

        Assert.Equal(Fingers(usual), Fingers(turned));
    }

    private static IEnumerable<int> Fingers(JsonElement json) =>
        json.GetProperty("notes").EnumerateArray().Select(note => note.GetProperty("finger").GetInt32());

    private static string Spots(JsonElement json) =>
        string.Join(
            ' ',
            json.GetProperty("notes")
                .EnumerateArray()
                .Select(note => $"{note.GetProperty("string")}:{note.GetProperty("fret")}")
        );
}
