using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>A chord box: all strings of the instrument downward, frets across, X and O on top, the name above.</summary>
internal sealed class ChordBox
{
    private const double Radius = 6.6;
    private const double BetweenDots = 4.2;
    private const double FretNumberWidth = 22;
    private const double OtherSideWidth = 9;
    private const double BetweenBoxes = 8;
    private const double SignsHeight = 20;
    private const double TuningHeight = 14;

    private static readonly TextStyle NameStyle = new(Face.SerifBold, 13);
    private static readonly TextStyle NumeralStyle = new(Face.Serif, 10.5);
    private static readonly TextStyle FretStyle = new(Face.SansBold, 10);
    private static readonly TextStyle CapoStyle = new(Face.SansBold, TextStyle.SmallestSize);

    private readonly Exhibit _exhibit;
    private readonly Shape _shape;
    private readonly ChordGrip _grip;
    private readonly Instrument _instrument;
    private readonly int _frets;
    private readonly double _widening;

    /// <summary>Prepares a box.</summary>
    /// <param name="exhibit">Where the shape belongs.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="frets">How many frets to draw, the same for all boxes of a row.</param>
    public ChordBox(Exhibit exhibit, Shape shape, int frets)
    {
        _exhibit = exhibit;
        _shape = shape;
        _instrument = exhibit.Map.Instrument;
        _grip = new ChordGrip(_instrument, shape);
        _frets = frets;
        _widening = WideningOf(exhibit);
    }

    private double GridTop => HeadHeight(_exhibit) + SignsHeight;

    private double SignsY => GridTop - SignsHeight / 2 - 1;

    /// <summary>The width of a box of an instrument, with room for the fret number or capo and for the longest name.</summary>
    public static double WidthOf(Exhibit exhibit)
    {
        var instrument = exhibit.Map.Instrument;
        var side = SideWidth(exhibit);
        var widening = WideningOf(exhibit);
        return Math.Max(
            side + GridWidth(instrument, widening) + FarSideWidth(exhibit) + 2 * widening,
            (exhibit.Shapes ?? [])
                .Select(shape => NameStyle.WidthOf(NameOf(exhibit, shape)) + side)
                .DefaultIfEmpty(0)
                .Max()
        );
    }

    /// <summary>The height of the boxes of an exhibit with so many frets.</summary>
    public static double HeightOf(Exhibit exhibit, int frets) =>
        HeadHeight(exhibit) + SignsHeight + frets * ChordBoxGround.FretHeight + TuningHeight + 4;

    public Node.Group Draw(double width)
    {
        var gridWidth = GridWidth(_instrument, _widening);
        var side = SideWidth(_exhibit);
        var gridLeft = (width - side - gridWidth - FarSideWidth(_exhibit)) / 2 + side;
        var ground = new ChordBoxGround(_exhibit, _grip, _frets)
        {
            Left = gridLeft,
            Top = GridTop,
            StringGap = StringGap(_widening),
        };
        var nodes = Head(gridLeft + gridWidth / 2).Concat(ground.All).Concat(Aside(gridLeft)).Concat(Signs(ground));
        if (_exhibit.IsLeftHanded)
        {
            nodes = nodes.Select(node => node.Placed(Placement.Mirrored(width)));
        }

        return new Node.Group(NameOf(_exhibit, _shape), nodes.ToValueList());
    }

    /// <summary>The chord symbol; with the bass where inversions were asked for.</summary>
    public static string NameOf(Exhibit exhibit, Shape shape) =>
        exhibit.AsksForInversions ? CardWords.SymbolOf(shape) : Accidentals.Pretty(shape.Source.Name);

    /// <summary>Room for the names, and for the numerals below them where there are any.</summary>
    private static double HeadHeight(Exhibit exhibit) =>
        (exhibit.Shapes ?? []).Any(shape => shape.Source is ShapeSource.OfChord { Roman: not null }) ? 32 : 22;

    private static bool AreAtTheNut(Exhibit exhibit) =>
        exhibit.Map.Instrument.Capo == 0
        && (exhibit.Shapes ?? []).All(shape => new ChordGrip(exhibit.Map.Instrument, shape).FirstFret == 1);

    /// <summary>Room for a fret number or the capo at the left of every box; where none has one, boxes begin with the text.</summary>
    private static double SideWidth(Exhibit exhibit) =>
        AreAtTheNut(exhibit) ? OtherSideWidth
        : exhibit.Map.Instrument.Capo > 0
            ? Math.Max(FretNumberWidth, CapoStyle.WidthOf(Capo(exhibit.Map.Instrument)) + 12)
        : FretNumberWidth;

