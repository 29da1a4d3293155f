using Fretloom.Exhibits;
using Fretloom.Hand;
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
    private const double FingersHeight = 12;
    private const double WideHeight = 23;

    private static readonly TextStyle NameStyle = new(Face.SerifBold, 13);
    private static readonly TextStyle NumeralStyle = new(Face.Serif, 10.5);
    private static readonly TextStyle FretStyle = new(Face.SansBold, 10);
    private static readonly TextStyle CapoStyle = new(Face.SansBold, TextStyle.SmallestSize);
    private static readonly TextStyle WideStyle = new(Face.SansBold, TextStyle.SmallestSize);
    private static readonly TextStyle FingerStyle = new(Face.SansBold, 10);

    private readonly Exhibit _exhibit;
    private readonly Shape _shape;
    private readonly ShapeLabels _labels;
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
        _labels = new ShapeLabels(exhibit, shape);
        _grip = GripOf(exhibit, shape);
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
        var names = (exhibit.Shapes ?? []).Select(shape => NameStyle.WidthOf(NameOf(exhibit, shape)) + side);
        var widths = exhibit.InHand.Select(one => WideStyle.WidthOf(WideSign.Words(one)) + side + BetweenBoxes);
        return names
            .Concat(widths)
            .Append(side + GridWidth(instrument, widening) + FarSideWidth(exhibit) + 2 * widening)
            .Max();
    }

    /// <summary>How a shape is gripped.</summary>
    public static ChordGrip GripOf(Exhibit exhibit, Shape shape) =>
        new(exhibit.Map.Instrument, shape, new ShapeLabels(exhibit, shape).Fingering);

    /// <summary>The height of the boxes of an exhibit with so many frets.</summary>
    public static double HeightOf(Exhibit exhibit, int frets) =>
        HeadHeight(exhibit) + SignsHeight + frets * ChordBoxGround.FretHeight + BelowHeight(exhibit) + 4;

    private static double TuningDrop(Exhibit exhibit) => 11 + (exhibit.HasFingersBeside() ? FingersHeight : 0);

    /// <summary>What stands below the grid: fingers, open strings, and what is wide for the hand.</summary>
    private static double BelowHeight(Exhibit exhibit) =>
        TuningDrop(exhibit) + 3 + (exhibit.InHand.Any(one => WideSign.Words(one).Length > 0) ? WideHeight : 0);

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
            TuningDrop = TuningDrop(_exhibit),
        };
        var middle = gridLeft + gridWidth / 2;
        var nodes = Head(middle)
            .Concat(ground.All)
            .Concat(Aside(gridLeft))
            .Concat(Signs(ground))
            .Concat(FingersBelow(ground))
            .Concat(Wide(middle, ground.Bottom + TuningDrop(_exhibit)));
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
        exhibit.Map.Instrument.Capo == 0 && (exhibit.Shapes ?? []).All(shape => GripOf(exhibit, shape).FirstFret == 1);

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
            yield return new Node.Label(middle, 27, roman.ToPrinted(), NumeralStyle, Tone.Quiet, Anchor.Middle);
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
        foreach (var bar in _grip.Bars)
        {
            yield return Across(bar, ground);
        }

        for (var number = 1; number <= _instrument.Strings.Count; number++)
        {
            var notes = _shape.Notes.Where(note => note.Spot.String == number).ToList();
            if (notes.Count == 0)
            {
                yield return Cross(ground.StringX(number), SignsY);
            }

            foreach (var note in notes.Where(note => !IsPartOfBar(note)))
            {
                yield return Dot(note, ground);
            }
        }
    }

    /// <summary>One finger across strings: a narrow bar below the marks; where fingers stand inside, one long mark.</summary>
    private Node.Group Across(Bar bar, ChordBoxGround ground)
    {
        var (far, near) = (ground.StringX(bar.Far), ground.StringX(bar.Near));
        var y = ground.FretY(bar.Fret);
        return new Node.Group(
            "barre",
            IsBarOneMark
                ?
                [
                    new Node.Rect(
                        far - Radius,
                        y - Radius,
                        near - far + 2 * Radius,
                        2 * Radius,
                        Tone.Ink,
                        Corner: Radius
                    ),
                    LabelAt(far, y, bar.Finger.ToLabel(), Tone.Paper),
                ]
                : [new Node.Rect(far, y - 4, near - far, 8, Tone.Ink, Corner: 4)]
        );
    }

    private bool IsBarOneMark => _exhibit.HasFingersInside() && _labels.Fingering is not null;

    private bool IsPartOfBar(ShapeNote note) =>
        IsBarOneMark
        && _grip.Bars.Any(bar => bar.Fret == note.Spot.Fret && bar.Finger == _labels.Fingering?.FingerAt(note.Spot));

    private Node.Group Dot(ShapeNote note, ChordBoxGround ground)
    {
        var x = ground.StringX(note.Spot.String);
        var isOpen = _instrument.IsOpen(note.Spot);
        var y = isOpen ? SignsY : ground.FretY(note.Spot.Fret);
        var label = _labels.On(note);
        var disc = Disc.For(x, y, Radius, label, DotStyle(label))
            .Drawn(Radius, isOpen ? Tone.Paper : Tone.Ink, new Stroke(Tone.Ink, 1));
        return new Node.Group(
            isOpen ? "open" : "dot",
            label.Length == 0 ? [disc] : [disc, LabelAt(x, y, label, isOpen ? Tone.Ink : Tone.Paper)]
        );
    }

    private static Node.Label LabelAt(double x, double y, string label, Tone tone)
    {
        var style = DotStyle(label);
        return new Node.Label(x, y + 0.325 * style.Size, label, style, tone, Anchor.Middle);
    }

    /// <summary>The fingers beside the labels: a row below the strings.</summary>
    private IEnumerable<Node> FingersBelow(ChordBoxGround ground) =>
        from note in _shape.Notes
        let finger = _labels.Beside(note)
        where finger.Length > 0
        select new Node.Label(
            ground.StringX(note.Spot.String),
            ground.Bottom + 12,
            finger,
            FingerStyle,
            Tone.Ink,
            Anchor.Middle
        );

    /// <summary>Below the open strings: that the shape is wide for the hand.</summary>
    private IEnumerable<Node> Wide(double middle, double tuningY)
    {
        var words = WideSign.Words(_labels.InHand);
        if (words.Length > 0)
        {
            yield return WideSign.Sample(middle, tuningY + 9, _labels.Width);
            yield return new Node.Label(middle, tuningY + 22, words, WideStyle, Tone.Ink, Anchor.Middle);
        }
    }

    private static double GridWidth(Instrument instrument, double widening) =>
        (instrument.Strings.Count - 1) * StringGap(widening);

    /// <summary>Two marks side by side leave air between them.</summary>
    private static double StringGap(double widening) => 2 * (Radius + widening) + BetweenDots;

    /// <summary>How much wider than a circle the widest dot of an exhibit is, on either side.</summary>
    private static double WideningOf(Exhibit exhibit) =>
        (exhibit.Shapes ?? [])
            .SelectMany(shape => shape.Notes.Select(new ShapeLabels(exhibit, shape).On))
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
