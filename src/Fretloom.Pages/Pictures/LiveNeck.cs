using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>A neck to be pointed at: always one row, without a legend, with the place of every spot.</summary>
/// <param name="Drawing">What is seen.</param>
/// <param name="Strings">The strings from the top of the drawing down.</param>
/// <param name="Cells">Every spot of those strings and frets that is on the neck, string by string from the top, frets ascending.</param>
/// <param name="FretColumns">The columns of the frets, ascending, with the frets' numbers.</param>
public sealed record LiveNeck(
    Drawing Drawing,
    ValueList<int> Strings,
    ValueList<NeckCell> Cells,
    ValueList<(int Fret, double Left, double Width)> FretColumns
)
{
    // Narrower frets would let marks of neighbouring frets touch.
    private const double NarrowestFret = 19;

    private const double WidestFret = 110;

    private const double NamesWidth = 26;

    /// <summary>Lays a neck out.</summary>
    /// <param name="exhibit">What to show. Where it asks for shapes alone the notes of the key are shown around them.</param>
    /// <param name="focus">A shape to bring out; null for none.</param>
    /// <param name="width">Points there are; with many frets more are taken, with few frets fewer.</param>
    /// <param name="twin">The spots of the shape's twin, far string first; empty for none.</param>
    public static LiveNeck Of(Exhibit exhibit, Shape? focus, double width, ValueList<Spot> twin = default)
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        var content = NeckContent.Of(Whole(exhibit), focus);
        var map = content.Map;
        var measures = Measures.Neck;
        var left = NamesWidth + (map.Frets.First == 0 ? measures.OpenOffset + measures.RingRadius + 2 : measures.RunOn);
        var top = measures.Overhang + (content.HalfTurnCentres.Any() ? Emblem.HalfTurnHeight + 4 : 4);
        var right = measures.RunOn + 12;
        var frame = new NeckFrame(map, map.Frets, measures, left, top, ScaleOf(map, width - left - right));
        var layers = new NeckLayers(content, frame);
        var full = frame.Right + right;
        IEnumerable<Node> Placed(IEnumerable<Node> nodes) =>
            content.IsLeftHanded ? nodes.Select(node => node.Placed(Placement.Mirrored(full))) : nodes;

        double LeftOf(double from, double to) => content.IsLeftHanded ? full - to : from;

        var (title, description) = NeckWords.Of(content);
        var columns = map.Frets.Frets.Select(fret => (Fret: fret, Column: frame.ColumnOf(fret))).ToList();
        var strings = map.Strings.Numbers.Reverse().ToValueList();
        return new LiveNeck(
            new Drawing(
                full,
                layers.NumbersY + 10,
                title,
                description,
                Placed(layers.All.Concat(Stitched(twin, frame))).ToValueList()
            ),
            strings,
            strings
                .SelectMany(number => columns.Select(column => (Spot: new Spot(number, column.Fret), column.Column)))
                .Where(cell => map.Instrument.Has(cell.Spot))
                .Select(cell => new NeckCell(
                    cell.Spot,
                    LeftOf(cell.Column.Left, cell.Column.Right),
                    frame.StringY(cell.Spot.String) - measures.Spacing / 2,
                    cell.Column.Right - cell.Column.Left,
                    measures.Spacing
                ))
                .ToValueList(),
            columns
                .Select(column =>
                    (
                        column.Fret,
                        LeftOf(column.Column.Left, column.Column.Right),
                        column.Column.Right - column.Column.Left
                    )
                )
                .ToValueList()
        );
    }

    // A band's edge in ink, without its tint.
    private static IEnumerable<Node> Stitched(ValueList<Spot> twin, NeckFrame frame) =>
        twin.Count == 0 || !twin.All(frame.Contains)
            ? []
            :
            [
                new Node.Group(
                    "twin",
                    [
                        new Node.Path(
                            BandOutline.Around(twin.Select(frame.PointOf).ToList(), frame.Measures.BandRadius),
                            Tone.None,
                            new Stroke(Tone.Ink, 2 * frame.Measures.StitchLine, Dash.Stitch)
                        ),
                    ]
                ),
            ];

    private static Exhibit Whole(Exhibit exhibit)
    {
        var notes = exhibit.Notes ?? exhibit.Map.NotesOfKey.ToValueList();
        var isWholeKey = exhibit.Notes is null || notes.Count == exhibit.Map.NotesOfKey.Count();
        return exhibit with
        {
            Notes = notes,
            Landmarks = exhibit.Landmarks ?? (isWholeKey ? Landmarks.Of(exhibit.Map) : null),
        };
    }

    private static double ScaleOf(NeckMap map, double width)
    {
        var firstWire = Math.Max(0, map.Frets.First - 1);
        var length = map.Instrument.FretMm(map.Frets.Last) - map.Instrument.FretMm(firstWire);
        if (length <= 0)
        {
            return 1;
        }

        var widest = map.Instrument.FretMm(firstWire + 1) - map.Instrument.FretMm(firstWire);
        var narrowest = map.Instrument.FretMm(map.Frets.Last) - map.Instrument.FretMm(map.Frets.Last - 1);
        return Math.Max(Math.Min(width / length, WidestFret / widest), NarrowestFret / narrowest);
    }
}

/// <summary>Where a spot lies in a drawing, in points from its upper left corner. Left-handed drawings are mirrored already.</summary>
public readonly record struct NeckCell(Spot Spot, double Left, double Top, double Width, double Height);
