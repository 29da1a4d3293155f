using System.Text.Json;
using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

public class PlayTests
{
    // What a teacher would type; the approved tablature was read by one who plays.
    [Theory]
    [InlineData("sevenths", "the seventh chords from I to IV, up and down, in eighths, at 72")]
    [InlineData("three-notes-a-string", "the scale, 3 notes a string, in D major, up and down, with fingers")]
    [InlineData("pentatonic", "A minor pentatonic, in fifth position, up and down, in triplets, with fingers")]
    [InlineData("broken-thirds", "the scale, on a bass, in F major, in broken thirds")]
    [InlineData("groups", "the scale, on a mandolin, in G major, in groups of four, up and down, in sixteenths")]
    [InlineData("strum", "the chords I vi IV V, on a ukulele, in G major, strum down down-up up-down-up")]
    [InlineData("picking", "Am, F, C and G, picked p-i-m-a")]
    [InlineData("blocks", "the triads, as block chords, on strings 3-1, with fingers")]
    [InlineData("through-the-key", "the triads, through the key by fourths, on strings 4-2")]
    [InlineData("every-key", "the chord V7, in every key by fourths, on strings 4-1, up and down")]
    [InlineData("inversions", "C, in every inversion, one note per string, on strings 3-1")]
    [InlineData("thirds", "the thirds, on strings 3-2, up and down")]
    [InlineData("tuning", "the open strings, on a banjo, for tuning")]
    [InlineData("every-note", "every D, from low to high, with fingers")]
    [InlineData("spots", "the spots 5:3 4:2 3:0 2:1 1:0, up and down")]
    [InlineData("echo", "the scale, up and down, two bars, then two bars' rest")]
    [InlineData("banjo-rolls", "G, C and D7, on a banjo, picked p-i-m-p-i-m")]
    [InlineData("bass-line", "the chords I vi ii V7, on a bass, in Bb major, in quarters")]
    [InlineData("compound", "Am, F, C and G, picked p-i-m-a-m-i, in 6/8")]
    [InlineData("capo", "G, C and D, with a capo at 2, as block chords, in 3/4")]
    public void The_tablature_is_one_to_teach_from(string name, string sentence)
    {
        var played = Call.Fretloom("play", sentence);

        Assert.Equal(0, played.Code);
        Approved.Matches($"{sentence}\n\n{played.Output}", "Fretloom.Cli.Tests", "Tablature", $"{name}.txt");
    }

    [Fact]
    public void The_document_has_the_parts_of_the_contract()
    {
        var json = Call.Fretloom("play", "the spots 5:3 4:2, in eighths, at 60", "--json").Json;

        Assert.Equal("play the spots 5:3 4:2", json.GetProperty("sentence").GetString()?[..22]);
        Assert.Equal("60", json.GetProperty("tempo").GetRawText());
        Assert.Equal("1", json.GetProperty("beat").GetRawText());
        Assert.Equal("4/4", json.GetProperty("metre").GetString());
        Assert.Equal("[60]", json.GetProperty("passes").GetRawText());
        Assert.False(json.GetProperty("swing").GetBoolean());
        Assert.Equal(1, json.GetProperty("bars").GetInt32());
        Assert.Equal(JsonValueKind.Array, json.GetProperty("chords").ValueKind);
        var note = json.GetProperty("notes")[0];
        Assert.Equal("0 0.5 5 3 48", string.Join(' ', Fields(note, "at", "length", "string", "fret", "midi")));
        Assert.Equal("C3", note.GetProperty("pitch").GetString());
        Assert.Equal("1", note.GetProperty("degree").GetString());
        Assert.InRange(note.GetProperty("finger").GetInt32(), 1, 4);
    }

    [Fact]
    public void A_tempo_counts_dotted_quarters_in_compound_time_and_is_told_in_quarters() =>
        Assert.Equal(
            "90 1.5",
            string.Join(' ', Fields(Call.Fretloom("play", "the scale, in 6/8, at 60", "--json").Json, "tempo", "beat"))
        );

    [Theory]
    [InlineData(".txt")]
    [InlineData(".mid")]
    [InlineData(".musicxml")]
    [InlineData(".mxl")]
    [InlineData(".wav")]
    public void A_file_is_written_and_named(string ending)
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var path = Path.Combine(folder.FullName, $"scale{ending}");

            var played = Call.Fretloom("play", "the spots 5:3 4:2, at 300", "--out", path);

