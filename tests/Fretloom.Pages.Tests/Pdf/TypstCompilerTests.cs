using Fretloom.Pages.Pdf;

namespace Fretloom.Pages.Tests.Pdf;

public class TypstCompilerTests(TypstFixture typst)
{
    private const string Undated = "#set document(date: none)\n";

    [Fact]
    public void A_document_does_not_depend_on_those_before_it() =>
        Gen.OneOf([.. new[] { "♭", "𝄪", "a", " ", "\n", "«", "\"", "#[1];", "$x$", "*b*" }.Select(Gen.Const)])
            .Array[1, 30]
            .Select(pieces => Undated + TypstMarkup.Text(string.Concat(pieces)))
            .Array[12]
            .Sample(
                sources =>
                {
                    var first = sources.Select(source => typst.Compiler.Compile(source, TypstFixture.NoFiles)).ToList();
                    Array.Reverse(sources);
                    var again = sources.Select(source => typst.Compiler.Compile(source, TypstFixture.NoFiles)).ToList();
                    again.Reverse();
                    Assert.Equal(first, again);
                },
                iter: 20
            );

    [Fact]
    public void A_compiler_goes_on_when_another_is_disposed()
    {
        const string source = Undated + "= Fret 5\n#lorem(300)";
        var other = new TypstCompiler();
        other.WarmUp();

        var made = other.Compile(source, TypstFixture.NoFiles);
        other.Dispose();
        other.Dispose();

        Assert.Equal("%PDF-"u8.ToArray(), made[..5]);
        Assert.Equal(made, typst.Compiler.Compile(source, TypstFixture.NoFiles));
    }

    [Fact]
    public void An_error_names_its_file_line_and_column()
    {
        var error = Assert.Throws<TypstException>(() =>
            typst.Compiler.Compile("One\nTwo #nosuchname three", TypstFixture.NoFiles)
        );

        var diagnostic = Assert.Single(error.Diagnostics);
        Assert.Equal(
            ("/main.typ", 2, 6, true),
            (diagnostic.Path, diagnostic.Line, diagnostic.Column, diagnostic.IsError)
        );
        Assert.Contains("nosuchname", diagnostic.Message, StringComparison.Ordinal);
        Assert.Equal($"/main.typ:2:6: error: {diagnostic.Message}", error.Message);
    }

    [Fact]
    public void After_an_error_the_next_document_is_set_as_usual()
    {
        Assert.Throws<TypstException>(() => typst.Compiler.Compile("#(", TypstFixture.NoFiles));

        Assert.Contains(
            "Fret 7",
            TypstFixture.TextOf(typst.Compiler.Compile("Fret 7", TypstFixture.NoFiles)),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("neck.svg")]
    [InlineData("/neck.svg")]
    [InlineData("figures/neck one.svg")]
    public void A_file_is_found_by_its_path_from_the_root(string path)
    {
        var files = new Dictionary<string, byte[]> { [path] = TypstFixture.Picture };

        var pdf = typst.Compiler.Compile($"#image(\"/{path.TrimStart('/')}\", alt: \"A neck\")", files);

        Assert.Contains("B♭", TypstFixture.TextOf(pdf), StringComparison.Ordinal);
    }

    [Fact]
    public void Files_of_one_document_are_unknown_to_the_next()
    {
        const string source = "#image(\"once.svg\", alt: \"A neck\")";
        typst.Compiler.Compile(source, new Dictionary<string, byte[]> { ["once.svg"] = TypstFixture.Picture });

        Assert.Throws<TypstException>(() => typst.Compiler.Compile(source, TypstFixture.NoFiles));
    }

    [Fact]
    public void Threads_may_share_a_compiler()
    {
        static string Source(int fret) => $"{Undated}Fret {fret}";
        var expected = Enumerable
            .Range(0, 8)
            .Select(fret => typst.Compiler.Compile(Source(fret), TypstFixture.NoFiles))
            .ToArray();

        var made = new byte[8][];
        Parallel.For(0, 8, fret => made[fret] = typst.Compiler.Compile(Source(fret), TypstFixture.NoFiles));

        Assert.Equal(expected, made);
    }

    [Fact]
    public void A_disposed_compiler_says_so()
    {
        var compiler = new TypstCompiler();
        compiler.Dispose();

        Assert.Throws<ObjectDisposedException>(() => compiler.Compile("", TypstFixture.NoFiles));
    }
}
