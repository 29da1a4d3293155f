using System.Text;
using Fretloom.Scores.Engraving;

namespace Fretloom.Scores.Tests.Engraving;

public sealed class EngraverScriptTests
{
    [Fact]
    public void What_is_packed_as_text_comes_out_as_bytes()
    {
        var file = Encoding.UTF8.GetBytes("before binaryDecode('a\\'\\\\\\n\\r\u0100\0\u0080\u00FF') after");
        var script = EngraverScript.Of(file);
        Assert.Equal($"before {EngraverScript.Name} after", script.Text);
        Assert.Equal([(byte)'a', (byte)'\'', (byte)'\\', (byte)'\n', (byte)'\r', 0, 0, 0x80, 0xFF], script.Packed);
    }

    [Fact]
    public void A_file_with_nothing_packed_is_left_alone()
    {
        var script = EngraverScript.Of("globalThis.verovio = 1;"u8);
        Assert.Equal("globalThis.verovio = 1;", script.Text);
        Assert.Empty(script.Packed);
    }

    // The first eight bytes of a module: WebAssembly Core Specification 2.0, 5.5.16.
    [Fact]
    public void The_engraver_holds_a_module_of_WebAssembly()
    {
        var script = EngraverScript.Of(File.ReadAllBytes(EngraverEngine.Library));
        Assert.Equal([0, (byte)'a', (byte)'s', (byte)'m', 1, 0, 0, 0], script.Packed[..8]);
        Assert.InRange(script.Text.Length, 50_000, 500_000);
    }
}
