using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Fretloom.Exercises;
using Fretloom.Scores.Sound;

namespace Fretloom.Pages.Html;

/// <summary>The controls of an exercise and what the script in the page has to know to play it.</summary>
/// <remarks>Without scripts the controls stay hidden, and nothing is lost of the page but the sound.</remarks>
internal static class PlayerHtml
{
    // Where the volume stands at first, of 100: moderate; the student turns it up.
    private const int FirstVolume = 40;

    // Each holds one idea; later ones use earlier ones.
    private static readonly string[] Scripts = EmbeddedText
        .Read("order.txt")
        .Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private static readonly JsonSerializerOptions Json = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    /// <summary>The script, the same for every page: one function with nothing to be seen from outside.</summary>
    public static string Script { get; } =
        $"(() => {{\n\"use strict\";\n{string.Join('\n', Scripts.Select(EmbeddedText.Read))}}})();\n";

    /// <summary>What is played, as JSON: one pass at its first tempo, times in quarter notes from its beginning.</summary>
    public static string DataOf(Exercise exercise)
    {
        var metre = exercise.Metre;
        var once = Performance.Of(exercise with { Passes = [exercise.Passes[0]], CountInBars = 0 });
        return new JsonObject
        {
            ["scale"] = exercise.Instrument.ScaleLengthMm,
            ["strings"] = exercise.Instrument.Strings.Count,
            ["bars"] = exercise.Bars,
            ["bar"] = metre.Bar.Quarters,
            ["beat"] = metre.Beat.Quarters,
            ["countIn"] = exercise.CountInBars,
            ["sound"] = JsonSerializer.SerializeToNode(SoundFigures.For(exercise.Instrument), Json),
            ["tempi"] = new JsonArray([.. exercise.Passes.Select(pass => (JsonNode)pass.BeatsPerMinute)]),
            ["notes"] = new JsonArray([
                .. once.Notes.Select(note =>
                    (JsonNode)
                        new JsonArray(
                            Rounded(note.At),
                            Rounded(note.Length),
                            note.Spot.String,
                            note.Spot.Fret,
                            note.Midi,
                            note.IsAccented ? 1 : 0,
                            note.Note
                        )
                ),
            ]),
        }.ToJsonString(new JsonSerializerOptions());
    }

    /// <summary>Writes the controls.</summary>
    public static void Write(HtmlText html, Exercise exercise, string id)
    {
        html.Open("div", ("class", "player"), ("hidden", "hidden")).Line();
        html.Element("button", "Hear it", ("type", "button"), ("class", "hear")).Line();
        html.Open("label", ("for", id + "-tempo")).Text("Beats a minute ").Close();
        html.Empty(
                "input",
                ("id", id + "-tempo"),
                ("class", "tempo"),
                ("type", "number"),
                ("min", Number(Tempo.Slowest)),
                ("max", Number(Tempo.Fastest)),
                ("value", Number(exercise.Passes[0].BeatsPerMinute)),
                ("inputmode", "numeric")
            )
            .Line();
        html.Open("label", ("for", id + "-who")).Text("Who plays ").Close();
        html.Open("select", ("id", id + "-who"), ("class", "who"));
        html.Element("option", "the page, all of it", ("value", "all"));
        html.Element("option", "you, to the click alone", ("value", "click"));
        html.Element("option", "two bars the page, two bars you", ("value", "echo"));
        html.Close().Line();
        Box(html, id + "-click", "click", "Click along", exercise.HasClick);
        Box(html, id + "-count", "count", "Count-in", exercise.CountInBars > 0);
        if (exercise.Passes.Distinct().Count() > 1)
        {
            Box(html, id + "-faster", "faster", "A step faster each time", true);
        }

        html.Open("label", ("for", id + "-volume")).Text("Volume ").Close();
        html.Empty(
                "input",
                ("id", id + "-volume"),
                ("class", "volume"),
                ("type", "range"),
                ("min", "0"),
                ("max", "100"),
                ("value", Number(FirstVolume))
            )
            .Line();
        html.Element("p", "Start quiet, above all with headphones.", ("class", "quietly")).Line();
        html.Element("p", "", ("class", "now"), ("role", "status")).Line();
        html.Close().Line();
    }

    private static void Box(HtmlText html, string id, string name, string words, bool isTicked)
    {
        html.Open("span", ("class", "choice"));
        html.Empty(
            "input",
            ("id", id),
            ("class", name),
            ("type", "checkbox"),
            ("checked", isTicked ? "checked" : null)
        );
        html.Element("label", words, ("for", id)).Close().Line();
    }

    private static double Rounded(double quarters) => Math.Round(quarters, 5);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
