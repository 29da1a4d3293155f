using Fretloom.Neck;

namespace Fretloom.Tests.Neck;

public class NeckGeometryTests
{
    // Column of fret_positions.csv -> scale length in millimetres; an inch is 25.4 mm by definition.
    private static readonly Dictionary<string, double> Columns = new()
    {
        ["guitar_full_650"] = 650,
        ["guitar_25_5in"] = 25.5 * 25.4,
        ["guitar_24_75in"] = 24.75 * 25.4,
        ["guitar_3_4_580"] = 580,
        ["guitar_7_8_615"] = 615,
        ["guitar_1_2_530"] = 530,
        ["uke_soprano_345"] = 345,
        ["uke_concert_380"] = 380,
        ["uke_tenor_430"] = 430,
        ["uke_baritone_510"] = 510,
        ["bass_34in"] = 34 * 25.4,
        ["bass_30in"] = 30 * 25.4,
        ["mandolin_13_875in"] = 13.875 * 25.4,
        ["banjo_26_25in"] = 26.25 * 25.4,
        ["baritone_27in"] = 27 * 25.4,
    };

    private static readonly Instrument Guitar = Necks.Find("guitar");

    [Fact]
    public void Frets_lie_where_the_table_says()
    {
        var rows = Table.Read("fret_positions.csv");

        Assert.Equal(25, rows.Count);
        foreach (var row in rows)
        {
            foreach (var (column, scaleLength) in Columns)
            {
                // The table has three decimals.
                Assert.Equal(row.Number(column), NeckGeometry.FretMm(scaleLength, row.Number("fret")), 0.00051);
            }
        }
    }

    [Fact]
    public void Distances_between_wires_are_those_of_the_table()
    {
        foreach (var row in Table.Read("span_mm.csv"))
        {
            var start = row.Number("start_fret");
            foreach (var scaleLength in new[] { 650, 647.7, 580, 345, 430, 863.6 })
            {
                var column = FormattableString.Invariant($"{scaleLength}mm");
                var distance =
                    NeckGeometry.FretMm(scaleLength, start + row.Number("fret_difference"))
                    - NeckGeometry.FretMm(scaleLength, start);

                // The table has one decimal.
                Assert.Equal(row.Number(column), distance, 0.051);
            }
        }
    }

    [Fact]
    public void Scale_lengths_said_to_be_of_the_table_are_there()
    {
        foreach (var entry in Catalogue.Entries.Where(entry => entry.ScaleSource == FigureSource.FretTable))
        {
            Assert.Contains(Columns.Values, length => Math.Abs(length - entry.Instrument.ScaleLengthMm) <= 0.5);
        }
    }

    [Fact]
    public void The_octave_halves_the_string() => Assert.Equal(324, Guitar.FretMm(12), 1e-9);

    [Fact]
    public void Behind_a_capo_frets_are_counted_from_it() =>
        Assert.Equal(Guitar.FretMm(7), Guitar.WithCapo(2).FretMm(5), 1e-9);

    [Fact]
    public void A_finger_lands_a_quarter_of_the_fret_behind_the_wire()
    {
        var behind = (Guitar.FretMm(5) - Guitar.LandingMm(5)) / (Guitar.FretMm(5) - Guitar.FretMm(4));

        Assert.Equal(0.25, behind, 1e-9);
        Assert.Equal(0, Guitar.LandingMm(0));
        Assert.Equal(Guitar.FretMm(2), Guitar.WithCapo(2).LandingMm(0), 1e-9);
    }

    // Common practice, no source.
    [Theory]
    [InlineData("6:5 5:7", 3)]
    [InlineData("6:5 5:10", 6)]
    [InlineData("6:5", 1)]
    [InlineData("6:0 5:3 4:4", 2)]
    [InlineData("6:0 5:0", 0)]
    public void A_span_counts_frets_inclusively_without_open_strings(string spots, int span) =>
        Assert.Equal(span, Guitar.Span(spots.Split(' ').Select(Spot.Parse)));

    [Fact]
    public void The_short_string_of_a_banjo_is_open_at_fret_five()
    {
        var banjo = Necks.Find("banjo");
        Spot[] chord = [new(5, 5), new(4, 2), new(3, 0), new(2, 1), new(1, 2)];

        Assert.True(banjo.IsOpen(new Spot(5, 5)));
        Assert.False(banjo.IsOpen(new Spot(1, 5)));
        Assert.Equal(2, banjo.Span(chord));
        Assert.Equal(banjo.LandingMm(2) - banjo.LandingMm(1), banjo.StretchMm(chord), 1e-9);
    }

    [Fact]
    public void A_stretch_narrows_up_the_neck_and_vanishes_for_open_strings()
    {
        double Stretch(int fret) => Guitar.StretchMm([new Spot(6, fret), new Spot(5, fret + 3)]);

        Assert.Equal(0, Guitar.StretchMm([new Spot(6, 0), new Spot(5, 0)]));
        for (var fret = 1; fret < 19; fret++)
        {
            Assert.True(Stretch(fret) > Stretch(fret + 1));
        }
    }

    [Fact]
    public void Strings_fan_out_from_nut_to_bridge()
    {
        Assert.Equal(0, Guitar.StringMm(1, 300));
        Assert.Equal(5 * 7.1, Guitar.StringMm(6, 0), 1e-9);
        Assert.Equal(5 * 10.4, Guitar.StringMm(6, Guitar.ScaleLengthMm), 1e-9);
    }

    [Fact]
    public void Distance_between_spots_is_symmetric_and_obeys_the_triangle() =>
        Gen.Select(AnySpot, AnySpot, AnySpot)
            .Sample(
                (a, b, c) =>
                {
                    Assert.Equal(Guitar.DistanceMm(a, b), Guitar.DistanceMm(b, a), 1e-9);
                    Assert.True(Guitar.DistanceMm(a, c) <= Guitar.DistanceMm(a, b) + Guitar.DistanceMm(b, c) + 1e-9);
                    Assert.Equal(0, Guitar.DistanceMm(a, a), 1e-9);
                }
            );

    private static Gen<Spot> AnySpot =>
        Gen.Select(Gen.Int[1, 6], Gen.Int[0, 22], (number, fret) => new Spot(number, fret));
}
