using Fretloom.Claims;
using Fretloom.Sentences.Claims;
using Fretloom.Sentences.Reading;

namespace Fretloom.Sentences;

/// <summary>Reads where to look for true statements: <c>on a guitar, on strings 4-1, in every major key</c>.</summary>
/// <remarks>These are the phrases that begin a claim; what is left unsaid is filled in as there.</remarks>
public static class DiscoveryParser
{
    /// <summary>Reads the phrases. A full stop at the end may stand or not.</summary>
    /// <param name="text">The phrases.</param>
    /// <param name="defaults">What they may leave unsaid; null for <see cref="ClaimDefaults.Standard"/>.</param>
    public static SentenceResult<DiscoveryScope> Parse(string text, ClaimDefaults? defaults = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        var unsaid = defaults ?? ClaimDefaults.Standard;
        return ShowParser.TooLong(text) is { } error ? SentenceResult<DiscoveryScope>.Wrong(error)
            : Read(text, unsaid, out var scope) is { } failure
                ? SentenceResult<DiscoveryScope>.Wrong(
                    Repairs.Error(text, failure, again => Read(again, unsaid, out _))
                )
            : SentenceResult<DiscoveryScope>.Read(scope!);
    }

    private static Failure? Read(string text, ClaimDefaults defaults, out DiscoveryScope? read)
    {
        read = null;
        var at = new Cursor(Tokens.Of(text));
        var scope = new Scope(defaults);
        if (ScopePhrases.ReadAlone(at, scope) is { } failure)
        {
            return Signs.Unreadable(text) is { } sign && sign.Start < failure.Start + failure.Length ? sign : failure;
        }

        var whole = new Token(TokenKind.Word, 0, Math.Max(1, at.Previous.End), text);
        if (scope.Window is not null)
        {
            return Failure.At(whole, "true statements are looked for on the endless neck; leave the frets out");
        }

        if (scope.ChosenStrings is not { } strings)
        {
            return Failure.At(
                whole,
                "true statements are looked for on one instrument, such as 'on guitar strings 4-1'"
            );
        }

        if (strings.Count is < DiscoveryScope.FewestStrings or > DiscoveryScope.MostStrings)
        {
            return Failure.At(
                whole,
                $"{DiscoveryScope.FewestStrings} to {DiscoveryScope.MostStrings} strings can be looked at, not {strings.Count}"
            );
        }

        read = new DiscoveryScope(scope.ChosenInstrument!, strings, scope.Keys!);
        return null;
    }
}
