using NAudio.Wave;

namespace Fretloom.Scores.Sound;

/// <summary>Writes WAV files: 16-bit PCM, stereo.</summary>
public static class WavFile
{
    /// <summary>Writes a sound; the stream stays open.</summary>
    /// <param name="output">Where to; it must be able to seek.</param>
    /// <param name="sound">Left and right in turn, from -1 to 1; what lies beyond is cut off.</param>
    /// <param name="rate">Samples in a second.</param>
    public static void Write(Stream output, ReadOnlySpan<float> sound, int rate)
    {
        ArgumentNullException.ThrowIfNull(output);
        var samples = new short[sound.Length];
        for (var at = 0; at < samples.Length; at++)
        {
            samples[at] = (short)Math.Round(Math.Clamp(sound[at], -1, 1) * short.MaxValue);
        }

        using var writer = new WaveFileWriter(new Unclosed(output), new WaveFormat(rate, 16, 2));
        writer.WriteSamples(samples, 0, samples.Length);
    }

    // The writer closes what it writes to.
    private sealed class Unclosed(Stream inner) : Stream
    {
        public override bool CanRead => inner.CanRead;

        public override bool CanSeek => inner.CanSeek;

        public override bool CanWrite => inner.CanWrite;

        public override long Length => inner.Length;

        public override long Position
        {
            get => inner.Position;
            set => inner.Position = value;
        }

        public override void Flush() => inner.Flush();

        public override int Read(byte[] buffer, int offset, int count) => inner.Read(buffer, offset, count);

        public override long Seek(long offset, SeekOrigin origin) => inner.Seek(offset, origin);

        public override void SetLength(long value) => inner.SetLength(value);

        public override void Write(byte[] buffer, int offset, int count) => inner.Write(buffer, offset, count);
    }
}
