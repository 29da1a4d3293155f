using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Cli.Tests;

/// <summary>Verdicts and counts stand in the table of judged claims (references/claims.csv), computed by a separate program.</summary>
public class CheckTests
{
    private const string Holds = "In every major key, on bass, the key pattern is its own half-turn.";
    private const string Fails =
        "In every major key, on guitar strings 4-1, on frets 0 to 12, there are exactly 3 full frets.";

    [Fact]
    public void A_claim_that_holds_gives_its_counts()
    {
        var call = Call.Fretloom("check", Holds, "--json");

        Assert.Equal(0, call.Code);
        Assert.Equal((Holds, "holds"), (Text(call.Json, "claim"), Text(call.Json, "verdict")));
        Assert.Equal([12, 1, 0, 0, 0], Counts(call.Json));
        Assert.Empty(call.Json.GetProperty("failures").EnumerateArray());
        Assert.Equal(JsonValueKind.Null, call.Json.GetProperty("repair").ValueKind);
    }

    [Fact]
    public void A_claim_that_fails_exits_with_1_and_names_its_failures_and_a_repair_that_holds()
    {
        var call = Call.Fretloom("check", Fails, "--json");

        Assert.Equal(1, call.Code);
        Assert.Equal("fails", Text(call.Json, "verdict"));
        Assert.Equal([12, 12, 3, 0, 0], Counts(call.Json));
        var failures = call.Json.GetProperty("failures").EnumerateArray().ToList();
        Assert.Equal(3, failures.Count);
        Assert.Equal(("C major", "guitar"), (Text(failures[0], "key"), Text(failures[0], "instrument")));
        Assert.Equal(
            "In C major, on guitar strings 4-1, on frets 0 to 12, there are 4 full frets (0, 5, 10 and 12), not 3.",
            Text(failures[0], "why")
        );
        Assert.Equal(0, Call.Fretloom("check", Text(call.Json, "repaired")).Code);
    }

    [Theory]
    [InlineData(
        "In C major, on guitar strings 4-1, on frets 0 to 3, every empty fret lies next to a full fret.",
        "nothing to test",
        0
    )]
    [InlineData(
        "In every key, on every listed string set, every third shape of strings 9-8 spans at most 5 frets.",
        "does not apply",
        1
    )]
    public void The_other_two_verdicts_have_their_codes(string claim, string verdict, int code)
    {
        var call = Call.Fretloom("check", claim, "--json");

        Assert.Equal((code, verdict), (call.Code, Text(call.Json, "verdict")));
    }

    [Fact]
    public void A_mere_tuning_is_named_by_its_steps_and_by_what_its_strings_sound()
    {
        var call = Call.Fretloom(
            "check",
            "In every major key, on every 4 string tuning, the key pattern is its own half-turn.",
            "--json"
        );

        var failure = call.Json.GetProperty("failures")[0];
        Assert.Equal("strings in steps 1 1 2", Text(failure, "instrument"));
        Assert.Equal(
            new[] { 44, 42, 41, 40 }.Select(midi => Pitch.FromMidiNumber(midi).ToString()),
            failure.GetProperty("openStrings").EnumerateArray().Select(open => open.GetString())
        );
        Assert.StartsWith("In C major, on strings in steps 1 1 2, ", Text(failure, "why"), StringComparison.Ordinal);
    }

