using Fretloom.Pages.Pictures;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Tests.Pictures;

public class BandOutlineTests
{
    private static readonly Gen<(double X, double Y)[]> Chains = Gen.Double[-150, 150]
        .Array[1, 7]
        .Select(xs => xs.Select((x, at) => (x, 24.0 * at)).ToArray());

    [Fact]
    public void Every_corner_of_the_outline_is_a_radius_from_the_chain_or_farther_inside_a_bend() =>
        Chains.Sample(chain =>
        {
            foreach (var step in BandOutline.Around(chain, 10).Where(step => step.Kind != PathStepKind.Close))
            {
                // The inner corner of a bend lies farther from the bend, but not from the lines that meet there.
                Assert.InRange(DistanceToChain(chain, (step.X, step.Y)), 10 - 1e-6, 10 + 1e-6);
            }
        });

    [Fact]
    public void The_outline_is_closed() =>
        Chains.Sample(chain =>
        {
            var steps = BandOutline.Around(chain, 10);
            Assert.Equal(PathStepKind.Move, steps[0].Kind);
            Assert.Equal(PathStepKind.Close, steps[^1].Kind);
            Assert.Equal((steps[0].X, steps[0].Y), (steps[^2].X, steps[^2].Y));
        });

    private static double DistanceToChain((double X, double Y)[] chain, (double X, double Y) point) =>
        chain.Length == 1
            ? Distance(chain[0], point)
            : chain.Zip(chain.Skip(1), (from, to) => DistanceToLine(from, to, point)).Min();

    private static double DistanceToLine((double X, double Y) from, (double X, double Y) to, (double X, double Y) point)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var share = Math.Clamp(((point.X - from.X) * dx + (point.Y - from.Y) * dy) / (dx * dx + dy * dy), 0, 1);
        return Distance((from.X + share * dx, from.Y + share * dy), point);
    }

    private static double Distance((double X, double Y) one, (double X, double Y) other) =>
        Math.Sqrt(Math.Pow(one.X - other.X, 2) + Math.Pow(one.Y - other.Y, 2));
}
