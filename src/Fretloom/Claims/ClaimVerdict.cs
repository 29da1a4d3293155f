using Fretloom.Claims.Checking;
using Fretloom.Neck;
using Fretloom.Theory;

namespace Fretloom.Claims;

/// <summary>What a claim comes to.</summary>
public enum Verdict
{
    /// <summary>At least one case was tested and none fails.</summary>
    Holds,

    /// <summary>At least one case fails.</summary>
    Fails,

    /// <summary>No case has anything to speak about.</summary>
    NothingToTest,

    /// <summary>There is no case that the claim can be asked of.</summary>
    DoesNotApply,
}

/// <summary>What came of checking a sentence. A case is one key on one string set.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="Verdict">What it comes to.</param>
/// <param name="Cases">Cases that the claim can be asked of.</param>
/// <param name="DistinctCases">How many of them are left when keys that decide each other count once.</param>
/// <param name="Failing">Cases in which it is false.</param>
/// <param name="Untested">Cases in which there is nothing to speak about.</param>
/// <param name="NotApplicable">Further cases that it cannot be asked of: strings that are not there, shapes of another size.</param>
/// <param name="ByKey">The same counts for each key, in the order of the sentence's keys.</param>
/// <param name="Failures">Failing cases, the smallest first: fewest accidentals in the key, then lowest fret; a bounded number of them.</param>
/// <param name="Repair">The shortest change found that makes it true; null when it is true or none was found.</param>
/// <param name="Elsewhere">In which other keys and on which other string sets it is true; null when not asked for or nothing was tested.</param>
public sealed record ClaimVerdict(
    ClaimSentence Sentence,
    Verdict Verdict,
    long Cases,
    long DistinctCases,
    long Failing,
    long Untested,
    long NotApplicable,
    ValueList<ClaimKeyResult> ByKey,
    ValueList<ClaimFailure> Failures,
    ClaimRepair? Repair,
    ClaimElsewhere? Elsewhere
)
{
    /// <summary>The verdict with its counts, without a full stop: <c>Holds in 12 of 12 keys</c>.</summary>
    public string Summary => VerdictWords.Of(this);

    /// <summary>How few cases decide the others, without a full stop: <c>12 keys, 1 case to look at: ...</c>; null when none decides another.</summary>
    public string? DistinctWords => VerdictWords.Distinct(this);

    /// <summary>
    /// What is to be known of chords named by numeral, a sentence or two each: <c>V7 is E7 in A natural minor; G# is not in the key.</c>
    /// Empty when they are made of notes of the key.
    /// </summary>
    public ValueList<string> Notes => NumeralNotes.Of(Sentence);

    /// <summary>
    /// How frets are counted where the neck counts them otherwise, in sentences: <c>String 5 begins at fret 5 of the neck and is counted from
    /// there: ...</c>; null where that goes without saying.
    /// </summary>
    public string? CountingNote =>
        OwnNuts.WordsFor(Sentence, Failures is [{ CountingNote: { } note }, ..] ? note : null);
}

/// <summary>What came of a claim in one key, on all string sets that it can be asked of.</summary>
/// <param name="Key">The key.</param>
/// <param name="Cases">String sets.</param>
/// <param name="Failing">Those on which it is false.</param>
/// <param name="Untested">Those on which there is nothing to speak about.</param>
public sealed record ClaimKeyResult(Key Key, long Cases, long Failing, long Untested)
{
    /// <summary>What the claim comes to in this key.</summary>
    public Verdict Verdict =>
        Cases == 0 ? Verdict.DoesNotApply
        : Failing > 0 ? Verdict.Fails
        : Untested == Cases ? Verdict.NothingToTest
        : Verdict.Holds;
}

/// <summary>A case in which a claim is false.</summary>
/// <param name="Key">The key.</param>
/// <param name="Place">The string set as it is called: <c>guitar strings 4-1</c>, <c>steps 5 4 5</c>.</param>
/// <param name="Instrument">What to draw it on; for a mere tuning a neck of a guitar's measures.</param>
/// <param name="Strings">The strings looked at.</param>
/// <param name="Why">A sentence that shows it, with a full stop.</param>
/// <param name="Frets">
/// Places along the neck that show it, ascending, halves allowed; 0 to 11 on the endless neck. A short string is counted from its own nut.
/// </param>
/// <param name="Spots">Spots that show it, by the neck's own frets.</param>
public sealed record ClaimFailure(
    Key Key,
    string Place,
    Instrument Instrument,
    StringSet Strings,
    string Why,
    ValueList<double> Frets,
    ValueList<Spot> Spots
)
{
    /// <summary>How frets are counted where the neck counts them otherwise, as in <see cref="ClaimVerdict.CountingNote"/>; null elsewhere.</summary>
    public string? CountingNote { get; init; }
}

/// <summary>A change that makes a sentence true.</summary>
/// <param name="Sentence">The changed sentence; it was checked and holds.</param>
/// <param name="Words">What to write, a part of a sentence: <c>in every major key</c>, <c>exactly 3</c>; two parts with <c> ... </c> between them.</param>
/// <param name="Message">A sentence: <c>It fails in harmonic minor only; it holds if you put "if the key is not harmonic minor, then" before the claim, or write "in every major key".</c></param>
public sealed record ClaimRepair(ClaimSentence Sentence, string Words, string Message);

/// <summary>Where a claim is true beside where it was asked.</summary>
/// <param name="Kinds">Of major, natural, harmonic and melodic minor: the kinds in every key of which it holds on the same string sets.</param>
/// <param name="ListedSets">Names of the listed string sets on which it holds in the same keys.</param>
/// <param name="ListedSetsAsked">On how many listed string sets it can be asked.</param>
/// <param name="NearestFailure">The nearest string set on which it fails in the same keys; null when it fails on none that was tried.</param>
public sealed record ClaimElsewhere(
    ValueList<ScaleKind> Kinds,
    ValueList<string> ListedSets,
    int ListedSetsAsked,
    ClaimFailure? NearestFailure
);
