using Fretloom.Theory;

namespace Fretloom.Shapes;

/// <summary>About which places of an endless neck a half-turn carries a key pattern onto itself.</summary>
/// <remarks>
/// <para>
/// The pattern of a set of pitch classes K on n strings is every place (string s, fret f) that sounds a member; string s sounds
/// pitch class o(s) when open, so the place belongs to it when o(s) + f is in K. The neck is endless: frets run on both ways,
/// and the pattern repeats every 12.
/// </para>
/// <para>
/// The half-turn about c carries (s, f) to (s', 2c - f), where s' is the string as far from the other side as s from this one. The
/// image sounds o(s') + 2c - f. Writing x for o(s) + f, that is o(s) + o(s') + 2c - x: the half-turn inverts what string s
/// sounds, by T_mI with m = o(s) + o(s') + 2c. So it carries the pattern onto itself exactly when, for every string, T_mI
/// carries K onto itself. As 2c counts modulo 12, centres lie on whole and half frets and come back every 6 frets.
/// </para>
/// <para>
/// Theorem. If no transposition but the octave carries K onto itself, there is a centre exactly when the steps between neighbouring
/// strings, taken modulo 12, read the same both ways and K is its own inversion; and then there is one centre in every 6 frets.
/// Proof. T_aI and T_bI both carry K onto itself only if T_(a-b) does, hence only if a = b. So K has one index of
/// inversion or none, and o(s) + o(s') must be the same modulo 12 for every s. That says o(s+1) - o(s) = o(s') - o((s+1)'): the step
/// from s to s+1 equals the step between their images. Conversely, if all sums equal some q and T_mI carries K onto itself, 2c = m - q is a centre.
/// </para>
/// <para>
/// Worked out for this project; the tests compare every four-string tuning with steps 1 to 11 with a neck that is turned note by note. For a K
/// that repeats within the octave the theorem fails (the whole-tone scale on strings tuned 2, 4, 6 semitones apart); the rule does not.
/// </para>
/// </remarks>
public static class KeySymmetry
{
    /// <summary>Every centre from fret 0 up to, but not including, fret 6; the others lie whole multiples of 6 frets away.</summary>
    /// <param name="set">The pitch classes of the key, or any others.</param>
    /// <param name="openStrings">What the strings sound at fret 0, the string farthest from the floor first.</param>
    /// <returns>Ascending, whole or half frets; empty when there is none.</returns>
    public static ValueList<double> HalfTurnCentres(PitchClassSet set, ValueList<PitchClass> openStrings) =>
        Enumerable
            .Range(0, 12)
            .Where(twice => IsHalfTurn(set, openStrings, twice))
            .Select(twice => twice / 2.0)
            .ToValueList();

    /// <summary>The centres that lie within a run of frets, both ends included.</summary>
    /// <param name="set">As above.</param>
    /// <param name="openStrings">As above.</param>
    /// <param name="firstFret">The lowest fret.</param>
    /// <param name="lastFret">The highest fret.</param>
    /// <returns>Ascending.</returns>
    public static ValueList<double> HalfTurnCentres(
        PitchClassSet set,
        ValueList<PitchClass> openStrings,
        int firstFret,
        int lastFret
    ) =>
        Enumerable
            .Range(2 * firstFret, Math.Max(0, 2 * (lastFret - firstFret) + 1))
            .Where(twice => IsHalfTurn(set, openStrings, twice))
            .Select(twice => twice / 2.0)
            .ToValueList();

    private static bool IsHalfTurn(PitchClassSet set, ValueList<PitchClass> openStrings, int twiceCentre)
    {
        for (var at = 0; 2 * at < openStrings.Count; at++)
        {
            var index = openStrings[at].Number + openStrings[^(at + 1)].Number + twiceCentre;
            if (set.Invert(index) != set)
            {
                return false;
            }
        }

        return true;
    }
}
