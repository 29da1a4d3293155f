using System.Globalization;
using Fretloom.Neck;
using Fretloom.Pages.Scene;
using Fretloom.Shapes;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>One row of a neck, layer upon layer: columns, bands, frets, strings, threads, marks, and what stands around them.</summary>
internal sealed class NeckLayers(NeckContent content, NeckFrame frame)
{
    private static readonly TextStyle Number = new(Face.Sans, 9);
    private static readonly TextStyle BoldNumber = new(Face.SansBold, 9);

    private readonly Measures _measures = frame.Measures;
    private readonly Instrument _instrument = content.Map.Instrument;

    /// <summary>Baseline of the fret numbers.</summary>
    public double NumbersY => frame.EdgeBottom + 4 + _measures.TickHeight + 11;

    /// <summary>Everything, in drawing order.</summary>
    public IEnumerable<Node> All =>
        new Node.Group[]
        {
            new("columns", Columns().ToValueList()),
            new("bands", content.Chosen.SelectMany(Bands).ToValueList()),
            new("frets", Frets().ToValueList()),
            new("strings", Strings().ToValueList()),
            new("axes", Axes().ToValueList()),
            new("threads", Threads().ToValueList()),
            new("marks", Marks().ToValueList()),
            new("string names", Names().ToValueList()),
            new("fret numbers", Numbers().ToValueList()),
        }.Where(group => group.Children.Count > 0);

    private IEnumerable<int> FullFrets => (content.Landmarks?.FullFrets ?? []).Where(frame.Frets.Contains);

    private IEnumerable<int> EmptyFrets => (content.Landmarks?.EmptyFrets ?? []).Where(frame.Frets.Contains);

    private IEnumerable<double> Centres =>
        content.HalfTurnCentres.Where(centre => centre >= frame.Frets.First - 0.5 && centre <= frame.Frets.Last + 0.5);

    private IEnumerable<Node> Columns() =>
        FullFrets.Select(fret => Column(fret, Tone.Full)).Concat(EmptyFrets.Select(fret => Column(fret, Tone.Empty)));

    private Node.Rect Column(int fret, Tone tone)
    {
        var (left, right) = frame.ColumnOf(fret);
        return new Node.Rect(left, frame.EdgeTop, right - left, frame.EdgeBottom - frame.EdgeTop, tone);
    }

    private IEnumerable<Node> Bands(Shape shape)
    {
        var runs = shape.Source is ShapeSource.OfScale
            ? shape.Notes.GroupBy(note => note.Spot.String).Select(run => run.Select(note => note.Spot).ToList())
            : [[.. shape.Spots]];
        foreach (var run in runs.Where(run => run.TrueForAll(frame.Contains)))
        {
            yield return new Node.Path(
                BandOutline.Around(run.ConvertAll(frame.PointOf), _measures.BandRadius),
                Tone.Band,
                new Stroke(Tone.Focus, _measures.StitchLine, Dash.Stitch)
            );
        }
    }

    private IEnumerable<Node> Frets()
    {
        foreach (var wire in frame.Wires)
        {
            yield return Wire(wire);
        }

        foreach (var fret in frame.Frets.Frets.Where(fret => fret > 0))
        {
            foreach (var dot in InlayDots(fret))
            {
                yield return dot;
            }
        }

        yield return !frame.HasNut ? Wire(frame.FirstWire)
            : _instrument.Capo > 0 ? Capo()
            : new Node.Rect(
                frame.Left - _measures.NutWidth / 2,
                frame.EdgeTop,
                _measures.NutWidth,
                frame.EdgeBottom - frame.EdgeTop,
                Tone.Ink
            );
    }

    private Node.Line Wire(int wire)
    {
        var x = frame.WireX(wire);
        return new Node.Line(x, frame.EdgeTop, x, frame.EdgeBottom, new Stroke(Tone.Line, _measures.FretLine));
    }

    private IEnumerable<Node> InlayDots(int fret)
    {
        var count = Inlays.CountAt(_instrument, fret);
        for (var dot = 0; dot < count; dot++)
        {
            var x = frame.FretX(fret) + (dot - (count - 1) / 2.0) * 6;
            yield return new Node.Circle(x, NumbersY + 5.5, 1.6, Tone.Line);
        }
    }

    private Node.Rect Capo()
    {
        var width = 2.2 * _measures.NutWidth;
        return new Node.Rect(
            frame.Left - width / 2,
            frame.EdgeTop - 3,
            width,
            frame.EdgeBottom - frame.EdgeTop + 6,
            Tone.Ink,
            Corner: width / 2
        );
    }

    private IEnumerable<Node> Strings()
    {
        var numbers = content.Map.Strings.Numbers;
        for (var at = 0; at < numbers.Count; at++)
        {
            var number = numbers[at];
            var start = _instrument.String(number).StartsAtFret;
            if (start > frame.Frets.Last)
            {
                continue;
            }

            var y = frame.StringY(number);
            var isShort = start > 0 && start > frame.FirstWire;
            var left = isShort ? frame.WireX(start) : frame.HasNut ? frame.Left : frame.Left - _measures.Overhang / 2;
            var line = new Stroke(Tone.Ink, _measures.StringLine(numbers.Count - 1 - at, numbers.Count));
            yield return new Node.Line(left, y, frame.Right + _measures.Overhang / 2, y, line);
            if (isShort)
            {
                yield return new Node.Rect(
                    left - _measures.NutWidth / 2,
                    y - _measures.Overhang / 2,
                    _measures.NutWidth,
                    _measures.Overhang,
                    Tone.Ink
                );
            }
        }
    }

