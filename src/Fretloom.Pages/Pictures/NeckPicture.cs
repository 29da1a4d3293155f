using Fretloom.Neck;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The picture of a neck: one row of frets or several, and a legend.</summary>
internal static class NeckPicture
{
    private const double NamesWidth = 26;
    private const double WidestFret = 66;
    private const double RowGap = 14;
    private const double StripHeadRoom = 14;

    /// <summary>Lays a neck out.</summary>
    /// <param name="content">What it shows.</param>
    /// <param name="width">Points there are; a short range takes less.</param>
    /// <param name="words">Title and description.</param>
    /// <param name="explained">The words of the signs explained before; those explained here are added.</param>
    public static Drawing Draw(
        NeckContent content,
        double width,
        (string Title, string Description) words,
        ExplainedSigns explained
    ) => Draw(content, width, words, explained, layers => layers.All);

    /// <summary>Lays a neck out with other layers than its own.</summary>
    /// <param name="content">What it shows.</param>
    /// <param name="width">Points there are.</param>
    /// <param name="words">Title and description.</param>
    /// <param name="explained">The words of the signs explained before; those explained here are added.</param>
    /// <param name="choose">What is drawn of a row, in drawing order.</param>
    public static Drawing Draw(
        NeckContent content,
        double width,
        (string Title, string Description) words,
        ExplainedSigns explained,
        Func<NeckLayers, IEnumerable<Node>> choose
    ) => Draw(content, content.Map, width, words, explained, choose);

    /// <summary>Lays out the landmarks of a neck alone, as a strip.</summary>
    public static Drawing DrawLandmarks(
        NeckContent content,
        double width,
        (string Title, string Description) words,
        ExplainedSigns explained
    )
    {
        var map = content.Map;
        var thin = new NeckMap(map.Instrument, map.Key, new StringSet([map.Strings.Numbers[^1]]), map.Frets);
        return Draw(content, thin, width, words, explained, layers => layers.Landmarks);
    }

    private static Drawing Draw(
        NeckContent content,
        NeckMap ground,
        double width,
        (string Title, string Description) words,
        ExplainedSigns explained,
        Func<NeckLayers, IEnumerable<Node>> choose
    )
    {
        var isStrip = ground != content.Map;
        var nodes = new List<Node>();
        var (rows, measures) = RowsOf(content, width);
        var (top, natural) = (0.0, 0.0);
        foreach (var range in rows)
        {
            top += measures.Overhang + (isStrip ? StripHeadRoom : HeadRoom(content, range));
            var left = NamesWidth + OpenWidth(measures, range.First == 0);
            var scale = ScaleOf(content, range, width - left - RightMargin(content, measures));
            var frame = new NeckFrame(ground, range, measures, left, top, scale);
            var layers = new NeckLayers(content, frame);
            nodes.AddRange(choose(layers));
            natural = Math.Max(natural, frame.Right + RightMargin(content, measures));
            top = layers.NumbersY + 8 + RowGap;
        }

        var neckWidth = natural;
        var placed = content.IsLeftHanded ? nodes.Select(node => node.Placed(Placement.Mirrored(neckWidth))) : nodes;
        var items = isStrip ? NeckLegend.Landmarks(content) : NeckLegend.For(content);
        var legend = Legend.Draw(
            [.. items.Where(item => explained.Add(item.Words))],
            2,
            top - RowGap + 2,
            Math.Max(natural, width)
        );
        return new Drawing(
            Math.Max(natural, legend.Right + 2),
            top - RowGap + legend.Height + 2,
            words.Title,
            words.Description,
            placed.Concat(legend.Nodes).ToValueList()
        );
    }

    /// <summary>One row if the marks then have room, with strings a little closer if that helps; else rows as <see cref="NeckRows"/> breaks them.</summary>
    private static (ValueList<FretRange> Rows, Measures Measures) RowsOf(NeckContent content, double width)
    {
        foreach (var measures in (Measures[])[Measures.Neck, Measures.CloseNeck])
        {
            var room = width - NamesWidth - OpenWidth(measures, true) - RightMargin(content, measures);
            var rows = NeckRows.Of(content.Map.Instrument, content.Map.Frets, room, measures).ToValueList();
            if (rows.Count == 1)
            {
                return (rows, measures);
            }
        }

        var wide = width - NamesWidth - OpenWidth(Measures.Neck, true) - RightMargin(content, Measures.Neck);
        return (
            NeckRows.Of(content.Map.Instrument, content.Map.Frets, wide, Measures.Neck).ToValueList(),
            Measures.Neck
        );
    }

    /// <summary>Whether a neck drawn in a width takes a single row.</summary>
    public static bool IsOneRow(NeckContent content, double width) => RowsOf(content, width).Rows.Count == 1;

    private static double HeadRoom(NeckContent content, FretRange range) =>
        content.HalfTurnCentres.Any(centre => centre >= range.First - 0.5 && centre <= range.Last + 0.5)
            ? Emblem.HalfTurnHeight + 4
        : content.Map.Instrument.Capo > 0 && range.First <= 1 ? 16
        : content.HasFingersBeside || content.Culprits is not null ? 4
        : 2;

    private static double OpenWidth(Measures measures, bool hasOpenStrings) =>
        hasOpenStrings ? measures.OpenOffset + measures.RingRadius + 2 : measures.RunOn;

    private static double RightMargin(NeckContent content, Measures measures) =>
        measures.RunOn + (content.Landmarks?.Hinge is null ? 2 : 12);

    private static double ScaleOf(NeckContent content, FretRange range, double width)
    {
        var instrument = content.Map.Instrument;
        var firstWire = Math.Max(0, range.First - 1);
        var length = instrument.FretMm(range.Last) - instrument.FretMm(firstWire);
        var widest = instrument.FretMm(firstWire + 1) - instrument.FretMm(firstWire);
        return length <= 0 ? 1 : Math.Min(width / length, WidestFret / widest);
    }
}
