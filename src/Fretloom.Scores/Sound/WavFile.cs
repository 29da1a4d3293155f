using Fretloom.Exercises;
using NAudio.Wave;

namespace Fretloom.Scores.Sound;

/// <summary>Writes WAV files: 16-bit PCM, stereo.</summary>
public static class WavFile
{
    private const int BlockSamples = 1 << 16;
    private const int HeaderBytes = 64;

    /// <summary>An exercise, rendered, as the bytes of a file.</summary>
    /// <param name="exercise">What is played.</param>
    /// <param name="options">How.</param>
    /// <param name="progress">Told the share that is done; null for nobody.</param>
    /// <param name="cancellation">Stops it.</param>
    /// <exception cref="ArgumentException">The exercise is too long; see <see cref="SoundRenderer.WhyTooLong"/>.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static byte[] Of(
        Exercise exercise,
        SoundOptions options,
        IProgress<double>? progress = null,
        CancellationToken cancellation = default
    )
    {
        ArgumentNullException.ThrowIfNull(options);
        return Of(SoundRenderer.Render(exercise, options, progress, cancellation), options.Rate);
    }

    /// <summary>A sound as the bytes of a file; see <see cref="Write"/>.</summary>
    public static byte[] Of(ReadOnlySpan<float> sound, int rate)
    {
        using var bytes = new MemoryStream(HeaderBytes + sizeof(short) * sound.Length);
        Write(bytes, sound, rate);
        return bytes.ToArray();
    }

    /// <summary>Writes a sound; the stream stays open.</summary>
    /// <param name="output">Where to; it must be able to seek.</param>
    /// <param name="sound">Left and right in turn, from -1 to 1; what lies beyond is cut off.</param>
    /// <param name="rate">Samples in a second.</param>
    public static void Write(Stream output, ReadOnlySpan<float> sound, int rate)
    {
        ArgumentNullException.ThrowIfNull(output);
        using var writer = new WaveFileWriter(output, new WaveFormat(rate, 16, 2));
        var block = new short[BlockSamples];
        while (!sound.IsEmpty)
        {
            var count = Math.Min(sound.Length, block.Length);
            for (var at = 0; at < count; at++)
            {
                block[at] = (short)Math.Round(Math.Clamp(sound[at], -1, 1) * short.MaxValue);
            }

            writer.WriteSamples(block, 0, count);
            sound = sound[count..];
        }
    }
}