    private IEnumerable<Node> Axes()
    {
        var middle = (frame.Top + frame.Bottom) / 2;
        foreach (var centre in Centres)
        {
            var x = frame.PlaceX(centre);
            var top = frame.EdgeTop - 3 - Emblem.HalfTurnHeight / 2;
            yield return new Node.Line(x, top, x, middle, new Stroke(Tone.Ink, 0.9, Dash.Axis));
            yield return new Node.Circle(x, middle, 2.2, Tone.Ink, new Stroke(Tone.Paper, 1));
            yield return Emblem.HalfTurn(x, top);
        }
    }

    private IEnumerable<Node> Threads()
    {
        var ofKey = (content.Landmarks?.Thirds ?? []).Select(third => (third.Lower, third.Upper, Kind: content.KindOf(third)));
        var drawn = ofKey.OrderBy(third => third.Kind).ToList();
        var known = drawn.Select(third => (third.Lower.Spot, third.Upper.Spot)).ToHashSet();
        foreach (var (lower, upper, kind) in drawn)
        {
            if (Thread(lower.Spot, lower.Pitch, upper.Spot, upper.Pitch, kind) is { } thread)
            {
                yield return thread;
            }
        }

        foreach (var (one, other) in content.Chosen.SelectMany(Neighbours))
        {
            var isKnown = known.Contains((one.Spot, other.Spot)) || known.Contains((other.Spot, one.Spot));
            if (!isKnown && Thread(one.Spot, one.Pitch, other.Spot, other.Pitch, MarkKind.Chosen) is { } thread)
            {
                yield return thread;
            }
        }
    }

    private static IEnumerable<(ShapeNote One, ShapeNote Other)> Neighbours(Shape shape) =>
        shape.Source is ShapeSource.OfScale ? [] : shape.Notes.Zip(shape.Notes.Skip(1));

    /// <summary>The thread between two spots, cut off at the end of the row; null when it lies outside or is no third.</summary>
    private Node.Group? Thread(Spot one, Pitch onePitch, Spot other, Pitch otherPitch, MarkKind kind)
    {
        if (!frame.Contains(one) && !frame.Contains(other))
        {
            return null;
        }

        var (x1, y1) = frame.PointOf(one);
        var (x2, y2) = frame.PointOf(other);
        if (!frame.Contains(one))
        {
            (x1, y1) = CutOff(x2, y2, x1, y1);
        }
        else if (!frame.Contains(other))
        {
            (x2, y2) = CutOff(x1, y1, x2, y2);
        }

        return ThreadLine.Between(onePitch, otherPitch, kind)?.Drawn(x1, y1, x2, y2, _measures);
    }

    private (double X, double Y) CutOff(double fromX, double fromY, double toX, double toY)
    {
        var edge = Math.Clamp(toX, frame.Left - _measures.Overhang / 2, frame.Right + _measures.Overhang / 2);
        var share = toX == fromX ? 1 : (edge - fromX) / (toX - fromX);
        return (edge, fromY + share * (toY - fromY));
    }

    private IEnumerable<Node> Marks()
    {
        foreach (var note in content.Notes.Where(note => frame.Contains(note.Spot)).OrderBy(content.KindOf))
        {
            var (x, y) = frame.PointOf(note.Spot);
            yield return content.MarkOf(note).DrawnAt(x, y, _measures);
        }
    }

    private IEnumerable<Node> Names()
    {
        var right = frame.HasOpenStrings
            ? frame.FretX(0) - _measures.RingRadius - 5
            : frame.Left - _measures.Overhang / 2 - 4;
        var name = new TextStyle(Face.SansBold, 10);
        foreach (var number in content.Map.Strings.Numbers)
        {
            var y = frame.StringY(number) + 3.3;
            var note = Accidentals.Pretty(_instrument.String(number).Open.Name.ToString());
            yield return new Node.Label(right - 14, y, note, name, Tone.Ink, Anchor.Start);
            yield return new Node.Label(right - 17, y, Text(number), Number, Tone.Quiet, Anchor.End);
        }

        if (_instrument.Capo > 0 && frame.HasNut)
        {
            yield return new Node.Label(
                frame.Left,
                frame.EdgeTop - 6,
                $"capo {Text(_instrument.Capo)}",
                BoldNumber,
                Tone.Ink,
                Anchor.Middle
            );
        }

        if (content.Landmarks?.Hinge is { } hinge)
        {
            yield return Emblem.Hinge(
                frame.Right + _measures.Overhang / 2 + 7,
                frame.StringY(hinge.Far),
                frame.StringY(hinge.Near)
            );
        }
    }

    private IEnumerable<Node> Numbers()
    {
        foreach (var fret in frame.Frets.Frets)
        {
            var isInlaid = Inlays.CountAt(_instrument, fret) > 0;
            yield return new Node.Label(
                frame.FretX(fret),
                NumbersY,
                Text(fret),
                isInlaid ? BoldNumber : Number,
                isInlaid ? Tone.Ink : Tone.Quiet,
                Anchor.Middle
            );
        }

        foreach (var fret in FullFrets)
        {
            yield return Tick(fret, Tone.Ink);
        }

        foreach (var fret in EmptyFrets)
        {
            yield return Tick(fret, Tone.Paper);
        }
    }

    private Node Tick(int fret, Tone fill) =>
        LandmarkTick.At(frame.FretX(fret), frame.EdgeBottom + 4, _measures, fill);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
