using Fretloom.Claims.Checking;

namespace Fretloom.Claims.Discovery;

/// <summary>Says in few words what stands in one line.</summary>
internal static class Summaries
{
    /// <summary><c>on the full frets string 4 sounds degrees 1, 2 and 5</c>; null when the claim is short enough.</summary>
    public static string? Of(Claim claim) =>
        claim is not Claim.And and ? null
        : and.Parts.All(part => part is Claim.DegreeStands) ? OfDegrees([.. and.Parts.Cast<Claim.DegreeStands>()])
        : Families.Summary(and.Parts);

    private static string OfDegrees(List<Claim.DegreeStands> parts)
    {
        var strings = parts.GroupBy(part => part.String).Select(OfString);
        return $"at the {ClaimWords.Of(parts[0].Noun.Kind)}s {string.Join(", ", strings)}";
    }

    private static string OfString(IGrouping<int, Claim.DegreeStands> parts)
    {
        var degrees = ClaimWords.List(parts.Select(part => ClaimWords.Number(part.Degree)));
        var noun = parts.Count() == 1 ? "degree" : "degrees";
        return $"string {ClaimWords.Number(parts.Key)} sounds {noun} {degrees}";
    }
}
