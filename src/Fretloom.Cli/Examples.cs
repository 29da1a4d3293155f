using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Fretloom.Cli;

/// <summary>Help that ends with examples to copy.</summary>
internal static class Examples
{
    private static readonly Dictionary<string, string[]> ByCommand = new()
    {
        ["fretloom"] =
        [
            "fretloom show \"the notes of the key, in D major, on strings 4-1\"",
            "fretloom build lessons/the-cloth-of-a-key.md --out out",
            "fretloom demo",
        ],
        ["show"] =
        [
            "fretloom show \"the notes of the key, on a guitar, in D major, on strings 4-1, frets 0-12\"",
            "fretloom show \"the seventh chords, on a low-G ukulele, in F major\" --out sevenths.svg",
            "fretloom show \"C, F and G, on a ukulele, in first position\" --json",
            "fretloom show --lines < sentences.txt",
        ],
        ["play"] =
        [
            "fretloom play \"the seventh chords from I to IV, up and down, in eighths, at 72\"",
            "fretloom play \"the scale, 3 notes a string, in D major, in triplets\" --fingers",
            "fretloom play \"C, F and G7, on a ukulele, strum down down-up up-down-up\" --out strumming.wav --click",
            "fretloom play \"the triads, in every key by fourths, on strings 3-1, frets 0-12\" --out triads.musicxml",
            "fretloom play --lines < sentences.txt",
        ],
        ["finger"] =
        [
            "fretloom finger --spots \"4:9 3:7 2:6 1:5\" --together --hand small --alternatives 2",
            "fretloom finger --spots \"5:3 4:2 3:0 2:1 1:0\" --together --on guitar --json",
            "fretloom finger --notes \"C4 D4 E4 F4 G4\" --on ukulele --rule \"no open strings\"",
            "fretloom finger --lines < requests.jsonl",
        ],
        ["check"] =
        [
            "fretloom check \"In every major key, on guitar strings 4-1, there are exactly 3 full frets.\"",
            "fretloom check \"In every key, on bass, the key pattern is its own half-turn.\" --json",
            "fretloom check lessons/three-frets-that-carry-the-key.md",
            "fretloom check --lines < claims.txt",
        ],
        ["discover"] =
        [
            "fretloom discover \"on a guitar, on strings 4-1, in every major key\"",
            "fretloom discover \"on a ukulele, in every key\" --count 10 --out report.html",
            "fretloom discover \"on a bass, in every minor key\" --json",
        ],
        ["build"] =
        [
            "fretloom build lessons/straight-across-is-four.md",
            "fretloom build lesson.md --out handouts --format pdf --paper letter",
            "fretloom build lesson.md --key all --order fourths",
        ],
        ["demo"] = ["fretloom demo", "fretloom demo --out handouts"],
        ["print"] =
        [
            "fretloom print \"the seventh chords, in Bb major, on strings 4-1\"",
            "fretloom print \"play the scale, up and down, in D major\" --out scale.pdf --paper letter",
        ],
        ["studio"] = ["fretloom studio --open", "fretloom studio --lessons lessons --port 8080"],
    };

    /// <summary>Gives a command, and all below it, <c>--help</c> with the examples of whichever is asked for.</summary>
    public static void AddTo(Command root)
    {
        var help = new HelpOption();
        help.Action = new HelpWithExamples((SynchronousCommandLineAction)help.Action!);
        root.Options.Add(help);
    }

    /// <summary>The examples of a command, as they are printed and tested.</summary>
    public static IReadOnlyList<string> Of(string command) => ByCommand.GetValueOrDefault(command, []);

    private sealed class HelpWithExamples(SynchronousCommandLineAction help) : SynchronousCommandLineAction
    {
        public override bool ClearsParseErrors => true;

        public override int Invoke(ParseResult parseResult)
        {
            var code = help.Invoke(parseResult);
            var output = parseResult.InvocationConfiguration.Output;
            output.WriteLine("Examples:");
            foreach (var example in Of(parseResult.CommandResult.Command.Name))
            {
                output.WriteLine($"  {example}");
            }

            return code;
        }
    }
}
