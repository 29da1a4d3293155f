using Fretloom.Studio.Client.Write;
using Fretloom.Studio.Client.Write.Desk;
using Fretloom.Studio.Client.Write.Preview;

namespace Fretloom.Studio.Client.Tests.Write;

public class LineDifferenceTests
{
    private static readonly Gen<string> Text = Gen.OneOf(Gen.Const("a"), Gen.Const("b"), Gen.Const("c"), Gen.Const(""))
        .List[0, 9]
        .Select(lines => string.Join('\n', lines));

    [Fact]
    public void Both_texts_can_be_read_from_the_comparison() =>
        Gen.Select(Text, Text)
            .Sample(
                (first, second) =>
                {
                    var lines = LineDifference.Between(first, second);
                    Assert.Equal(first, Read(lines, LineKind.New));
                    Assert.Equal(second, Read(lines, LineKind.Gone));
                }
            );

    [Fact]
    public void No_shorter_comparison_exists() =>
        Gen.Select(Text, Text)
            .Sample(
                (first, second) =>
                    Assert.Equal(
                        Common(first.Split('\n'), second.Split('\n')),
                        LineDifference.Between(first, second).Count(line => line.Kind == LineKind.Same)
                    ),
                iter: 300
            );

    [Fact]
    public void Equal_lines_far_from_what_differs_are_counted()
    {
        var first = string.Join('\n', Enumerable.Range(1, 20));
        var second = first.Replace("\n10\n", "\nten\n", StringComparison.Ordinal);

        Assert.Equal(
            ["Left 8", "Same 9", "Gone 10", "New ten", "Same 11", "Left 9"],
            LineDifference
                .Shortened(LineDifference.Between(first, second), 1)
                .Select(line => $"{line.Kind} {line.Text}")
        );
    }

    private static string Read(IEnumerable<ComparedLine> lines, LineKind without) =>
        string.Join('\n', lines.Where(line => line.Kind != without).Select(line => line.Text));

    // Slow and obvious: the most lines that stand in both in the same order.
    private static int Common(string[] first, string[] second) =>
        first is [] || second is [] ? 0
        : first[0] == second[0] ? 1 + Common(first[1..], second[1..])
        : Math.Max(Common(first[1..], second), Common(first, second[1..]));
}
