using System.Globalization;
using Fretloom.Theory;

namespace Fretloom.Claims.Checking;

/// <summary>A verdict with its counts, in words.</summary>
internal static class VerdictWords
{
    /// <summary><c>Holds in 12 of 12 keys</c>, <c>Fails in 84 of 384 cases: 48 keys on 8 string sets</c>.</summary>
    public static string Of(ClaimVerdict said)
    {
        var spent = said.Verdict == Verdict.Fails ? said.Failing : said.Cases - said.Untested;
        var rest = said.Untested > 0 ? Text($"; nothing to test in {said.Untested:N0}") : "";
        return said.Verdict switch
        {
            Verdict.DoesNotApply => "Does not apply: there is no string set that it can be asked of",
            Verdict.NothingToTest => $"Nothing to test in {Where(said, said.Cases)}",
            Verdict.Holds => $"Holds in {Where(said, spent)}{rest}",
            _ => $"Fails in {Where(said, spent)}{rest}",
        };
    }

    /// <summary><c>12 keys, 1 case to look at: every key is the same shape moved along</c>; null when every case is one of its own.</summary>
    public static string? Distinct(ClaimVerdict said)
    {
        if (said.DistinctCases == said.Cases)
        {
            return null;
        }

        var cases = IsOnePlace(said) ? "keys" : "cases";
        var looked =
            IsOnePlace(said) && said.DistinctCases > 1 ? "cases "
            : said.DistinctCases == 1 ? "case "
            : "";
        var keys =
            said.ByKey.Select(result => result.Key.Kind).Distinct().Count() == 1 ? "every key" : "every key of a kind";
        return Text(
            $"{said.Cases:N0} {cases}, {said.DistinctCases:N0} {looked}to look at: {keys} is the same shape moved along"
        );
    }

    private static string Where(ClaimVerdict said, long spent)
    {
        var keys = said.ByKey.Count;
        if (IsOnePlace(said))
        {
            return keys == 1 ? Named(said.ByKey[0].Key) : Text($"{spent} of {keys} keys");
        }

        var places = said.Cases / keys;
        return Text(
            $"{spent:N0} of {said.Cases:N0} cases: {keys} {(keys == 1 ? "key" : "keys")} on {places:N0} string {(places == 1 ? "set" : "sets")}"
        );
    }

    // Which minor is said.
    private static string Named(Key key) => $"{key.Tonic} {ClaimWords.Of(key.Kind)}";

    private static bool IsOnePlace(ClaimVerdict said) => said.Sentence.Places is PlaceScope.On;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
