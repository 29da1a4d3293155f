using Fretloom.Claims.Checking;
using Fretloom.Sentences;
using Fretloom.Sentences.Claims;
using ClaimWords = Fretloom.Claims.Checking.ClaimWords;

namespace Fretloom.Claims.Discovery;

/// <summary>Statements that differ only in the smaller string set they name: told in one line.</summary>
internal static class Families
{
    /// <summary>What the members of a family share; null for a statement that names no smaller set, or several.</summary>
    public static string? Of(Statement statement) =>
        OnlyStrings(statement.Here) is { } strings
            ? statement.Template.Name + ": " + Replaced(statement.Here, strings, "*")
            : null;

    /// <summary>The family in few words: <c>every triad shape of strings 5-3, 4-2 and 3-1 spans at most 4 frets</c>.</summary>
    /// <param name="claims">Its claims; null is given back where they are not of one family.</param>
    public static string? Summary(IReadOnlyList<Claim> claims)
    {
        var strings = claims.Select(OnlyStrings).OfType<OtherStrings>().ToList();
        var isFamily =
            strings.Count == claims.Count
            && claims.Zip(strings, (claim, one) => Replaced(claim, one, "*")).Distinct().Count() == 1;
        return isFamily
            ? Replaced(claims[0], strings[0], ClaimWords.List(strings.Select(one => one.Strings.ToString()!)))
            : null;
    }

    private static OtherStrings? OnlyStrings(Claim claim) =>
        claim is not Claim.And && Parts.Of(claim).OfType<OtherStrings>().Distinct().ToList() is [var only]
            ? only
            : null;

    private static string Replaced(Claim claim, OtherStrings strings, string by) =>
        ClaimPrinter.Print(claim).Replace(StringWords.Of(strings), $" of strings {by}", StringComparison.Ordinal);
}
