using Fretloom.Neck;
using Fretloom.Pages.Pictures;

namespace Fretloom.Pages.Tests.Pictures;

public class NeckRowsTests
{
    [Fact]
    public void Twelve_frets_fit_one_row() => Assert.Equal(["0-12"], Rows("0-12", 400));

    [Fact]
    public void A_long_neck_breaks_at_the_octave() => Assert.Equal(["0-12", "12-24"], Rows("0-24", 400));

    [Fact]
    public void Rows_cover_the_range_and_share_a_fret_with_their_neighbours() =>
        Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20], Gen.Double[150, 900])
            .Where((first, more, _) => first + more <= 24)
            .Sample(
                (first, more, width) =>
                {
                    var rows = NeckRows.Of(Neck24, new FretRange(first, first + more), width, Measures.Neck).ToList();
                    Assert.Equal(first, rows[0].First);
                    Assert.Equal(first + more, rows[^1].Last);
                    Assert.All(rows.Zip(rows.Skip(1)), pair => Assert.Equal(pair.First.Last, pair.Second.First));
                }
            );

    private static Instrument Neck24 =>
        new("long guitar", Shown.Named("guitar").Strings, 648, 24, new StringSpacing(7.1, 10.4));

    private static IEnumerable<string> Rows(string frets, double width) =>
        NeckRows.Of(Neck24, FretRange.Parse(frets), width, Measures.Neck).Select(row => row.ToString());
}
