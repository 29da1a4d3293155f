namespace Fretloom.Pages.Tests;

/// <summary>The program reads its assets from beside itself, so the build must have put them there.</summary>
public class AssetsTests
{
    private static readonly string Assets = Path.Combine(AppContext.BaseDirectory, "assets");

    [Fact]
    public void The_typesetter_lies_beside_the_program()
    {
        var module = File.ReadAllBytes(Path.Combine(Assets, "typst", "typst_ts_web_compiler_bg.wasm"));

        // A WebAssembly module begins with NUL "asm" (WebAssembly Core Specification, 5.5.16 Modules).
        Assert.Equal("\0asm"u8.ToArray(), module[..4]);
        Assert.True(File.Exists(Path.Combine(Assets, "typst", "typst_ts_web_compiler.mjs")));
    }

    [Fact]
    public void Every_font_family_comes_with_its_licence()
    {
        var fonts = Directory.GetFiles(Path.Combine(Assets, "fonts"), "*.ttf").Select(Path.GetFileName).ToArray();

        Assert.NotEmpty(fonts);
        Assert.All(
            fonts,
            font => Assert.True(File.Exists(Path.Combine(Assets, "fonts", $"{font!.Split('_')[0]}_LICENSE.txt")))
        );
    }
}
