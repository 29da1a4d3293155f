using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>A chord box: all strings of the instrument downward, frets across, X and O on top, the name above.</summary>
internal sealed class ChordBox
{
    public const double HeadHeight = 32;

    private const double FretHeight = 22;
    private const double Radius = 6.6;
    private const double BetweenDots = 1.8;
    private const double FretNumberWidth = 22;
    private const double OtherSideWidth = 9;
    private const double SignsHeight = 18;

    private static readonly TextStyle NameStyle = new(Face.SerifBold, 13);
    private static readonly TextStyle NumeralStyle = new(Face.Serif, 10.5);
    private static readonly TextStyle FretStyle = new(Face.SansBold, 10);

    private readonly Exhibit _exhibit;
    private readonly Shape _shape;
    private readonly ChordGrip _grip;
    private readonly int _frets;
    private readonly int _strings;
    private readonly double _widening;
    private readonly double _stringGap;

    /// <summary>Prepares a box.</summary>
    /// <param name="exhibit">Where the shape belongs.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="frets">How many frets to draw, the same for all boxes of a row.</param>
    public ChordBox(Exhibit exhibit, Shape shape, int frets)
    {
        _exhibit = exhibit;
        _shape = shape;
        _grip = new ChordGrip(exhibit.Map.Instrument, shape);
        _frets = frets;
        _strings = exhibit.Map.Instrument.Strings.Count;
        _widening = WideningOf(exhibit);
        _stringGap = StringGap(_widening);
    }

    private static double GridTop => HeadHeight + SignsHeight;

    private double GridBottom => GridTop + _frets * FretHeight;

    /// <summary>The width of a box of an instrument, with room for the fret number and for the longest name.</summary>
    public static double WidthOf(Exhibit exhibit)
    {
        var widening = WideningOf(exhibit);
        var gaps = exhibit.Map.Instrument.Strings.Count - 1;
        return Math.Max(
            FretNumberWidth + gaps * StringGap(widening) + OtherSideWidth + 2 * widening,
            (exhibit.Shapes ?? [])
                .Select(shape => NameStyle.WidthOf(NameOf(shape)) + FretNumberWidth)
                .DefaultIfEmpty(0)
                .Max()
        );
    }

    /// <summary>The height of a box with so many frets.</summary>
    public static double HeightOf(int frets) => HeadHeight + SignsHeight + frets * FretHeight + 6;

    public Node.Group Draw(double width)
    {
        var gridWidth = (_strings - 1) * _stringGap;
        var gridLeft = (width - FretNumberWidth - gridWidth - OtherSideWidth) / 2 + FretNumberWidth;
        var nodes = Head(gridLeft + gridWidth / 2).Concat(Grid(gridLeft)).ToList();
        if (_exhibit.IsLeftHanded)
        {
            nodes = nodes.ConvertAll(node => node.Placed(Placement.Mirrored(width)));
        }

        return new Node.Group(NameOf(_shape), nodes.ToValueList());
    }

    public static string NameOf(Shape shape) => Accidentals.Pretty(shape.Source.Name);

    private IEnumerable<Node> Head(double middle)
    {
        var roman = (_shape.Source as ShapeSource.OfChord)?.Roman;
        yield return new Node.Label(
            middle,
            roman is null ? 22 : 13,
            NameOf(_shape),
            NameStyle,
            Tone.Ink,
            Anchor.Middle
        );
        if (roman is not null)
        {
            yield return new Node.Label(middle, 27, Wording.Numeral(roman), NumeralStyle, Tone.Quiet, Anchor.Middle);
        }
    }

    /// <summary>The grid as a right-handed player holds it: the string nearest the floor on the right.</summary>
    private IEnumerable<Node> Grid(double left)
    {
        var right = left + (_strings - 1) * _stringGap;
        for (var fret = _grip.FirstFret == 1 ? 1 : 0; fret <= _frets; fret++)
        {
            var y = GridTop + fret * FretHeight;
            yield return new Node.Line(left, y, right, y, new Stroke(Tone.Line, 0.8));
        }

        for (var number = 1; number <= _strings; number++)
        {
            foreach (var node in StringLine(left, number))
            {
                yield return node;
            }
        }

        if (_grip.FirstFret == 1)
        {
            yield return new Node.Rect(left - 0.6, GridTop - 2.6, right - left + 1.2, 3.2, Tone.Ink);
        }
        else
        {
            var baseline = GridTop + FretHeight / 2 + 3.4;
            yield return new Node.Label(
                left - Radius - _widening - 4,
                baseline,
                Wording.Number(_grip.FirstFret),
                FretStyle,
                Tone.Ink,
                Anchor.End
            );
        }

        foreach (var node in Signs(left))
        {
            yield return node;
        }
    }

    private IEnumerable<Node> StringLine(double left, int number)
    {
        var start = _exhibit.Map.Instrument.String(number).StartsAtFret - (_grip.FirstFret - 1);
        if (start < _frets)
        {
            var x = StringX(left, number);
            var top = GridTop + Math.Max(0, start) * FretHeight;
            var width = 0.7 + 0.9 * (number - 1) / Math.Max(3, _strings - 1);
            yield return new Node.Line(x, top, x, GridBottom, new Stroke(Tone.Ink, width));
        }
    }

    private IEnumerable<Node> Signs(double left)
    {
        if (_grip.Barre is { } barre)
        {
            var (far, near) = (StringX(left, barre.Far), StringX(left, barre.Near));
            var y = FretY(_grip.Lowest);
            yield return new Node.Rect(far, y - 4, near - far, 8, Tone.Ink, Corner: 4);
        }

        for (var number = 1; number <= _strings; number++)
        {
            var notes = _shape.Notes.Where(note => note.Spot.String == number).ToList();
            if (notes.Count == 0)
            {
                yield return Cross(StringX(left, number), GridTop - SignsHeight / 2 - 1);
            }

            foreach (var note in notes)
            {
                yield return Dot(note, left);
            }
        }
    }

    private Node.Group Dot(ShapeNote note, double left)
    {
        var x = StringX(left, note.Spot.String);
        var isOpen = _exhibit.Map.Instrument.IsOpen(note.Spot);
        var y = isOpen ? GridTop - SignsHeight / 2 - 1 : FretY(note.Spot.Fret);
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

    private static double StringGap(double widening) => 2 * (Radius + widening) + BetweenDots;

    /// <summary>How much wider than a circle the widest dot of an exhibit is, on either side: neighbours must not touch.</summary>
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

    private double StringX(double left, int number) => left + (_strings - number) * _stringGap;

    private double FretY(int fret) => GridTop + (fret - _grip.FirstFret + 0.5) * FretHeight;
}
