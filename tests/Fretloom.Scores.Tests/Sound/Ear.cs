using System.Collections.Concurrent;
using System.Numerics;

namespace Fretloom.Scores.Tests.Sound;

/// <summary>Measures the pitch of a sound, knowing nothing of what it should be.</summary>
internal static class Ear
{
    // The roots of unity for each length of a spectrum.
    private static readonly ConcurrentDictionary<int, Complex[]> Turns = [];

    /// <summary>The pitch in hertz: the shortest time after which the sound is most like itself.</summary>
    /// <param name="sound">One channel.</param>
    /// <param name="rate">Samples in a second.</param>
    /// <remarks>
    /// Autocorrelation by way of the power spectrum (Wiener and Khinchin), divided by the energy that overlaps; the first high peak is one
    /// period, and the peak some dozens of periods on makes it finer.
    /// </remarks>
    public static double Hz(ReadOnlySpan<double> sound, int rate)
    {
        var likeness = Likeness(sound);
        var longest = sound.Length / 2;
        var highest = 0.0;
        for (var lag = rate / 5000; lag < Math.Min(longest, rate / 25); lag++)
        {
            highest = IsPeak(likeness, lag) ? Math.Max(highest, likeness[lag]) : highest;
        }

        var first = rate / 5000;
        while (!(IsPeak(likeness, first) && likeness[first] > 0.85 * highest))
        {
            first++;
        }

        // Each step trusts the period to a quarter of itself.
        var period = Peak(likeness, first);
        for (var times = 2; (times + 0.5) * period + 2 < longest && times <= 64; times *= 2)
        {
            var near = (int)Math.Round(times * period);
            var reach = (int)(period / 4) + 1;
            var best = near;
            for (var lag = Math.Max(1, near - reach); lag <= Math.Min(longest - 2, near + reach); lag++)
            {
                best = likeness[lag] > likeness[best] ? lag : best;
            }

            period = Peak(likeness, best) / times;
        }

        return rate / period;
    }

    /// <summary>How far a pitch is from another, in cents.</summary>
    public static double Cents(double hz, double fromHz) => 1200 * Math.Log2(hz / fromHz);

    /// <summary>The spectrum of a sound whose length is a power of two.</summary>
    public static void Transform(Complex[] values)
    {
        for (int at = 1, mirrored = 0; at < values.Length; at++)
        {
            var bit = values.Length >> 1;
            for (; (mirrored & bit) != 0; bit >>= 1)
            {
                mirrored ^= bit;
            }

            mirrored ^= bit;
            if (at < mirrored)
            {
                (values[at], values[mirrored]) = (values[mirrored], values[at]);
            }
        }

        var turns = Turns.GetOrAdd(values.Length, TurnsOf);
        for (int half = 1, stride = values.Length / 2; half < values.Length; half <<= 1, stride >>= 1)
        {
            for (var begin = 0; begin < values.Length; begin += 2 * half)
            {
                for (var at = 0; at < half; at++)
                {
                    var (one, other) = (values[begin + at], values[begin + at + half] * turns[at * stride]);
                    (values[begin + at], values[begin + at + half]) = (one + other, one - other);
                }
            }
        }
    }

    private static Complex[] TurnsOf(int size) =>
        [.. Enumerable.Range(0, size / 2).Select(at => Complex.FromPolarCoordinates(1, -2 * Math.PI * at / size))];

    private static double[] Likeness(ReadOnlySpan<double> sound)
    {
        // Half the sound is as far as it is moved: so much silence keeps its end off its beginning.
        var size = (int)BitOperations.RoundUpToPowerOf2((uint)(sound.Length + sound.Length / 2 + 1));
        var values = new Complex[size];
        for (var at = 0; at < sound.Length; at++)
        {
            values[at] = sound[at];
        }

        Transform(values);
        for (var at = 0; at < size; at++)
        {
            values[at] = values[at].Real * values[at].Real + values[at].Imaginary * values[at].Imaginary;
        }

        Transform(values);
        var energies = new double[sound.Length + 1];
        for (var at = 0; at < sound.Length; at++)
        {
            energies[at + 1] = energies[at] + sound[at] * sound[at];
        }

        var likeness = new double[sound.Length / 2 + 1];
        for (var lag = 0; lag < likeness.Length; lag++)
        {
            var early = energies[sound.Length - lag];
            var late = energies[^1] - energies[lag];
            likeness[lag] = values[lag].Real / size / Math.Sqrt(early * late + 1e-30);
        }

        return likeness;
    }

    private static bool IsPeak(double[] values, int at) => values[at] > values[at - 1] && values[at] >= values[at + 1];

    // The top of the parabola through three points.
    private static double Peak(double[] values, int at)
    {
        var (left, middle, right) = (values[at - 1], values[at], values[at + 1]);
        var bend = left - 2 * middle + right;
        return bend == 0 ? at : at + (left - right) / (2 * bend);
    }
}
