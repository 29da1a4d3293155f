using System.Text.Json;

namespace Fretloom.Cli.Tests;

public class ShowTests
{
    [Fact]
    public void The_document_has_the_parts_of_the_contract()
    {
        var shown = Call.Fretloom(
            "show",
            "the notes of the key, on a guitar, in D major, on strings 4-1, frets 0-12, as degrees",
            "--json"
        );

        var json = shown.Json;
        Assert.Equal(0, shown.Code);
        Assert.Empty(shown.Error);
        Assert.Equal(
            "show the notes of the key, on a guitar, in D major, on strings 4-1, frets 0-12, as degrees",
            json.GetProperty("sentence").GetString()
        );
        Assert.Equal(
            """{"name":"guitar","openStrings":["E4","B3","G3","D3","A2","E2"],"scaleLengthMm":648,"frets":22}""",
            json.GetProperty("instrument").GetRawText()
        );
        Assert.Equal("D major", json.GetProperty("key").GetString());
        Assert.Equal("[4,3,2,1]", json.GetProperty("strings").GetRawText());
        Assert.Equal("[0,12]", json.GetProperty("fretRange").GetRawText());
        Assert.Equal(
            """{"string":4,"fret":0,"pitch":"D3","midi":50,"degree":"1"}""",
            json.GetProperty("notes")[0].GetRawText()
        );
        Assert.False(json.TryGetProperty("shapes", out _));
    }

    // Common practice, no source; C and G stand so in the plan of the project, D follows by moving the page two frets.
    [Theory]
    [InlineData("C major", "[0,5,10,12]", "[11]")]
    [InlineData("G major", "[0,5,7,12]", "[6]")]
    [InlineData("D major", "[0,2,7,12]", "[1]")]
    public void Full_and_empty_frets_of_guitar_strings_4_to_1(string key, string full, string empty)
    {
        var landmarks = Call.Fretloom(
                "show",
                $"the landmarks, on a guitar, in {key}, on strings 4-1, frets 0-12",
                "--json"
            )
            .Json.GetProperty("landmarks");

        Assert.Equal(full, landmarks.GetProperty("fullFrets").GetRawText());
        Assert.Equal(empty, landmarks.GetProperty("emptyFrets").GetRawText());
        Assert.Equal("[3,2]", landmarks.GetProperty("hinge").GetRawText());
    }

    [Fact]
    public void A_set_without_a_hinge_says_null()
    {
        var landmarks = Call.Fretloom("show", "the landmarks, on a bass", "--json").Json.GetProperty("landmarks");

        Assert.Equal(JsonValueKind.Null, landmarks.GetProperty("hinge").ValueKind);
    }

    // Common practice, no source.
    [Theory]
    [InlineData("Imaj7", "10 9 8 7")]
    [InlineData("viiø7", "9 7 6 5")]
    [InlineData("vi7", "7 5 5 3")]
    [InlineData("V7", "5 4 3 1")]
    [InlineData("IVmaj7", "3 2 1 0")]
    public void Root_position_sevenths_of_C_on_guitar_strings_4_to_1(string roman, string frets)
    {
        var shapes = Call.Fretloom(
                "show",
                "the seventh chords, on a guitar, in C major, on strings 4-1, frets 0-12",
                "--json"
            )
            .Json.GetProperty("shapes")
            .EnumerateArray();

        var shape = Assert.Single(shapes, shape => shape.GetProperty("roman").GetString() == roman);
        var found = shape.GetProperty("spots").EnumerateArray().Select(spot => spot.GetProperty("fret").GetInt32());
        Assert.Equal(frets, string.Join(' ', found));
    }

    [Fact]
    public void Degrees_count_the_keys_own_scale()
    {
        var notes = Call.Fretloom("show", "every C, on a guitar, in A minor, frets 0-12", "--json")
            .Json.GetProperty("notes")
            .EnumerateArray();

        Assert.All(notes, note => Assert.Equal("3", note.GetProperty("degree").GetString()));
    }

    [Fact]
    public void A_part_that_was_asked_for_is_there_when_it_is_empty()
    {
        var json = Call.Fretloom(
            "show",
            "the seventh chords and the symmetries, on a mandolin, in C major, frets 0-2",
            "--json"
        ).Json;

        Assert.Equal("[]", json.GetProperty("shapes").GetRawText());
        Assert.Equal(JsonValueKind.Array, json.GetProperty("symmetries").GetProperty("pairs").ValueKind);
        Assert.False(json.TryGetProperty("notes", out _));
    }

    [Fact]
    public void The_dominant_and_the_half_diminished_seventh_are_half_turns()
    {
        var pairs = Call.Fretloom("show", "the symmetries, on a guitar, in C major, on strings 4-1", "--json")
            .Json.GetProperty("symmetries")
            .GetProperty("pairs")
            .EnumerateArray()
            .Select(pair => pair.GetRawText());

        Assert.Contains("""{"a":"V7","b":"viiø7","motion":"half-turn","strings":"4-1"}""", pairs);
    }

