using System.Buffers.Binary;
using System.Text;
using Fretloom.Scores.Sound;

namespace Fretloom.Scores.Tests.Sound;

/// <summary>The form is that of RIFF WAVE with 16-bit PCM (Multimedia Programming Interface and Data Specifications 1.0, 1991, from memory).</summary>
public class WavFileTests
{
    [Theory]
    [InlineData(44_100)]
    [InlineData(48_000)]
    public void It_holds_every_sample_to_the_nearest_step(int rate) =>
        Gen.Float[-1.2f, 1.2f]
            .Array[0, 2000]
            .Sample(
                sound =>
                {
                    sound = sound[..(sound.Length / 2 * 2)];
                    using var stream = new MemoryStream();

                    WavFile.Write(stream, sound, rate);

                    var bytes = stream.ToArray();
                    Assert.Equal("RIFF", Encoding.ASCII.GetString(bytes, 0, 4));
                    Assert.Equal(bytes.Length - 8, Number(bytes, 4));
                    Assert.Equal("WAVEfmt ", Encoding.ASCII.GetString(bytes, 8, 8));
                    var format = bytes.AsSpan(20);
                    Assert.Equal(1, BinaryPrimitives.ReadInt16LittleEndian(format));
                    Assert.Equal(2, BinaryPrimitives.ReadInt16LittleEndian(format[2..]));
                    Assert.Equal(rate, Number(bytes, 24));
                    Assert.Equal(4 * rate, Number(bytes, 28));
                    Assert.Equal(16, BinaryPrimitives.ReadInt16LittleEndian(format[14..]));
                    var data = 20 + Number(bytes, 16);
                    Assert.Equal("data", Encoding.ASCII.GetString(bytes, data, 4));
                    Assert.Equal(2 * sound.Length, Number(bytes, data + 4));
                    for (var at = 0; at < sound.Length; at++)
                    {
                        var sample = BinaryPrimitives.ReadInt16LittleEndian(bytes.AsSpan(data + 8 + 2 * at));
                        Assert.Equal(Math.Clamp(sound[at], -1, 1) * 32767, sample, tolerance: 0.501);
                    }
                },
                iter: 50
            );

    [Fact]
    public void It_leaves_the_stream_open_and_writes_long_sounds_in_blocks()
    {
        using var stream = new MemoryStream();

        WavFile.Write(stream, new float[300_000], 44_100);

        Assert.True(stream.CanWrite);
        Assert.Equal(0, stream.Length - 600_000 - 44, tolerance: 16);
    }

    private static int Number(byte[] bytes, int at) => BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(at));
}
