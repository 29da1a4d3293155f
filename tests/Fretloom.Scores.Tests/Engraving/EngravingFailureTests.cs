using Fretloom.Scores.Engraving;

namespace Fretloom.Scores.Tests.Engraving;

public sealed class EngravingFailureTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("this is no script")]
    [InlineData("throw new Error('out of order');")]
    [InlineData("")]
    [InlineData("x = binaryDecode('abc")]
    [InlineData("x = binaryDecode('abc\\")]
    [InlineData("x = binaryDecode('abc'")]
    public void An_engraver_that_does_not_start_leaves_plain_text_with_a_warning(string script)
    {
        var library = folder.PathTo("engraver.js");
        File.WriteAllText(library, script);
        using var engraver = new Engraver(new EngravingCache(folder.PathTo("cache")), library);
        engraver.WarmUp();
        var engraved = engraver.Engrave(Played.Of("the scale, in C major, up, in eighths, at 60"), 170);
        Assert.Empty(engraved.Systems);
        Assert.Contains("|", engraved.PlainText, StringComparison.Ordinal);
        Assert.StartsWith("The engraver could not set", engraved.Warning, StringComparison.Ordinal);
        Assert.Contains("it cannot be started", engraved.Warning, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', engraved.Warning!);
    }

    [Fact]
    public void A_failure_is_not_kept()
    {
        var library = folder.PathTo("engraver.js");
        File.WriteAllText(library, "this is no script");
        var cache = folder.PathTo("cache");
        using var engraver = new Engraver(new EngravingCache(cache), library);
        engraver.Engrave(Played.Of("the scale, in C major, up, in eighths, at 60"), 170);
        Assert.False(Directory.Exists(cache) && Directory.EnumerateFiles(cache).Any());
    }
}
