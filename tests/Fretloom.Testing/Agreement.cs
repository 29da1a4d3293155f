using System.Globalization;
using Fretloom.Hand;
using Fretloom.Neck;

namespace Fretloom.Testing;

/// <summary>How often a model gives the published fingers.</summary>
/// <param name="Count">How many shapes were asked for.</param>
/// <param name="First">How many times the published fingers came first.</param>
/// <param name="Third">How many times they were among the first three.</param>
public sealed record Agreement(int Count, int First, int Third)
{
    /// <summary>Asks the model of <see cref="ChordFingering"/>, an adult hand.</summary>
    /// <param name="instrument"><c>guitar</c> or <c>ukulele</c>.</param>
    /// <param name="which">Which shapes.</param>
    public static Agreement OfModel(string instrument, Func<PublishedFingering, bool> which) =>
        Of(
            instrument,
            which,
            (player, shape) =>
                [
                    .. ChordFingering
                        .Find(player, shape.Spots, 3)
                        .Fingerings.Select(fingering => fingering.Notes.Select(note => note.Finger).ToValueList()),
                ]
        );

    /// <summary>Asks any model.</summary>
    /// <param name="instrument"><c>guitar</c> or <c>ukulele</c>.</param>
    /// <param name="which">Which shapes.</param>
    /// <param name="best">A finger for each spot of a shape, the best three first.</param>
    public static Agreement Of(
        string instrument,
        Func<PublishedFingering, bool> which,
        Func<Player, PublishedFingering, IReadOnlyList<ValueList<Finger>>> best
    )
    {
        var player = new Player(Catalogue.All.First(one => one.Name == instrument));
        var ranks = PublishedFingerings
            .Of(instrument)
            .Where(which)
            .Select(shape => best(player, shape).ToList().IndexOf(shape.PlayedFingers))
            .ToList();
        return new(ranks.Count, ranks.Count(rank => rank == 0), ranks.Count(rank => rank is >= 0 and < 3));
    }

    /// <summary>Per cent with their 95 % intervals: <c>89.5 (87.4-91.3) / 97.7 (96.5-98.5) of 960</c>.</summary>
    public override string ToString() => $"{Share(First)} / {Share(Third)} of {Count}";

    /// <summary>Wilson's interval for a share (Wilson 1927, from memory), with 1.96 standard errors.</summary>
    private string Share(int hits)
    {
        const double Errors = 1.96;
        var share = (double)hits / Count;
        var weight = Errors * Errors / Count;
        var middle = (share + weight / 2) / (1 + weight);
        var half = Errors * Math.Sqrt(share * (1 - share) / Count + weight / 4 / Count) / (1 + weight);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{100 * share:0.0} ({100 * (middle - half):0.0}-{100 * (middle + half):0.0})"
        );
    }
}
