using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

/// <summary>Source of the check values: tonal, an independent theory library (tests/SOURCES.md).</summary>
public class ScaleOracleTests
{
    // All with up to two accidentals: G sharp major and F flat major among them.
    private static readonly string[] Tonics = [.. TheoryGen.WrittenNames.Select(name => name.ToString())];

    [Fact]
    public async Task Every_scale_on_every_tonic_is_spelled_as_tonal_spells_it()
    {
        Assert.SkipWhen(Oracle.WhyNot is not null, Oracle.WhyNot ?? "");
        (string Tonic, ScaleKind Kind)[] scales =
        [
            .. from tonic in Tonics from kind in ScaleKind.All where kind != ScaleKind.Chromatic select (tonic, kind),
        ];
        var questions = scales.Select(scale =>
            string.Join(", ", scale.Kind.OtherNames.Prepend(scale.Kind.Name).Select(name => $"'{scale.Tonic} {name}'"))
        );

        // tonal knows some kinds by their other names only, and answers an unknown one with an empty list.
        var answers = await Oracle.AskTonalAsync(
            $"[[{string.Join("], [", questions)}]].map(names => names.map(name => tonal.Scale.get(name).notes).find(notes => notes.length > 0))"
        );

        Assert.All(
            scales.Zip(answers.EnumerateArray()),
            pair =>
                Assert.Equal(
                    pair.Second.EnumerateArray().Select(note => note.GetString()),
                    Scale.Parse($"{pair.First.Tonic} {pair.First.Kind.Name}").Notes.Select(note => note.ToString())
                )
        );
    }

    // The harmonic chromatic scale, as primers of theory have it (from memory); tonal lowers the fifth where they raise the fourth.
    [Theory]
    [InlineData("C", "C Db D Eb E F F# G Ab A Bb B")]
    [InlineData("D", "D Eb E F F# G G# A Bb B C C#")]
    [InlineData("Eb", "Eb Fb F Gb G Ab A Bb Cb C Db D")]
    public void The_chromatic_scale_has_the_notes_of_major_and_minor_and_two_more(string tonic, string notes) =>
        Assert.Equal(notes, string.Join(' ', Scale.Parse($"{tonic} chromatic").Notes));
}
