using System.ComponentModel;
using System.Text.Json.Serialization;
using Fretloom.Claims;
using Fretloom.Lessons;
using Fretloom.Sentences;

namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom check --json</c> prints: a claim with what came of it.</summary>
/// <param name="Claim">The claim, canonical.</param>
/// <param name="Verdict"><c>holds</c>, <c>fails</c>, <c>nothing to test</c> or <c>does not apply</c>.</param>
/// <param name="Summary">The verdict with its counts in words.</param>
/// <param name="Cases">Keys times string sets that the claim can be asked of.</param>
/// <param name="DistinctCases">How many of them decide the others.</param>
/// <param name="Failing">Cases in which it is false.</param>
/// <param name="Untested">Cases in which there is nothing to speak about.</param>
/// <param name="NotApplicable">Further cases that it cannot be asked of.</param>
/// <param name="Failures">Failing cases, the smallest first; at most twelve.</param>
/// <param name="Repair">The shortest change that makes it true, as a sentence; null when there is none.</param>
/// <param name="Repaired">The claim so changed; null when there is none.</param>
/// <param name="Notes">What is to be known of chords named by numeral: notes outside the key. Empty when there is nothing.</param>
/// <param name="Elsewhere">Where else it is true; left out when that was not looked into.</param>
/// <param name="Line">The line of its block in a lesson, from 1; left out elsewhere.</param>
/// <param name="Expected">What a lesson says it comes to, <c>holds</c> or <c>fails</c>; left out elsewhere.</param>
public sealed record CheckDocument(
    string Claim,
    string Verdict,
    string Summary,
    long Cases,
    long DistinctCases,
    long Failing,
    long Untested,
    long NotApplicable,
    IReadOnlyList<ClaimFailureDocument> Failures,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] string? Repair,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.Never)] string? Repaired,
    IReadOnlyList<string> Notes,
    ElsewhereDocument? Elsewhere = null,
    int? Line = null,
    string? Expected = null
)
{
    internal static CheckDocument Of(ClaimVerdict said) =>
        new(
            said.Sentence.ToString(),
            Words(said.Verdict),
            said.Summary,
            said.Cases,
            said.DistinctCases,
            said.Failing,
            said.Untested,
            said.NotApplicable,
            [.. said.Failures.Select(ClaimFailureDocument.Of)],
            said.Repair?.Message,
            said.Repair?.Sentence.ToString(),
            said.Notes,
            said.Elsewhere is { } elsewhere ? ElsewhereDocument.Of(elsewhere) : null
        )
        {
            CountingNote = said.CountingNote,
        };

    /// <summary>How frets are counted where the neck counts them otherwise; left out elsewhere.</summary>
    [Description("How frets are counted where the neck counts them otherwise, as with a banjo's short string.")]
    public string? CountingNote { get; init; }

    internal static CheckDocument Of(LessonClaim claim) =>
        Of(claim.Verdict) with
        {
            Line = claim.Line,
            Expected = claim.ExpectsFailure ? "fails" : "holds",
        };

    private static string Words(Verdict verdict) =>
        verdict switch
        {
            Claims.Verdict.Holds => "holds",
            Claims.Verdict.Fails => "fails",
            Claims.Verdict.NothingToTest => "nothing to test",
            _ => "does not apply",
        };
}

/// <summary>A case in which a claim is false.</summary>
/// <param name="Key">The key.</param>
/// <param name="Instrument">The instrument; for a mere tuning, as in every 4 string tuning, <c>strings in steps 5 4 5</c>.</param>
/// <param name="OpenStrings">What its strings sound when open, string 1 first, each counted from its own nut; also those that are not looked at.</param>
/// <param name="Strings">The strings looked at, from the far side.</param>
/// <param name="Why">A sentence that shows it.</param>
/// <param name="Frets">Places along the neck that show it, halves allowed.</param>
/// <param name="Spots">Spots that show it.</param>
public sealed record ClaimFailureDocument(
    string Key,
    [property: Description(
        "The instrument's name; for a mere tuning 'strings in steps 5 4 5', in semitones from the farthest string on."
    )]
        string Instrument,
    [property: Description("What the strings of the instrument sound when open, string 1 first: 'E4'.")]
        IReadOnlyList<string> OpenStrings,
    [property: Description("The strings looked at, the farthest from the floor first.")] IReadOnlyList<int> Strings,
    [property: Description("A sentence that tells why, beginning with key and place.")] string Why,
    IReadOnlyList<double> Frets,
    IReadOnlyList<SpotDocument> Spots
)
{
    internal static ClaimFailureDocument Of(ClaimFailure failure) =>
        new(
            failure.Key.ToString(),
            failure.Instrument.Name,
            [.. failure.Instrument.OpenPitches.Select(pitch => pitch.ToString())],
            failure.Strings.Numbers,
            failure.Why,
            failure.Frets,
            [.. failure.Spots.Select(spot => new SpotDocument(spot.String, spot.Fret))]
        )
        {
            CountingNote = failure.CountingNote,
        };

    /// <summary>How frets are counted where the neck counts them otherwise; left out elsewhere.</summary>
    public string? CountingNote { get; init; }
}

/// <summary>Where else a claim is true.</summary>
/// <param name="Kinds">Kinds in every key of which it holds here.</param>
/// <param name="ListedSets">Listed string sets on which it holds in the same keys.</param>
/// <param name="ListedSetsAsked">On how many listed string sets it can be asked.</param>
/// <param name="NearestFailure">The nearest string set on which it fails; left out when there is none among those tried.</param>
public sealed record ElsewhereDocument(
    IReadOnlyList<string> Kinds,
    IReadOnlyList<string> ListedSets,
    int ListedSetsAsked,
    ClaimFailureDocument? NearestFailure = null
)
{
    internal static ElsewhereDocument Of(ClaimElsewhere elsewhere) =>
        new(
            [.. elsewhere.Kinds.Select(ClaimPrinter.Print)],
            elsewhere.ListedSets,
            elsewhere.ListedSetsAsked,
            elsewhere.NearestFailure is { } nearest ? ClaimFailureDocument.Of(nearest) : null
        );
}

/// <summary>What <c>fretloom check LESSON.md --json</c> prints.</summary>
/// <param name="Lesson">The lesson file as named in the call.</param>
/// <param name="Claims">Its claims in order, each with its line.</param>
/// <param name="Diagnostics">What is wrong in the lesson, by line.</param>
public sealed record LessonCheckDocument(
    string Lesson,
    IReadOnlyList<CheckDocument> Claims,
    IReadOnlyList<DiagnosticDocument> Diagnostics
);
