using Fretloom.Exhibits;
using Fretloom.Hand;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>One shape on a card: heading, its part of the neck, fret numbers, stretch and span.</summary>
internal sealed class Card
{
    private const double LineHeight = 10.5;

    private static readonly TextStyle Number = CardLayout.SpanStyle;
    private static readonly TextStyle BoldNumber = CardLayout.NumberStyle;

    private readonly Exhibit _exhibit;
    private readonly Shape _shape;
    private readonly ShapeLabels _labels;
    private readonly CardLayout _layout;
    private readonly NeckFrame _frame;
    private readonly bool _isChosen;
    private readonly double _height;
    private readonly double _spanTop;

    public Card(Exhibit exhibit, Shape shape, CardLayout layout, bool isChosen)
    {
        _exhibit = exhibit;
        _shape = shape;
        _labels = new ShapeLabels(exhibit, shape);
        _layout = layout;
        _isChosen = isChosen;
        _height = HeightOf(exhibit, layout);
        var measures = Measures.Card;
        var left = layout.LeftOf(exhibit.Map.Instrument, shape);
        var top = CardHeading.Height + measures.Overhang;
        _frame = new NeckFrame(exhibit.Map, CardLayout.FretsOf(shape), measures, left, top, layout.Scale);
        _spanTop = NumbersY + LowestLevel(exhibit, layout) * CardLayout.LevelHeight;
    }

    /// <summary>The height of every card of an exhibit.</summary>
    public static double HeightOf(Exhibit exhibit, CardLayout layout) =>
        CardHeading.Height
        + exhibit.Map.Strings.Count * Measures.Card.Spacing
        + 46
        + LowestLevel(exhibit, layout) * CardLayout.LevelHeight
        + (exhibit.InHand.Any(one => WideSign.Words(one).Length > 0) ? LineHeight : 0);

    private static int LowestLevel(Exhibit exhibit, CardLayout layout) =>
        (exhibit.Shapes ?? [])
            .SelectMany(shape => layout.LevelsOf(exhibit.Map.Instrument, shape))
            .DefaultIfEmpty(0)
            .Max();

    public Node.Group Draw()
    {
        var neck = Neck().ToValueList();
        if (_exhibit.IsLeftHanded)
        {
            var mirror = Placement.Mirrored(_layout.CardWidth);
            neck = neck.Select(node => node.Placed(mirror)).ToValueList();
        }

        var tone = _isChosen ? Tone.Focus : Tone.Ink;
        return new Node.Group(
            CardHeading.LargeText(_shape),
            Frame()
                .Concat(
                    CardHeading.Draw(_shape, CardLayout.Padding / 2, _layout.CardWidth - CardLayout.Padding / 2, tone)
                )
                .Concat(neck)
                .ToValueList()
        );
    }

    /// <summary>Around the card in focus: a bar above and a running stitch, which are seen without colour too.</summary>
    private IEnumerable<Node> Frame()
    {
        if (_isChosen)
        {
            var (width, height) = (_layout.CardWidth - 2, _height);
            yield return new Node.Rect(1, -2, width, height, Tone.None, new Stroke(Tone.Focus, 0.9, Dash.Stitch), 3);
            yield return new Node.Rect(1, -4, width, 2.6, Tone.Focus);
        }
    }

    private IEnumerable<Node> Neck()
    {
        var ground = new NeckGround(_exhibit.Map, _frame);
        var threads = Threads().ToList();
        var fingers = new FingerNumerals([.. _shape.Notes.Select(Finger)], [.. threads.Select(ThreadLine.Course)]);
        return ground
            .Frets.Concat(ground.Strings)
            .Concat(threads)
            .Concat(fingers.Halos)
            .Concat(_shape.Notes.Select(Mark))
            .Concat(fingers.Numerals)
            .Concat(FretNumbers())
            .Concat(Span());
    }

    private IEnumerable<Node.Group> Threads()
    {
        if (_shape.Source is ShapeSource.OfScale)
        {
            yield break;
        }

        var kind = _isChosen ? MarkKind.Chosen : MarkKind.OfChord;
        foreach (var (one, other) in _shape.Notes.Zip(_shape.Notes.Skip(1)))
        {
            var (x1, y1) = _frame.PointOf(one.Spot);
            var (x2, y2) = _frame.PointOf(other.Spot);
            if (ThreadLine.Between(one.Pitch, other.Pitch, kind) is { } thread)
            {
                yield return thread.Drawn(x1, y1, x2, y2, _frame.Measures);
            }
        }
    }

