using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;

namespace Fretloom.Pages.Pictures;

/// <summary>The sizes that all cards of an exhibit share: one millimetre scale, one width.</summary>
/// <param name="Columns">Cards in a full row.</param>
/// <param name="CardWidth">Points.</param>
/// <param name="Scale">Points for a millimetre of the neck.</param>
internal readonly record struct CardLayout(int Columns, double CardWidth, double Scale)
{
    /// <summary>Room at the left of a row for the string numbers.</summary>
    public const double NumbersWidth = 12;

    /// <summary>Empty at the left and right of a card, together.</summary>
    public const double Padding = 6;

    /// <summary>From one line of fret numbers to the next.</summary>
    public const double LevelHeight = 9;

    /// <summary>The type of fret numbers.</summary>
    public static TextStyle NumberStyle { get; } = new(Face.SansBold, TextStyle.SmallestSize);

    /// <summary>The type of the span and of quiet numbers.</summary>
    public static TextStyle SpanStyle { get; } = new(Face.Sans, TextStyle.SmallestSize);

    private const int MostColumns = 7;
    private const double WidestCard = 120;
    private const double WidestFret = 32;
    private const double WidestScaleFret = 44;

    /// <summary>The numbers of neighbouring frets then have room on two lines.</summary>
    private const double NarrowestFret = 5;

    /// <summary>Where notes stand side by side on one string, their marks must not touch.</summary>
    private static double NarrowestScaleFret =>
        Measures.Card.MarkRadius + Measures.Card.RingRadius + Measures.Card.MarkLine;

    /// <summary>As many cards a row as leave every fret its smallest width and every heading its room, rows evenly filled.</summary>
    public static CardLayout Of(Exhibit exhibit, double width)
    {
        var shapes = exhibit.Shapes ?? [];
        var best = With(1, exhibit, shapes, width);
        for (var columns = 2; columns <= Math.Min(MostColumns, shapes.Count); columns++)
        {
            var layout = With(columns, exhibit, shapes, width);
            var fits =
                shapes.All(shape => layout.NarrowestOf(exhibit.Map.Instrument, shape) >= NeededBy(shape))
                && shapes.All(shape => CardHeading.WidthOf(shape) + Padding <= layout.CardWidth)
                && shapes.All(shape => SpanStyle.WidthOf(CardWords.SpanOf(shape).Span) + Padding <= layout.CardWidth)
                && exhibit.InHand.All(one => NumberStyle.WidthOf(WideSign.Words(one)) + Padding <= layout.CardWidth);
            best = fits ? layout : best;
        }

        var rows = (shapes.Count + best.Columns - 1) / best.Columns;
        return With((shapes.Count + rows - 1) / Math.Max(1, rows), exhibit, shapes, width);
    }

    /// <summary>The frets a card shows: those of its shape, from the nut if a string is open.</summary>
    public static FretRange FretsOf(Shape shape)
    {
        var frets = shape.Spots.Select(spot => spot.Fret).ToList();
        return new FretRange(frets.Min(), frets.Max());
    }

    /// <summary>The frets on which a shape has notes, ascending.</summary>
    public static List<int> PlayedFrets(Shape shape) => [.. shape.Spots.Select(spot => spot.Fret).Distinct().Order()];

    /// <summary>The line on which the number of each played fret stands: 0, or 1 below where it would touch the one before.</summary>
    public List<int> LevelsOf(Instrument instrument, Shape shape)
    {
        var levels = new List<int>();
        var frets = PlayedFrets(shape);
        for (var at = 0; at < frets.Count; at++)
        {
            levels.Add(at > 0 && levels[^1] == 0 && Touch(Scale, frets[at - 1], frets[at]) ? 1 : 0);
        }

        return levels;

        bool Touch(double scale, int lower, int upper) =>
            scale * (Middle(instrument, upper) - Middle(instrument, lower)) < (Width(lower) + Width(upper)) / 2 + 1;

        static double Width(int fret) => NumberStyle.WidthOf(Wording.Number(fret));
    }

    /// <summary>Where the leftmost wire of a card stands, so that the neck is in its middle.</summary>
    public double LeftOf(Instrument instrument, Shape shape)
    {
        var open = OpenWidth(FretsOf(shape));
        return (CardWidth - open - Scale * Length(instrument, FretsOf(shape))) / 2 + open;
    }

    private static CardLayout With(int columns, Exhibit exhibit, ValueList<Shape> shapes, double width)
    {
        var isOfScale = shapes.Any(IsOfScale);
        var widestFret = isOfScale ? WidestScaleFret : WidestFret;
        var card = Math.Min(isOfScale ? width : WidestCard, (width - NumbersWidth) / columns);
        var instrument = exhibit.Map.Instrument;
        var scale = shapes
            .Select(shape => FretsOf(shape))
            .Select(frets =>
                Math.Min(
                    (card - Padding - 2 * Measures.Card.RunOn - OpenWidth(frets))
                        / Math.Max(1, Length(instrument, frets)),
                    widestFret / Widest(instrument, frets)
                )
            )
            .DefaultIfEmpty(1)
            .Min();
        return new CardLayout(columns, card, Math.Max(0.01, scale));
    }

    /// <summary>Millimetres from the nut; open strings have their marks well before it.</summary>
    private static double Middle(Instrument instrument, int fret) =>
        fret == 0 ? -instrument.FretMm(1) : (instrument.FretMm(fret - 1) + instrument.FretMm(fret)) / 2;

    private static bool IsOfScale(Shape shape) => shape.Source is ShapeSource.OfScale;

    private static double NeededBy(Shape shape) => IsOfScale(shape) ? NarrowestScaleFret : NarrowestFret;

    private static double OpenWidth(FretRange frets) =>
        frets.First == 0 ? Measures.Card.OpenOffset + Measures.Card.MarkRadius : 0;

    private static double Length(Instrument instrument, FretRange frets) =>
        instrument.FretMm(frets.Last) - instrument.FretMm(Math.Max(0, frets.First - 1));

    private static double Widest(Instrument instrument, FretRange frets)
    {
        var wire = Math.Max(0, frets.First - 1);
        return instrument.FretMm(wire + 1) - instrument.FretMm(wire);
    }

    private double NarrowestOf(Instrument instrument, Shape shape)
    {
        var last = FretsOf(shape).Last;
        return last == 0 ? NarrowestScaleFret : Scale * (instrument.FretMm(last) - instrument.FretMm(last - 1));
    }
}