    private static double FarSideWidth(Exhibit exhibit) => OtherSideWidth + (AreAtTheNut(exhibit) ? BetweenBoxes : 0);

    private static string Capo(Instrument instrument) => $"capo {Wording.Number(instrument.Capo)}";

    private IEnumerable<Node> Head(double middle)
    {
        var roman = (_shape.Source as ShapeSource.OfChord)?.Roman;
        yield return new Node.Label(
            middle,
            roman is null ? HeadHeight(_exhibit) - 10 : 13,
            NameOf(_exhibit, _shape),
            NameStyle,
            Tone.Ink,
            Anchor.Middle
        );
        if (roman is not null)
        {
            yield return new Node.Label(middle, 27, Wording.Numeral(roman), NumeralStyle, Tone.Quiet, Anchor.Middle);
        }
    }

    /// <summary>Beside the grid: where the capo sits, and the number of the first fret unless it is 1.</summary>
    private IEnumerable<Node> Aside(double left)
    {
        if (_instrument.Capo > 0)
        {
            yield return new Node.Label(
                left - _widening - 9,
                GridTop + 2,
                Capo(_instrument),
                CapoStyle,
                Tone.Ink,
                Anchor.End
            );
        }

        if (_grip.FirstFret > 1)
        {
            yield return new Node.Label(
                left - Radius - _widening - 4,
                GridTop + ChordBoxGround.FretHeight / 2 + 3.4,
                Wording.Number(_grip.FirstFret),
                FretStyle,
                Tone.Ink,
                Anchor.End
            );
        }
    }

    private IEnumerable<Node> Signs(ChordBoxGround ground)
    {
        if (_grip.Barre is { } barre)
        {
            var (far, near) = (ground.StringX(barre.Far), ground.StringX(barre.Near));
            var y = ground.FretY(_grip.Lowest);
            yield return new Node.Rect(far, y - 4, near - far, 8, Tone.Ink, Corner: 4);
        }

        for (var number = 1; number <= _instrument.Strings.Count; number++)
        {
            var notes = _shape.Notes.Where(note => note.Spot.String == number).ToList();
            if (notes.Count == 0)
            {
                yield return Cross(ground.StringX(number), SignsY);
            }

            foreach (var note in notes)
            {
                yield return Dot(note, ground);
            }
        }
    }

    private Node.Group Dot(ShapeNote note, ChordBoxGround ground)
    {
        var x = ground.StringX(note.Spot.String);
        var isOpen = _instrument.IsOpen(note.Spot);
        var y = isOpen ? SignsY : ground.FretY(note.Spot.Fret);
        var label = _exhibit.LabelOf(note.Pitch, note.Degree, note.Member);
        var style = DotStyle(label);
        return new Node.Group(
            isOpen ? "open" : "dot",
            [
                Disc.For(x, y, Radius, label, style)
                    .Drawn(Radius, isOpen ? Tone.Paper : Tone.Ink, new Stroke(Tone.Ink, 1)),
                new Node.Label(x, y + 0.325 * style.Size, label, style, isOpen ? Tone.Ink : Tone.Paper, Anchor.Middle),
            ]
        );
    }

    private static double GridWidth(Instrument instrument, double widening) =>
        (instrument.Strings.Count - 1) * StringGap(widening);

    /// <summary>Two marks side by side leave air between them.</summary>
    private static double StringGap(double widening) => 2 * (Radius + widening) + BetweenDots;

    /// <summary>How much wider than a circle the widest dot of an exhibit is, on either side.</summary>
    private static double WideningOf(Exhibit exhibit) =>
        (exhibit.Shapes ?? [])
            .SelectMany(shape => shape.Notes)
            .Select(note => exhibit.LabelOf(note.Pitch, note.Degree, note.Member))
            .Distinct()
            .Select(label => Disc.For(0, 0, Radius, label, DotStyle(label)).Widening)
            .DefaultIfEmpty(0)
            .Max();

    private static TextStyle DotStyle(string label) =>
        new(Face.SansBold, label.Length > 1 ? TextStyle.SmallestSize : 9.5);

    private static Node.Path Cross(double x, double y) =>
        new(
            [
                PathStep.MoveTo(x - 4, y - 4),
                PathStep.LineTo(x + 4, y + 4),
                PathStep.MoveTo(x - 4, y + 4),
                PathStep.LineTo(x + 4, y - 4),
            ],
            Tone.None,
            new Stroke(Tone.Ink, 1.3, IsRound: true)
        );
}
