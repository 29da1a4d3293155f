using Fretloom.Claims;

namespace Fretloom.Cli.Json;

/// <summary>What <c>fretloom discover --json</c> prints.</summary>
/// <param name="Scope">Where it was looked, canonical.</param>
/// <param name="Tried">How many statements were tried.</param>
/// <param name="True">How many are true here.</param>
/// <param name="Claims">The landmarks, then the laws, the best of each first.</param>
internal sealed record DiscoverDocument(
    string Scope,
    int Tried,
    int True,
    IReadOnlyList<DiscoveredClaimDocument> Claims
)
{
    public static DiscoverDocument Of(DiscoveryResult result) =>
        new(
            result.Scope.ToString(),
            result.Tried,
            result.True,
            [
                .. result.Landmarks.Select(one => DiscoveredClaimDocument.Of("landmarks", one)),
                .. result.Laws.Select(one => DiscoveredClaimDocument.Of("laws", one)),
            ]
        );
}

/// <summary>One true statement.</summary>
/// <param name="Claim">The sentence.</param>
/// <param name="Cases">In how many cases it was checked.</param>
/// <param name="Score">By which its list is ranked.</param>
/// <param name="List"><c>landmarks</c> or <c>laws</c>.</param>
/// <param name="Kind">The kind of statement.</param>
/// <param name="Elsewhere">The share of all tunings and kinds of key in which it is true.</param>
/// <param name="AlsoSays">What is true in exactly the same cases.</param>
internal sealed record DiscoveredClaimDocument(
    string Claim,
    long Cases,
    double Score,
    string List,
    string Kind,
    double Elsewhere,
    IReadOnlyList<string> AlsoSays
)
{
    /// <summary>The same in fewer words.</summary>
    public string? Summary { get; init; }

    /// <summary>That the condition of a law is also necessary.</summary>
    public string? Converse { get; init; }

    /// <summary>Where it is false, nearest to here.</summary>
    public NearestFailureDocument? NearestFailure { get; init; }

    /// <summary>Show sentences that draw it in one key, on the strings looked at.</summary>
    public IReadOnlyList<string> Pictures { get; init; } = [];

    public static DiscoveredClaimDocument Of(string list, DiscoveredClaim one) =>
        new(
            one.Sentence.ToString(),
            one.Cases,
            one.Score,
            list,
            one.Kind,
            one.Elsewhere,
            [.. one.AlsoSays.Select(other => other.ToString())]
        )
        {
            Summary = one.Summary,
            Converse = one.Converse?.ToString(),
            NearestFailure = one.NearestFailure is { } near
                ? new NearestFailureDocument(near.Kind.ToString(), near.Place, near.Semitones, near.Case.Why)
                : null,
            Pictures = [.. one.Pictures.Select(sentence => sentence.ToString())],
        };
}

/// <summary>A place where a statement is false.</summary>
/// <param name="Key">The kind of key.</param>
/// <param name="Place">The string set or tuning.</param>
/// <param name="Semitones">How far its steps are from those looked at.</param>
/// <param name="Why">A sentence that shows it, in the key with the fewest accidentals.</param>
internal sealed record NearestFailureDocument(string Key, string Place, int Semitones, string Why);
