using Fretloom.Testing;
using Fretloom.Theory;

namespace Fretloom.Tests.Theory;

public class NoteNameTests
{
    [Fact]
    public void Every_name_reads_back() =>
        TheoryGen.Name.Sample(name => Assert.Equal(name, NoteName.Parse(name.ToString())));

    [Fact]
    public void Every_name_has_its_place_on_the_line_of_fifths() =>
        TheoryGen.Name.Sample(name => Assert.Equal(name, NoteName.FromFifths(name.FifthsFromC)));

    [Fact]
    public void A_fifth_up_is_one_place_further_on_the_line_of_fifths() =>
        TheoryGen.WrittenName.Sample(name =>
            Assert.Equal(name.FifthsFromC + 1, name.Plus(Interval.Parse("P5")).FifthsFromC)
        );

    [Fact]
    public void The_interval_between_two_names_leads_from_one_to_the_other() =>
        Gen.Select(TheoryGen.Name, TheoryGen.Name)
            .Sample((from, to) => Assert.Equal(to, from.Plus(from.IntervalTo(to))));

    [Theory]
    [InlineData("Bb", Step.B, -1)]
    [InlineData("bb", Step.B, -1)]
    [InlineData("B♭", Step.B, -1)]
    [InlineData("Fx", Step.F, 2)]
    [InlineData("F𝄪", Step.F, 2)]
    [InlineData("E𝄫", Step.E, -2)]
    [InlineData("G♮", Step.G, 0)]
    public void Accidentals_are_read_in_ASCII_and_Unicode(string text, Step step, int alteration) =>
        Assert.Equal(new NoteName(step, alteration), NoteName.Parse(text));

    [Theory]
    [InlineData("")]
    [InlineData("H")]
    [InlineData("C#b")]
    [InlineData("C ")]
    [InlineData("Cbbbbbbbbbbbbb")]
    public void What_is_no_name_is_refused(string text)
    {
        Assert.False(NoteName.TryParse(text, out var name));
        Assert.Equal(default, name);
    }

    [Fact]
    public void The_default_is_C() => Assert.Equal("C", default(NoteName).ToString());
}
