namespace Fretloom.Claims.Checking;

/// <summary>Claims about the key pattern: every place of some strings that sounds a note of the key. It has no end, also where a window does.</summary>
internal static class PatternClaims
{
    public static bool HaveSameForm(Case one, Claim.PatternsHaveSameForm claim) =>
        Somewhere(
            Pattern(one, claim.One),
            moved => Pattern(one, claim.Other).Select(frets => Twelve.Turned(frets, moved))
        );

    public static bool Is(Case one, Claim.PatternIs claim)
    {
        var pattern = Pattern(one, claim.One).Select(frets => Twelve.Turned(frets, claim.MovedFrets)).ToValueList();
        var other = Pattern(one, claim.IsOwn ? claim.One : claim.Other);
        return claim.Motion switch
        {
            PatternMotion.None => pattern == other,
            PatternMotion.HalfTurn => Somewhere(
                pattern,
                sum => other.Reverse().Select(frets => Twelve.Reversed(frets, sum))
            ),
            PatternMotion.Mirror => Somewhere(pattern, sum => other.Select(frets => Twelve.Reversed(frets, sum))),
            PatternMotion.Flip => pattern.SequenceEqual(other.Reverse()),
            _ => throw new ArgumentOutOfRangeException(nameof(claim)),
        };
    }

    private static ValueList<int> Pattern(Case one, OtherStrings? strings) => one.Pattern(one.StringsOf(strings));

    private static bool Somewhere(ValueList<int> pattern, Func<int, IEnumerable<int>> image) =>
        Enumerable.Range(0, 12).Any(place => image(place).SequenceEqual(pattern));
}