            Assert.Equal((0, $"{path}\n"), (played.Code, played.Output));
            Assert.True(new FileInfo(path).Length > 50);
            Assert.Equal([path], Directory.GetFileSystemEntries(folder.FullName));
            Assert.Equal(
                0,
                Call.Fretloom("play", "the spots 5:3 4:2", "--out", path, "--json")
                    .Json.GetProperty("notes")[0]
                    .GetProperty("at")
                    .GetInt32()
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Theory]
    [InlineData("the scale", "must end in .musicxml", "--out", "scale.doc")]
    [InlineData("the scale", "--rate goes with --out and a .wav file", "--rate", "48000")]
    [InlineData("the scale", "--rate takes 44100 or 48000, not 22050", "--out", "scale.wav", "--rate", "22050")]
    [InlineData("the scale", "--seed takes a whole number", "--out", "scale.wav", "--seed", "x")]
    [InlineData("the scale", "--mute goes with --out and a .wav file", "--mute", "6")]
    [InlineData("the scale", "--mute takes string numbers such as 6,5", "--out", "scale.wav", "--mute", "0")]
    [InlineData("the scale", "--mute takes string numbers such as 6,5", "--out", "scale.wav", "--mute", "6,6")]
    [InlineData("the scale", "--pan takes places from -1 to 1", "--out", "scale.wav", "--pan", "6:2")]
    [InlineData("the scale", "--pan takes places from -1 to 1", "--out", "scale.wav", "--pan", "6")]
    [InlineData("the scale", "--pan takes places from -1 to 1", "--out", "scale.wav", "--pan", "6:0.5 6:-0.5")]
    [InlineData("the scale", "--title takes a line of words", "--title", "")]
    [InlineData("the scale", "--title takes a line of words", "--title", "a\u0001b")]
    [InlineData("the scale", "There is no string 7: 6 strings are played", "--out", "scale.wav", "--mute", "7")]
    [InlineData(
        "the scale",
        "'/proc/nowhere/scale.txt' cannot be written: there is no folder '/proc/nowhere'. Make it first, or mend its name.",
        "--out",
        "/proc/nowhere/scale.txt"
    )]
    [InlineData("the scale", "'/proc/x.mid' cannot be written: its folder takes no files.", "--out", "/proc/x.mid")]
    [InlineData("the scale", "--caption goes with --out and a .pdf file", "--caption", "Slowly")]
    [InlineData("the scale, at 0", "a tempo is 20 to 300")]
    [InlineData("the scale, at 10000", "a tempo is 20 to 300")]
    [InlineData("the scale, in triplets, in 6/8", "a beat falls into three eighths as it is")]
    [InlineData("C, strum down down-up up-down-up, in 2/4", "does not fit a bar of 2/4")]
    [InlineData("C, strum down-up, in quarters", "a strum pattern goes by eighths")]
    [InlineData("the spots 6:23", "the guitar has 22 frets; there is no spot 6:23")]
    [InlineData("the spots 7:1", "the guitar has 6 strings; there is no spot 7:1")]
    [InlineData("the spots 6:1 1:22 6:1, at 200", "no hand gets from spot 6:1 to 1:22 in time")]
    [InlineData("the seventh chords, on strings 4-1, frets 0-2", "no shape of")]
    [InlineData("the thirds", "thirds are played on two strings")]
    [InlineData("the scale, up and down, in quarters, 20 times, at 20", "at most 15", "--out", "scale.wav")]
    [InlineData("the scale, up and down, in quarters, 99 times, at 20", "at most an hour")]
    public void What_cannot_be_played_is_told_in_a_line(string sentence, string reason, params string[] options)
    {
        var call = Call.Fretloom(["play", sentence, .. options]);

        Assert.Equal(2, call.Code);
        Assert.Contains(reason, call.Error, StringComparison.Ordinal);
        Assert.Empty(call.Output);
    }

    [Fact]
    public void A_folder_is_not_made_for_a_file()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var call = Call.Fretloom(
                "play",
                "the scale",
                "--out",
                Path.Combine(folder.FullName, "lesons", "scale.mid")
            );

            Assert.Equal(2, call.Code);
            Assert.Empty(folder.GetFileSystemInfos());
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void A_title_stands_for_what_is_played() =>
        Assert.StartsWith("Warm-up\n", Call.Fretloom("play", "the scale", "--title", "Warm-up").Output);

    [Fact]
    public void A_click_may_be_asked_for_in_the_sentence()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            byte[] Midi(string name, params string[] words)
            {
                var path = Path.Combine(folder.FullName, name);
                Assert.Equal(0, Call.Fretloom(["play", .. words, "--out", path]).Code);
                return File.ReadAllBytes(path);
            }

            var clicked = Midi("clicked.mid", "the scale, with a click");

            Assert.True(clicked.Length > Midi("plain.mid", "the scale").Length + 30);
            Assert.True(
                Call.Fretloom("play", "the scale, with a click", "--json").Json.GetProperty("click").GetBoolean()
            );
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void An_exercise_of_ten_thousand_bars_is_refused()
    {
        var spots = string.Join(' ', Enumerable.Repeat("5:3 4:2", 230));

        var call = Call.Fretloom(
            "play",
            $"the spots {spots}, in whole notes, up and down, sixteen bars, then sixteen bars' rest"
        );

        Assert.Equal(2, call.Code);
        Assert.Contains("bars, and at most 999 are written", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_seed_gives_the_same_sound()
    {
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var files = new[] { "1", "1", "2" }
                .Select(
                    (seed, at) =>
                    {
                        var path = Path.Combine(folder.FullName, $"{at}.wav");
                        Assert.Equal(
                            0,
                            Call.Fretloom("play", "the spot 5:3", "--out", path, "--seed", seed, "--rate", "48000").Code
                        );
                        return File.ReadAllBytes(path);
                    }
                )
                .ToList();

            Assert.Equal(files[0], files[1]);
            Assert.NotEqual(files[0], files[2]);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    [Fact]
    public void Sentences_are_answered_line_by_line()
    {
        var call = Call.FretloomReading("the scale\nthe skale\n", "play", "--lines");

        Assert.Equal(2, call.Code);
        Assert.True(call.JsonLines[0].TryGetProperty("notes", out _));
        Assert.Equal(5, call.JsonLines[1].GetProperty("error").GetProperty("column").GetInt32());
    }

    private static IEnumerable<string> Fields(JsonElement from, params string[] names) =>
        names.Select(name => from.GetProperty(name).GetRawText());
}