    private Node Mark(ShapeNote note)
    {
        var (x, y) = _frame.PointOf(note.Spot);
        return MarkOf(note).DrawnAt(x, y, _frame.Measures);
    }

    private Mark MarkOf(ShapeNote note)
    {
        var isRoot = note.Member == "1" && _shape.Source is ShapeSource.OfChord;
        var kind = _isChosen ? MarkKind.Chosen : MarkKind.OfChord;
        return new Mark(_labels.On(note), kind, note.Degree == new Degree(1), isRoot)
        {
            IsSolid = !_labels.IsHollow(note),
        };
    }

    private (double X, double Y, double Radius, string Finger) Finger(ShapeNote note)
    {
        var (x, y) = _frame.PointOf(note.Spot);
        return (x, y, MarkOf(note).RadiusOf(_frame.Measures), _labels.Beside(note));
    }

    private double NumbersY => _frame.EdgeBottom + 11;

    private List<int> Levels => _layout.LevelsOf(_exhibit.Map.Instrument, _shape);

    /// <summary>The number of every fret played.</summary>
    private IEnumerable<Node> FretNumbers()
    {
        var frets = CardLayout.PlayedFrets(_shape);
        var lowest = frets.Find(fret => fret > 0);
        return frets.Zip(
            Levels,
            (fret, level) =>
                new Node.Label(
                    _frame.FretX(fret),
                    NumbersY + level * CardLayout.LevelHeight,
                    Wording.Number(fret),
                    fret == lowest ? BoldNumber : Number,
                    fret == lowest ? Tone.Ink : Tone.Quiet,
                    Anchor.Middle
                )
        );
    }

    /// <summary>
    /// The line between the outermost landing points with its length, and the span below; for a single fret the span alone.
    /// A stretch that is wide for the hand is drawn and named so.
    /// </summary>
    private IEnumerable<Node> Span()
    {
        var (stretch, span) = CardWords.SpanOf(_shape);
        var wide = WideSign.Words(_labels.InHand);
        var (left, right) = Stretch();
        var below = 8.0;
        if (stretch.Length > 0)
        {
            foreach (var node in StretchLine(left, right))
            {
                yield return node;
            }

            yield return Centred(stretch, below += LineHeight, BoldNumber, Tone.Ink);
        }

        if (wide.Length > 0)
        {
            yield return Centred(wide, below += LineHeight, BoldNumber, Tone.Ink);
        }

        yield return Centred(span, below + LineHeight, Number, Tone.Quiet);

        Node.Label Centred(string text, double below, TextStyle style, Tone tone)
        {
            var margin = style.WidthOf(text) / 2 + 2.5;
            var x = Math.Clamp((left + right) / 2, margin, Math.Max(margin, _layout.CardWidth - margin));
            return new Node.Label(x, _spanTop + below, text, style, tone, Anchor.Middle);
        }
    }

    private IEnumerable<Node> StretchLine(double left, double right)
    {
        var y = _spanTop + 7.5;
        return WideSign.LandingsMm(_labels.InHand, _exhibit.Map.Instrument) is var (lower, higher)
            ? WideSign
                .Plain(left, right, y)
                .Concat(
                    WideSign.Wide(
                        _frame.MillimetreX(lower),
                        _frame.MillimetreX(higher),
                        y,
                        _labels.Width == Width.VeryWide
                    )
                )
            : WideSign.Plain(left, right, y - 0.5);
    }

    /// <summary>Where the fingers land at the lowest and the highest fret; the middle of the neck when all strings are open.</summary>
    private (double Left, double Right) Stretch()
    {
        var frets = _shape.Spots.Select(spot => spot.Fret).Where(fret => fret > 0).ToList();
        var instrument = _exhibit.Map.Instrument;
        return frets.Count == 0
            ? (_frame.FretX(0), _frame.FretX(0))
            : (
                _frame.MillimetreX(instrument.LandingMm(frets.Min())),
                _frame.MillimetreX(instrument.LandingMm(frets.Max()))
            );
    }
}
