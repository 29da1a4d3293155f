using System.Text.Json;
using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

/// <summary>Source of the check values: tonal, an independent theory library (tests/SOURCES.md).</summary>
public class ChordOracleTests
{
    /// <summary>Spellings of chords that tonal reads otherwise, each with the reason.</summary>
    private static readonly Dictionary<string, string> KnownDifferences = new()
    {
        ["11"] = "tonal leaves out the third",
        ["11b9"] = "tonal leaves out the third",
        ["7b13"] = "tonal leaves out the fifth",
        ["9b13"] = "tonal leaves out the fifth",
        ["6b5"] = "tonal reads b5 as #11 beside a perfect fifth",
        ["M6b5"] = "tonal reads b5 as #11 beside a perfect fifth",
        ["7b5b9"] = "tonal reads b5 as #11 beside a perfect fifth",
        ["7b9b5"] = "tonal reads b5 as #11 beside a perfect fifth",
        ["7b5#9"] = "tonal reads b5 as #11 beside a perfect fifth",
        ["7#9b5"] = "tonal reads b5 as #11 beside a perfect fifth",
        ["m7#5"] = "tonal spells #5 as b6",
        ["alt7"] = "tonal leaves out the fifth and takes the flat ninth; here alt is 7#5#9, as in its own 7alt",
    };

    [Fact]
    public async Task Every_chord_that_both_know_has_the_notes_that_tonal_gives_it()
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");
        (ChordQuality Quality, string Spelling)[] spellings =
        [
            .. from quality in ChordQuality.All
            from spelling in quality.OtherSymbols.Prepend(quality.Symbol)
            select (quality, spelling),
        ];
        var known = await AskAsync(
            $"{JsonSerializer.Serialize(spellings.Select(one => one.Spelling))}.map(one => [String(!tonal.ChordType.get(one).empty)])"
        );
        (ChordQuality Quality, string Spelling)[] common =
        [
            .. spellings.Zip(known).Where(pair => pair.Second[0] == "true").Select(pair => pair.First),
        ];
        (NoteName Root, ChordQuality Quality, string Spelling)[] chords =
        [
            .. from root in TheoryGen.WrittenNames from one in common select (root, one.Quality, one.Spelling),
        ];
        var answers = await AskAsync(
            $"{JsonSerializer.Serialize(chords.Select(chord => new[] { chord.Spelling, chord.Root.ToString() }))}.map(([suffix, root]) => tonal.Chord.getChord(suffix, root).notes)"
        );

        var unlike = chords
            .Zip(answers)
            .Where(pair => !Same(new Chord(pair.First.Root, pair.First.Quality), pair.Second))
            .Select(pair => pair.First.Spelling)
            .Distinct();
        Assert.True(common.Select(one => one.Quality).Distinct().Count() >= 60);
        Assert.Equal(
            string.Join(' ', KnownDifferences.Keys.Order(StringComparer.Ordinal)),
            string.Join(' ', unlike.Order(StringComparer.Ordinal))
        );
    }

    [Fact]
    public async Task Every_name_and_every_interval_up_to_a_thirteenth_lead_to_the_note_that_tonal_gives()
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");
        (NoteName From, Interval Interval)[] questions =
        [
            .. from name in TheoryGen.WrittenNames
            from number in Enumerable.Range(1, 13)
            from quality in new[] { "d", "m", "P", "M", "A" }
            where Interval.TryParse($"{quality}{number}", out _)
            select (name, Interval.Parse($"{quality}{number}")),
        ];
        var answers = await AskAsync(
            $"{JsonSerializer.Serialize(questions.Select(one => new[] { one.From.ToString(), one.Interval.ToString() }))}.map(([from, interval]) => [tonal.Note.transpose(from, interval)])"
        );

        Assert.All(
            questions.Zip(answers),
            pair => Assert.Equal(pair.Second[0], pair.First.From.Plus(pair.First.Interval).ToString())
        );
    }

    [Fact]
    public async Task The_interval_between_any_two_names_is_the_one_that_tonal_gives()
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");
        (NoteName From, NoteName To)[] questions =
        [
            .. from one in TheoryGen.WrittenNames from other in TheoryGen.WrittenNames select (one, other),
        ];
        var answers = await AskAsync(
            $"{JsonSerializer.Serialize(questions.Select(one => new[] { $"{one.From}4", $"{one.To}{(one.To.Step < one.From.Step ? 5 : 4)}" }))}.map(([from, to]) => [String(tonal.Interval.semitones(tonal.Interval.distance(from, to))), String(Math.abs(tonal.Interval.num(tonal.Interval.distance(from, to))))])"
        );

        Assert.All(
            questions.Zip(answers).Where(pair => IsKnownToTonal(pair.First.From.IntervalTo(pair.First.To))),
            pair =>
            {
                var ours = pair.First.From.IntervalTo(pair.First.To);
                Assert.Equal($"{ours.Semitones} {ours.Number}", string.Join(' ', pair.Second));
            }
        );
    }

    // Faults of the oracle: its qualities have at most four letters, and a second that sounds downward (E to F double flat) it calls a
    // descending seventh.
    private static bool IsKnownToTonal(Interval interval) =>
        interval.Quality.Length < 5 && (interval.Steps == 0 || interval.Semitones >= 0);

    private static bool Same(Chord chord, string[] notes) =>
        chord
            .Notes.Select(note => note.ToString())
            .Order(StringComparer.Ordinal)
            .SequenceEqual(notes.Order(StringComparer.Ordinal));

    private static async Task<string[][]> AskAsync(string expression) =>
        (await Oracle.AskTonalAsync(expression)).Deserialize<string[][]>()!;
}
