using CsCheck;
using Fretloom.Scores.Engraving;

namespace Fretloom.Scores.Tests.Engraving;

public class SystemBreaksTests
{
    private static readonly HashSet<int> OneKey = [1];

    private static SystemBreaks.Bar[] Bars(int count, double body = 10) =>
        [.. Enumerable.Repeat(new SystemBreaks.Bar(5, 1, body - 1), count)];

    [Theory]
    [InlineData(4, 36, "1 3")]
    [InlineData(4, 50, "1")]
    [InlineData(9, 46, "1 4 7")]
    [InlineData(5, 46, "1 4")]
    [InlineData(7, 36, "1 4 6")]
    [InlineData(3, 12, "1 2 3")]
    public void Bars_are_shared_out_evenly_over_as_few_systems_as_will_do(int bars, double room, string firsts) =>
        Assert.Equal(firsts, string.Join(' ', SystemBreaks.Choose(Bars(bars), room, OneKey)));

    [Theory]
    // Two bars a key, three in a system: two in each.
    [InlineData(6, 36, 2, "1 3 5")]
    // Four bars a key, three in a system: two and two.
    [InlineData(8, 36, 4, "1 3 5 7")]
    // One bar a key, two in a system.
    [InlineData(4, 26, 1, "1 3")]
    // Three bars a key, five in a system: a key in each would take too many systems; half as many again is not yet too many.
    [InlineData(6, 56, 3, "1 4")]
    public void Keys_begin_with_systems_where_that_fits(int bars, double room, int barsOfAKey, string firsts)
    {
        var keys = Enumerable.Range(0, bars / barsOfAKey).Select(key => key * barsOfAKey + 1).ToHashSet();

        Assert.Equal(firsts, string.Join(' ', SystemBreaks.Choose(Bars(bars), room, keys)));
    }

    /// <summary>Every way to break is tried for up to ten bars of random widths.</summary>
    [Fact]
    public void No_other_way_takes_fewer_systems_or_shares_bars_out_more_evenly()
    {
        Gen.Select(Gen.Double[1, 20].Array[1, 10], Gen.Double[10, 60])
            .Sample(
                (bodies, room) =>
                {
                    var bars = bodies.Select(body => new SystemBreaks.Bar(5, 1, body)).ToArray();
                    var chosen = Price([.. SystemBreaks.Choose(bars, room, OneKey)]);
                    var best = Enumerable
                        .Range(0, 1 << (bars.Length - 1))
                        .Select(ends =>
                            Enumerable.Range(1, bars.Length).Where(bar => bar == 1 || (ends >> (bar - 2) & 1) == 1)
                        )
                        .Select(firsts => firsts.ToList())
                        .Where(Fits)
                        .Min(Price);
                    return chosen == best;

                    bool Fits(List<int> firsts) =>
                        firsts
                            .Append(bars.Length + 1)
                            .Zip(firsts.Skip(1).Append(bars.Length + 1))
                            .All(system =>
                                system.Second - system.First <= 1
                                || 4 + Enumerable.Range(system.First, system.Second - system.First).Sum(Width) <= room
                            );

                    double Width(int bar) => 1 + bodies[bar - 1];

                    (int, int) Price(List<int> firsts) =>
                        (
                            firsts.Count,
                            firsts
                                .Zip(firsts.Skip(1).Append(bars.Length + 1))
                                .Sum(system => (system.Second - system.First) * (system.Second - system.First))
                        );
                }
            );
    }
}