    /// <summary>Exit codes are a contract: 0 done, 1 false or not applicable, 2 a wrong call. By the real program.</summary>
    [Theory]
    [InlineData(Holds, 0)]
    [InlineData(Fails, 1)]
    [InlineData("In C major, on guitar strings 4-1, on frets 0 to 3, every empty fret lies next to a full fret.", 0)]
    [InlineData("In every key, on every listed string set, every third shape of strings 9-8 spans at most 5 frets.", 1)]
    [InlineData("In evry key, there are 3 full frets.", 2)]
    public async Task Exit_codes_of_a_claim_said_in_a_line_and_said_in_a_lesson_are_those_of_the_contract(
        string claim,
        int code
    )
    {
        var path = Path.Combine(Path.GetTempPath(), $"fretloom-{Guid.NewGuid():N}.md");
        await File.WriteAllTextAsync(
            path,
            $"---\ntitle: T\n---\n```claim\n{claim}\n```\n",
            TestContext.Current.CancellationToken
        );
        try
        {
            Assert.Equal(code, await ProgramAsync("", "check", claim));
            Assert.Equal(code, await ProgramAsync("", "check", claim, "--json"));
            Assert.Equal(code, await ProgramAsync($"{Holds}\n{claim}\n{Holds}\n", "check", "--lines"));
            Assert.Equal(Math.Min(code, 1), await ProgramAsync("", "check", path, "--json"));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public async Task Exit_codes_of_wrong_calls_are_2()
    {
        Assert.Equal(2, await ProgramAsync("", "check", "missing.md"));
        Assert.Equal(2, await ProgramAsync("", "check"));
        Assert.Equal(2, await ProgramAsync("", "check", Holds, "--lines"));
        Assert.Equal(2, await ProgramAsync("", "check", Holds, "--jsn"));
        Assert.Equal(2, await ProgramAsync("", "discover", "on a gitar"));
        Assert.Equal(0, await ProgramAsync("", "check", "--lines"));
    }

    [Fact]
    public void A_claim_that_cannot_be_read_is_pointed_at()
    {
        var call = Call.Fretloom("check", "In evry major key, on guitar, there is at least 1 full fret.");

        Assert.Equal(2, call.Code);
        Assert.Empty(call.Output);
        Assert.Contains("\n   ^^^^\n", call.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_claim_that_would_take_too_long_is_refused_before_it_is_begun()
    {
        var many = string.Join(
            " and ",
            Enumerable.Repeat("every seventh shape of strings 4-1 spans at most 5 frets", 20)
        );

        var call = Call.Fretloom(
            "check",
            $"In every mode, on every 8 string tuning, on frets 0 to 12, {many}.",
            "--json"
        );

        Assert.Equal(2, call.Code);
        Assert.Contains("Say fewer strings", Text(call.Json.GetProperty("error"), "message"), StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_are_answered_in_order_each_with_a_document()
    {
        var call = Call.FretloomReading($"{Holds}\nIn every ky.\n{Fails}\n", "check", "--lines");

        Assert.Equal(2, call.Code);
        Assert.Equal(3, call.JsonLines.Count);
        Assert.Equal("holds", Text(call.JsonLines[0], "verdict"));
        Assert.Equal(10, call.JsonLines[1].GetProperty("error").GetProperty("column").GetInt32());
        Assert.Equal("fails", Text(call.JsonLines[2], "verdict"));
    }

    [Fact]
    public void The_text_shows_the_counterexample_on_a_neck_and_teaches_the_repair()
    {
        var call = Call.Fretloom("check", Fails);

        Assert.Contains("\nFails in 3 of 12 keys.\n", call.Output, StringComparison.Ordinal);
        Assert.Contains("It fails in C, D and G major.", call.Output, StringComparison.Ordinal);
        Assert.Contains("^ where it fails", call.Output, StringComparison.Ordinal);
        Assert.Contains("It holds if you write “on frets 0 to 11”.", call.Output, StringComparison.Ordinal);
        Assert.All(call.Output.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void The_text_of_a_true_claim_says_where_else_it_holds_and_where_not()
    {
        var call = Call.Fretloom("check", Holds);

        Assert.Contains(
            "12 keys, 1 case to look at: every key is the same shape moved along.",
            call.Output,
            StringComparison.Ordinal
        );
        Assert.Contains("listed string sets it holds on", call.Output, StringComparison.Ordinal);
        Assert.Contains("Nearest place where it does not hold: ", call.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_claims_of_a_lesson_come_with_their_lines()
    {
        var path = Repository.PathTo("lessons", "three-frets-that-carry-the-key.md");

        var call = Call.Fretloom("check", path, "--json");

        Assert.Equal((0, path), (call.Code, Text(call.Json, "lesson")));
        var claims = call.Json.GetProperty("claims").EnumerateArray().ToList();
        var lines = File.ReadAllLines(path);
        Assert.Equal(["holds", "fails"], claims.Select(claim => Text(claim, "verdict")));
        Assert.Equal(["holds", "fails"], claims.Select(claim => Text(claim, "expected")));
        Assert.All(claims, claim => Assert.Equal("```claim", lines[claim.GetProperty("line").GetInt32() - 1]));
    }

    [Fact]
    public void A_lesson_whose_claim_fails_exits_with_1_and_one_that_is_not_there_with_2()
    {
        var path = Path.Combine(Path.GetTempPath(), $"fretloom-{Guid.NewGuid():N}.md");
        File.WriteAllText(path, $"---\ntitle: T\n---\n```claim\n{Fails}\n```\n");
        try
        {
            var call = Call.Fretloom("check", path);

            Assert.Equal(1, call.Code);
            Assert.StartsWith("line 4: Fails in 3 of 12 keys.", call.Output, StringComparison.Ordinal);
            Assert.Contains(
                $"{path}:5:1: error: Fails in 3 of 12 keys. In C major,",
                call.Error,
                StringComparison.Ordinal
            );
        }
        finally
        {
            File.Delete(path);
        }

        Assert.Equal(2, Call.Fretloom("check", "missing.md").Code);
    }

    [Theory]
    [InlineData("")]
    [InlineData(
        "In every mode, on guitar, on frets 0 to 22, every triad shape of strings 4-2 can be played with one finger a note by a small hand and every seventh shape of strings 4-1 can be played with one finger a note by a small hand.\n"
    )]
    public async Task A_check_can_be_stopped_while_it_waits_and_while_it_works(string work)
    {
        const int Lines = 200;
        Assert.SkipWhen(OperatingSystem.IsWindows(), "sends a Unix signal");
        using var check = StartedProgram.Interruptible(Program, ["check", "--lines"]);
        // The answer to the first line says that the program listens.
        await check.WriteAsync($"{Holds}\n");
        await check.ReadLineAsync();
        await check.WriteAsync(string.Concat(Enumerable.Repeat(work, Lines)));

        await check.SignalAsync("INT");
        var stopped = await check.ExitAsync();

        Assert.Equal(130, stopped.ExitCode);
        Assert.InRange(stopped.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length, 0, Lines - 1);
        Assert.EndsWith("Stopped; nothing is left half written.\n", stopped.Error, StringComparison.Ordinal);
    }

    private static async Task<int> ProgramAsync(string input, params string[] args) =>
        (await Run.ProgramAsync(Program, args, input: input)).ExitCode;

    private static string Program => Path.Combine(AppContext.BaseDirectory, "Fretloom.Cli");

    private static string Text(JsonElement document, string name) => document.GetProperty(name).GetString() ?? "";

    private static IEnumerable<long> Counts(JsonElement document) =>
        new[] { "cases", "distinctCases", "failing", "untested", "notApplicable" }.Select(name =>
            document.GetProperty(name).GetInt64()
        );
}
