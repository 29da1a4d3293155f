using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>A neck on a screen: always one row, with the place of every spot.</summary>
/// <remarks>The picture is made at once, places when they are first asked for: a neck is seen before it can be pointed at.</remarks>
public sealed class LiveNeck
{
    /// <summary>Points. Narrower frets would let marks of neighbouring frets touch.</summary>
    public const double NarrowestFret = 19;

    private const double WidestFret = 110;

    private const double NamesWidth = 26;

    private readonly NeckMap _map;
    private readonly NeckFrame _frame;
    private readonly bool _isMirrored;
    private readonly double _width;
    private readonly Lazy<ValueList<NeckCell>> _cells;
    private readonly Lazy<ValueList<(int Fret, double Left, double Width)>> _fretColumns;

    private LiveNeck(NeckContent content, NeckFrame frame, double width, ValueList<Spot> twin, bool hasLegend)
    {
        (_map, _frame, _isMirrored, _width) = (content.Map, frame, content.IsLeftHanded, width);
        var layers = new NeckLayers(content, frame);
        IEnumerable<Node> Placed(IEnumerable<Node> nodes) =>
            _isMirrored ? nodes.Select(node => node.Placed(Placement.Mirrored(width))) : nodes;

        var (title, description) = NeckWords.Of(content);
        var bottom = layers.NumbersY + 10;
        var legend = Legend.Draw(hasLegend ? [.. NeckLegend.For(content)] : [], 2, bottom, width);
        Drawing = new Drawing(
            Math.Max(width, legend.Right),
            bottom + legend.Height,
            title,
            description,
            Placed(layers.All.Concat(Stitched(twin, frame))).Concat(legend.Nodes).ToValueList()
        );
        _cells = new(() => AllCells().ToValueList());
        _fretColumns = new(() => _map.Frets.Frets.Select(ColumnOf).ToValueList());
    }

    /// <summary>What is seen.</summary>
    public Drawing Drawing { get; }

    /// <summary>The strings from the top of the drawing down.</summary>
    public ValueList<int> Strings => _map.Strings.Numbers.Reverse().ToValueList();

    /// <summary>Every spot of those strings and frets that is on the neck, string by string from the top, frets ascending.</summary>
    public ValueList<NeckCell> Cells => _cells.Value;

    /// <summary>The columns of the frets, ascending, with the frets' numbers.</summary>
    public ValueList<(int Fret, double Left, double Width)> FretColumns => _fretColumns.Value;

    /// <summary>Lays a neck out.</summary>
    /// <param name="exhibit">What to show. Where it asks for shapes alone the notes of the key are shown around them.</param>
    /// <param name="focus">A shape to bring out; null for none.</param>
    /// <param name="width">Points there are; with many frets more are taken, with few frets fewer.</param>
    /// <param name="twin">The spots of the shape's twin, far string first; empty for none.</param>
    /// <param name="narrowestFret">Points the narrowest fret has at least.</param>
    /// <param name="hasLegend">Whether the signs are explained below it.</param>
    public static LiveNeck Of(
        Exhibit exhibit,
        Shape? focus,
        double width,
        ValueList<Spot> twin = default,
        double narrowestFret = NarrowestFret,
        bool hasLegend = false
    )
    {
        ArgumentNullException.ThrowIfNull(exhibit);
        var content = NeckContent.Of(Whole(exhibit), focus);
        var map = content.Map;
        var measures = Measures.Neck;
        var left = NamesWidth + (map.Frets.First == 0 ? measures.OpenOffset + measures.RingRadius + 2 : measures.RunOn);
        var top = measures.Overhang + (content.HalfTurnCentres.Any() ? Emblem.HalfTurnHeight + 4 : 4);
        var right = measures.RunOn + 12;
        var scale = ScaleOf(map, width - left - right, narrowestFret);
        var frame = new NeckFrame(map, map.Frets, measures, left, top, scale);
        return new LiveNeck(content, frame, frame.Right + right, twin, hasLegend);
    }

    private IEnumerable<NeckCell> AllCells()
    {
        var spacing = _frame.Measures.Spacing;
        return Strings
            .SelectMany(number => FretColumns.Select(column => (Spot: new Spot(number, column.Fret), Column: column)))
            .Where(cell => _map.Instrument.Has(cell.Spot))
            .Select(cell => new NeckCell(
                cell.Spot,
                cell.Column.Left,
                _frame.StringY(cell.Spot.String) - spacing / 2,
                cell.Column.Width,
                spacing
            ));
    }

    private (int Fret, double Left, double Width) ColumnOf(int fret)
    {
        var (left, right) = _frame.ColumnOf(fret);
        return (fret, _isMirrored ? _width - right : left, right - left);
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

    private static double ScaleOf(NeckMap map, double width, double narrowestFret)
    {
        var firstWire = Math.Max(0, map.Frets.First - 1);
        var length = map.Instrument.FretMm(map.Frets.Last) - map.Instrument.FretMm(firstWire);
        if (length <= 0)
        {
            return 1;
        }

        var widest = map.Instrument.FretMm(firstWire + 1) - map.Instrument.FretMm(firstWire);
        var narrowest = map.Instrument.FretMm(map.Frets.Last) - map.Instrument.FretMm(map.Frets.Last - 1);
        return Math.Max(Math.Min(width / length, WidestFret / widest), narrowestFret / narrowest);
    }
}

/// <summary>Where a spot lies in a drawing, in points from its upper left corner. Left-handed drawings are mirrored already.</summary>
public readonly record struct NeckCell(Spot Spot, double Left, double Top, double Width, double Height);
