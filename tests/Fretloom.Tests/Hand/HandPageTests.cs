using System.Globalization;
using Fretloom.Hand.Chords;
using Fretloom.Hand.Lines;
using Fretloom.Testing;

namespace Fretloom.Tests.Hand;

/// <summary>The tables of <c>docs/hand.md</c> say what the program does.</summary>
public class HandPageTests
{
    private static readonly string[] Rows =
    [
        .. File.ReadLines(Repository.PathTo("docs", "hand.md")).Where(line => line.StartsWith('|')),
    ];

    [Fact]
    public void Every_term_of_a_chord_stands_there_with_its_unit_and_prices() =>
        Assert.All(
            ChordWeights.Table,
            weight =>
            {
                var row = Assert.Single(Rows, row => Cells(row)[0] == $"`{ChordWeights.Name(weight.Term)}`");
                Assert.Equal(
                    [weight.Unit, Price(weight.Long), Price(weight.Short), Origin(weight.Origin)],
                    Cells(row)[2..]
                );
            }
        );

    [Fact]
    public void The_table_of_chords_is_in_the_order_of_the_terms() =>
        Assert.Equal(Enum.GetValues<ChordTerm>(), ChordWeights.Table.Select(weight => weight.Term));

    [Fact]
    public void Every_term_of_a_line_stands_there() =>
        Assert.All(
            Enum.GetNames<LineTerm>(),
            term => Assert.Single(Rows, row => Cells(row)[0].Equals(term, StringComparison.OrdinalIgnoreCase))
        );

    private static string[] Cells(string row) => [.. row.Split('|')[1..^1].Select(cell => cell.Trim())];

    private static string Price(double weight) => weight.ToString("0.00", CultureInfo.InvariantCulture);

    private static string Origin(string origin) => origin == ChordWeights.Fitted ? "data" : origin;
}
