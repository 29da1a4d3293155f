using System.Globalization;
using CsCheck;

namespace Fretloom.Testing;

/// <summary>Tries a law on samples that are the same at every run, so that a change fails for its own faults only.</summary>
/// <remarks>
/// For the laws with the most samples, which now and then find what nobody had thought of. The variable <c>FRETLOOM_SAMPLES</c>,
/// a whole number, chooses other samples.
/// </remarks>
public static class SameSamples
{
    private static readonly ulong Seed = ulong.Parse(
        Environment.GetEnvironmentVariable("FRETLOOM_SAMPLES") ?? "1",
        CultureInfo.InvariantCulture
    );

    /// <summary>Tries a law on samples, on all cores.</summary>
    /// <param name="gen">Makes them.</param>
    /// <param name="law">Throws where it does not hold.</param>
    /// <param name="count">How many samples.</param>
    /// <exception cref="AggregateException">The law does not hold for a sample, which the message names.</exception>
    public static void SampleSame<T>(this Gen<T> gen, Action<T> law, int count)
    {
        ArgumentNullException.ThrowIfNull(gen);
        ArgumentNullException.ThrowIfNull(law);
        Parallel.For(
            0,
            count,
            at =>
            {
                var sample = gen.Generate(new PCG((uint)at, Seed), null, out _);
                try
                {
                    law(sample);
                }
                catch (Exception problem)
                {
                    throw new InvalidOperationException($"Sample {at} of seed {Seed}: {sample}", problem);
                }
            }
        );
    }
}