    [Fact]
    public void Lines_are_answered_in_order_and_the_worst_decides()
    {
        var call = Call.FretloomReading(
            "the triads, in C major\nthe triad, in C major\n\nevery D\n",
            "show",
            "--lines"
        );

        Assert.Equal(2, call.Code);
        Assert.Equal(4, call.JsonLines.Count);
        Assert.True(call.JsonLines[0].TryGetProperty("shapes", out _));
        Assert.Equal(5, call.JsonLines[1].GetProperty("error").GetProperty("column").GetInt32());
        Assert.True(call.JsonLines[2].TryGetProperty("error", out _));
        Assert.True(call.JsonLines[3].TryGetProperty("notes", out _));
    }

    [Fact]
    public void An_error_points_at_its_word()
    {
        var call = Call.Fretloom("show", "the notes of the kee, in C major");

        Assert.Equal(2, call.Code);
        Assert.Empty(call.Output);
        var lines = call.Error.Split('\n');
        Assert.Equal("the notes of the kee, in C major", lines[0]);
        Assert.Equal("                 ^^^", lines[1]);
        Assert.Contains("did you mean 'key'?", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Words_need_no_quotation_marks()
    {
        var quoted = Call.Fretloom("show", "the triads, in C major", "--json");
        var bare = Call.Fretloom("show", "the", "triads,", "in", "C", "major", "--json");

        Assert.Equal(quoted, bare);
    }

    [Theory]
    [InlineData("svg", "<svg")]
    [InlineData("png", "\u0089PNG")]
    public void Pictures_are_written_where_asked(string ending, string beginning)
    {
        var folder = Directory.CreateTempSubdirectory("fretloom-show");
        try
        {
            var file = Path.Combine(folder.FullName, $"neck.{ending}");
            var call = Call.Fretloom("show", "the notes of the key, in C major", "--out", file);

            Assert.Equal(0, call.Code);
            Assert.Equal($"{file}\n", call.Output);
            Assert.StartsWith(beginning, File.ReadAllText(file, System.Text.Encoding.Latin1), StringComparison.Ordinal);
            Assert.Single(folder.GetFileSystemInfos());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Pictures_and_the_document_may_be_asked_for_together()
    {
        var folder = Directory.CreateTempSubdirectory("fretloom-show");
        try
        {
            var file = Path.Combine(folder.FullName, "shapes.svg");
            const string Sentence = "the seventh chords, in C major, for a left-handed player";

            var call = Call.Fretloom("show", Sentence, "--out", file, "--json");

            Assert.Equal(Call.Fretloom("show", Sentence, "--json"), call);
            Assert.True(folder.GetFiles("shapes-*.svg").Length > 1);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_chord_that_has_no_place_is_named_beside_the_answer()
    {
        var call = Call.Fretloom("show", "C, F and Bbmaj7, on a ukulele, in fifth position");

        Assert.Equal(0, call.Code);
        Assert.StartsWith("No shape of Bbmaj7 fits", call.Error, StringComparison.Ordinal);
        Assert.Contains("F ", call.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("neck.gif")]
    [InlineData("/proc/none/neck.svg")]
    public void A_picture_that_cannot_be_written_is_said(string file)
    {
        var call = Call.Fretloom("show", "the notes of the key, in C major", "--out", file);

        Assert.Equal(2, call.Code);
        Assert.Contains(file, call.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Beside_a_picture_file_the_cautions_are_said_in_the_terminal()
    {
        var folder = Directory.CreateTempSubdirectory("fretloom");
        try
        {
            var file = Path.Combine(folder.FullName, "wide.svg");

            var call = Call.Fretloom("show", "the chord V7, on strings 4-1, for a small hand", "--out", file);

            Assert.Equal(0, call.Code);
            Assert.Equal(file, call.Output.Trim());
            Assert.Contains("do not force it", call.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("the open strings, on a banjo", "5:5 4:0 3:0 2:0 1:0")]
    [InlineData("the open strings, on a guitar, with a capo at 2", "6:0 5:0 4:0 3:0 2:0 1:0")]
    [InlineData("the spots 3:0, 5:3 and 4:2", "5:3 4:2 3:0")]
    [InlineData("the spot 1:15", "1:15")]
    public void Single_spots_are_shown(string sentence, string spots)
    {
        var notes = Call.Fretloom("show", sentence, "--json").Json.GetProperty("notes").EnumerateArray();

        Assert.Equal(
            spots,
            string.Join(' ', notes.Select(note => $"{note.GetProperty("string")}:{note.GetProperty("fret")}"))
        );
        Assert.Equal(0, Call.Fretloom("show", sentence).Code);
    }

    [Theory]
    [InlineData("the spots 5:3, frets 5-9", "spot 5:3 lies on none of the frets 5-9")]
    [InlineData("the spots 5:3, on strings 4-1", "spot 5:3 lies on none of the strings 4-1")]
    [InlineData("the spots 5:30", "there is no spot 5:30")]
    public void A_spot_that_is_not_looked_at_is_told(string sentence, string reason) =>
        Assert.Contains(reason, Call.Fretloom("show", sentence).Error, StringComparison.Ordinal);

    [Fact]
    public void Chords_of_some_degrees_are_shown_in_their_order() =>
        Assert.Equal(
            ["vi", "viio", "I", "ii"],
            Call.Fretloom("show", "the triads from VI to II, on strings 3-1, one shape each", "--json")
                .Json.GetProperty("shapes")
                .EnumerateArray()
                .Select(shape => shape.GetProperty("roman").GetString())
        );
}
