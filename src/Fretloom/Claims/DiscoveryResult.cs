using Fretloom.Sentences;
using Fretloom.Theory;

namespace Fretloom.Claims;

/// <summary>True statements that nobody asked for.</summary>
/// <param name="Scope">Where they were looked for.</param>
/// <param name="Tried">How many statements were tried.</param>
/// <param name="True">How many of them are true here in all the keys.</param>
/// <param name="Tunings">On how many tunings those that are true somewhere here were tried.</param>
/// <param name="Laws">What is true of every tuning that meets a condition, the best first.</param>
/// <param name="Landmarks">What is true here and rare elsewhere, the best first.</param>
/// <param name="AtRandom">True statements in no order, to judge the landmarks by; without pictures and failures.</param>
public sealed record DiscoveryResult(
    DiscoveryScope Scope,
    int Tried,
    int True,
    int Tunings,
    ValueList<DiscoveredClaim> Laws,
    ValueList<DiscoveredClaim> Landmarks,
    ValueList<DiscoveredClaim> AtRandom
)
{
    /// <summary>Why there is no law, in sentences; null when there is one.</summary>
    public string? WhyNoLaws { get; init; }
}

/// <summary>A true statement. It was read back and checked in every case.</summary>
/// <param name="Sentence">The statement.</param>
/// <param name="Summary">The same in fewer words, where a line says several things; null otherwise.</param>
/// <param name="Cases">In how many cases it was checked.</param>
/// <param name="Score">By which it is ranked; higher is better. Only scores of one list compare.</param>
/// <param name="Kind">The kind of statement: <c>how many frets</c>.</param>
/// <param name="Elsewhere">The share, from 0 to 1, of all tunings and kinds of key in which it is true, of those where it says anything.</param>
/// <param name="AlsoSays">Other statements that are true in exactly the same cases, here and elsewhere.</param>
/// <param name="NearestFailure">The nearest place where it is false; null when none was found.</param>
/// <param name="Converse">Of a law: that the condition is also necessary, checked too; null when it is not.</param>
/// <param name="Pictures">
/// What to show so that it can be seen, on the strings looked at, in the key with the fewest accidentals in which it is true; necks before shapes. None when
/// nothing that it speaks of lies on a neck.
/// </param>
public sealed record DiscoveredClaim(
    ClaimSentence Sentence,
    string? Summary,
    long Cases,
    double Score,
    string Kind,
    double Elsewhere,
    ValueList<ClaimSentence> AlsoSays,
    NearestFailure? NearestFailure,
    ClaimSentence? Converse,
    ValueList<ShowSentence> Pictures
);

/// <summary>A place where a statement is false.</summary>
/// <param name="Kind">In keys of this kind.</param>
/// <param name="Place">The target, a listed string set, or the target retuned: <c>guitar tuned E2 A2 C#3 G3 B3 E4 strings 4-1</c>.</param>
/// <param name="Semitones">By how many semitones, all told, the target's strings have to be tuned otherwise to lie as these do; all of them moved alike count nothing.</param>
/// <param name="Case">What fails there, in the key with the fewest accidentals.</param>
/// <param name="Pictures">What to show so that it can be seen where no single fret or spot of the case is to blame, as with a tuning.</param>
public sealed record NearestFailure(
    ScaleKind Kind,
    string Place,
    int Semitones,
    ClaimFailure Case,
    ValueList<ShowSentence> Pictures
);
