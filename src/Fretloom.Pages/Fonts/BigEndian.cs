using System.Buffers.Binary;

namespace Fretloom.Pages.Fonts;

/// <summary>A growing byte table with big-endian numbers; each call returns the same table so that calls chain.</summary>
internal sealed class BigEndian
{
    private readonly List<byte> bytes = [];

    /// <summary>Bytes so far.</summary>
    public int Length => bytes.Count;

    /// <summary>Appends the low 16 bits of each value.</summary>
    public BigEndian Int16(params ReadOnlySpan<int> values)
    {
        foreach (var value in values)
        {
            bytes.Add((byte)(value >> 8));
            bytes.Add((byte)value);
        }

        return this;
    }

    /// <summary>Appends 32 bits.</summary>
    public BigEndian Int32(int value)
    {
        Span<byte> four = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(four, value);
        return Bytes(four);
    }

    /// <summary>Appends 64 bits.</summary>
    public BigEndian Int64(long value) => Int32((int)(value >> 32)).Int32((int)value);

    /// <summary>Appends the bytes as they are.</summary>
    public BigEndian Bytes(ReadOnlySpan<byte> values)
    {
        bytes.AddRange(values);
        return this;
    }

    /// <summary>A copy of the bytes.</summary>
    public byte[] ToArray() => [.. bytes];

    /// <summary>A copy filled up with zeros to a length divisible by four.</summary>
    public byte[] PaddedToFour() => [.. bytes, .. new byte[(4 - (bytes.Count % 4)) % 4]];
}
