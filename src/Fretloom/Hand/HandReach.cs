namespace Fretloom.Hand;

/// <summary>How far apart two fingers lie along the neck: at rest, in comfort and at most, in millimetres.</summary>
/// <remarks>
/// Assumptions without source, for the adult hand of 189 mm; no source at hand measures the span of a pair of fingers. Other
/// hands are scaled by their length, which is an assumption too: only the lengths of hands come from data
/// (see <see cref="HandSize"/>).
/// </remarks>
public static class HandReach
{
    private static readonly (double Relaxed, double Comfortable, double Most)[,] Adult = Table();

    /// <summary>Distance of two relaxed fingers.</summary>
    /// <param name="hand">The hand.</param>
    /// <param name="lower">The finger nearer the index.</param>
    /// <param name="higher">The finger nearer the little finger.</param>
    /// <exception cref="ArgumentException">The two are not different fingers from index to little, in that order.</exception>
    public static double RestMm(this HandSize hand, Finger lower, Finger higher) =>
        Of(lower, higher).Relaxed * hand.Scale;

    /// <summary>Distance that is reached without effort.</summary>
    /// <inheritdoc cref="RestMm"/>
    public static double ComfortableMm(this HandSize hand, Finger lower, Finger higher) =>
        Of(lower, higher).Comfortable * hand.Scale;

    /// <summary>The greatest distance the model lets two fingers have in a line. A setting, not a medical limit.</summary>
    /// <inheritdoc cref="RestMm"/>
    public static double MostMm(this HandSize hand, Finger lower, Finger higher) => Of(lower, higher).Most * hand.Scale;

    private static (double Relaxed, double Comfortable, double Most) Of(Finger lower, Finger higher) =>
        lower is >= Finger.Index and < Finger.Little && higher > lower && higher <= Finger.Little
            ? Adult[(int)lower, (int)higher]
            : throw new ArgumentException($"{lower} and {higher} are not two fingers in order.", nameof(higher));

    private static (double, double, double)[,] Table()
    {
        var table = new (double, double, double)[5, 5];
        table[1, 2] = (22, 44, 75);
        table[2, 3] = (20, 30, 48);
        table[3, 4] = (21, 32, 52);
        table[1, 3] = (42, 66, 103);
        table[2, 4] = (41, 58, 84);
        table[1, 4] = (63, 95, 132);
        return table;
    }
}
