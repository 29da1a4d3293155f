using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The picture of a neck: one row of frets or several, and a legend.</summary>
internal static class NeckPicture
{
    private const double NamesWidth = 34;
    private const double WidestFret = 66;
    private const double RowGap = 14;

    /// <summary>Lays a neck out.</summary>
    /// <param name="content">What it shows.</param>
    /// <param name="width">Points there are; a short range takes less.</param>
    /// <param name="words">Title and description.</param>
    public static Drawing Draw(NeckContent content, double width, (string Title, string Description) words)
    {
        var measures = Measures.Neck;
        var nodes = new List<Node>();
        var hasEmblems = content.HalfTurnCentres.Any();
        var hasCapo = content.Map.Instrument.Capo > 0;
        var fretsWidth = width - NamesWidth - OpenWidth(measures, true) - RightMargin(content, measures);
        var (top, natural) = (0.0, 0.0);
        foreach (var range in NeckRows.Of(content.Map.Instrument, content.Map.Frets, fretsWidth, measures))
        {
            top += measures.Overhang + (hasEmblems ? Emblem.HalfTurnHeight + 4 : hasCapo ? 16 : 2);
            var left = NamesWidth + OpenWidth(measures, range.First == 0);
            var scale = ScaleOf(content, range, width - left - RightMargin(content, measures));
            var frame = new NeckFrame(content.Map, range, measures, left, top, scale);
            var layers = new NeckLayers(content, frame);
            nodes.AddRange(layers.All);
            natural = Math.Max(natural, frame.Right + RightMargin(content, measures));
            top = layers.NumbersY + 8 + RowGap;
        }

        var neckWidth = natural;
        var placed = content.IsLeftHanded ? nodes.Select(node => node.Placed(Placement.Mirrored(neckWidth))) : nodes;
        var legendWidth = Math.Max(natural, Math.Min(width, 300));
        var legend = Legend.Draw([.. NeckLegend.For(content)], 2, top - RowGap + 2, legendWidth);
        return new Drawing(
            legend.Height > 0 ? legendWidth : natural,
            top - RowGap + legend.Height + 2,
            words.Title,
            words.Description,
            placed.Concat(legend.Nodes).ToValueList()
        );
    }

    private static double OpenWidth(Measures measures, bool hasOpenStrings) =>
        hasOpenStrings ? measures.OpenOffset + measures.RingRadius + 2 : measures.Overhang / 2;

    private static double RightMargin(NeckContent content, Measures measures) =>
        measures.Overhang / 2 + (content.Landmarks?.Hinge is null ? 2 : 12);

    private static double ScaleOf(NeckContent content, Neck.FretRange range, double width)
    {
        var instrument = content.Map.Instrument;
        var firstWire = Math.Max(0, range.First - 1);
        var length = Neck.NeckGeometry.FretMm(instrument, range.Last) - Neck.NeckGeometry.FretMm(instrument, firstWire);
        var widest =
            Neck.NeckGeometry.FretMm(instrument, firstWire + 1) - Neck.NeckGeometry.FretMm(instrument, firstWire);
        return length <= 0 ? 1 : Math.Min(width / length, WidestFret / widest);
    }
}
