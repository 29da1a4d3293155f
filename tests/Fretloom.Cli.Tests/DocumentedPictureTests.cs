using System.Text.RegularExpressions;
using Fretloom.Testing;

namespace Fretloom.Cli.Tests;

/// <summary>Pictures in the documents are what the command beside them makes today.</summary>
public partial class DocumentedPictureTests
{
    [Fact]
    public void The_picture_of_the_half_turn_is_made_by_the_command_in_the_text()
    {
        var text = File.ReadAllText(Repository.PathTo("docs", "claims.md"));
        var command = Assert.Single(Command().Matches(text));
        var folder = Directory.CreateTempSubdirectory();
        try
        {
            var path = Path.Combine(folder.FullName, "half-turn.svg");
            Assert.Equal(0, Call.Fretloom("show", command.Groups["sentence"].Value, "--out", path).Code);
            Assert.Contains($"](pictures/{command.Groups["file"].Value})", text, StringComparison.Ordinal);
            Approved.Matches(File.ReadAllText(path), "..", "docs", "pictures", command.Groups["file"].Value);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // What the text says of the picture: fret f of a string lands on fret 14 - f of the string that stands as far from the other edge.
    [Fact]
    public void Every_degree_in_the_picture_of_the_half_turn_lands_where_the_text_says()
    {
        var call = Call.Fretloom(
            "show",
            "the D major scale and the symmetries, on a guitar, on strings 4-1, frets 2-12",
            "--json"
        );
        var degrees = call
            .Json.GetProperty("notes")
            .EnumerateArray()
            .ToDictionary(
                note => (String: note.GetProperty("string").GetInt32(), Fret: note.GetProperty("fret").GetInt32()),
                note =>
                    int.Parse(
                        note.GetProperty("degree").GetString()!,
                        System.Globalization.CultureInfo.InvariantCulture
                    )
            );
        var images = new Dictionary<int, int>
        {
            [1] = 3,
            [2] = 2,
            [3] = 1,
            [4] = 7,
            [5] = 6,
            [6] = 5,
            [7] = 4,
        };

        Assert.Equal(3, degrees[(4, 4)]);
        Assert.All(
            degrees,
            note => Assert.Equal(images[note.Value], degrees[(5 - note.Key.String, 14 - note.Key.Fret)])
        );
        Assert.Equal(
            7,
            call.Json.GetProperty("symmetries").GetProperty("halfTurnCentres").EnumerateArray().Single().GetDouble()
        );
    }

    [GeneratedRegex("fretloom show \"(?<sentence>[^\"]+)\" --out docs/pictures/(?<file>[a-z-]+\\.svg)")]
    private static partial Regex Command();
}
