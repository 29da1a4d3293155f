using System.Text;
using Fretloom.Exhibits;
using Fretloom.Pages.Pdf;
using Fretloom.Scores.Engraving;

namespace Fretloom.Pages.Tests.Pdf;

public class TypesetterAndEngraverTests
{
    [Fact]
    public void Both_come_and_go_in_one_process()
    {
        var exercise = PlayQuestion.Answer("play the triads", ShowDefaults.Standard).Value!;
        Parallel.Invoke(
            () => Repeat(Typeset),
            () => Repeat(() => Engrave(exercise)),
            () => Repeat(() => Engrave(exercise))
        );
    }

    [Fact]
    public void Engraved_systems_are_set_in_a_document()
    {
        using var engraver = new Engraver();
        using var typst = new TypstCompiler();
        var exercise = PlayQuestion.Answer("play the triads, in Bb major", ShowDefaults.Standard).Value!;
        var systems = engraver.Engrave(exercise, 170).Systems;
        var files = systems
            .Index()
            .ToDictionary(system => $"{system.Index}.svg", system => Encoding.UTF8.GetBytes(system.Item.Svg));
        var pdf = typst.Compile(
            "#set document(date: none)\n"
                + string.Join("\n\n", files.Keys.Select(file => $"#image(\"{file}\", alt: \"a system\")")),
            files
        );
        using var document = UglyToad.PdfPig.PdfDocument.Open(pdf);
        var words = string.Concat(document.GetPages().Select(page => page.Text));
        Assert.Contains("= 72", words.Replace('\u00A0', ' '), StringComparison.Ordinal);
        Assert.Contains("B♭", words, StringComparison.Ordinal);
    }

    private static void Repeat(Action once)
    {
        for (var time = 0; time < 3; time++)
        {
            once();
        }
    }

    private static void Typeset()
    {
        using var typst = new TypstCompiler();
        Assert.NotEmpty(typst.Compile("#set document(date: none)\nFret", new Dictionary<string, byte[]>()));
    }

    private static void Engrave(Exercises.Exercise exercise)
    {
        using var engraver = new Engraver();
        Assert.NotEmpty(engraver.Engrave(exercise, 170).Systems);
    }
}
