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

    private const double TickGap = 5.5;
    private const double UsualNameWidth = 14;

    private readonly Measures _measures = frame.Measures;
    private readonly Instrument _instrument = content.Map.Instrument;
    private readonly NeckGround _ground = new(content.Map, frame);

    /// <summary>Where things lie.</summary>
    public NeckFrame Frame => frame;

    /// <summary>Baseline of the fret numbers.</summary>
    public double NumbersY => frame.EdgeBottom + (HasTicks ? TickGap + _measures.TickHeight + 11 : 12);

    private bool HasTicks => content.Landmarks is { FullFrets.Count: > 0 } or { EmptyFrets.Count: > 0 };

    /// <summary>The landmarks alone: columns and frets without strings, ticks and numbers.</summary>
    public IEnumerable<Node> Landmarks =>
        [
            new Node.Group("columns", Columns().ToValueList()),
            new Node.Group("frets", _ground.Frets.Concat(Edges()).ToValueList()),
            new Node.Group(
                "string set",
                [
                    new Node.Label(
                        frame.Left,
                        frame.EdgeTop - 5,
                        Wording.Strings(content.Map.Strings),
                        Number,
                        Tone.Quiet,
                        Anchor.Start
                    ),
                ]
            ),
            new Node.Group("fret numbers", Numbers().ToValueList()),
        ];

    /// <summary>Everything, in drawing order.</summary>
    public IEnumerable<Node> All
    {
        get
        {
            var threads = Threads().ToList();
            var fingers = content.HasFingersBeside ? Fingers(threads) : new FingerNumerals([], []);
            return Groups(threads, fingers).Where(group => group.Children.Count > 0);
        }
    }

    private IEnumerable<Node.Group> Groups(List<Node.Group> threads, FingerNumerals fingers) =>
        [
            new("columns", Columns().ToValueList()),
            new("bands", content.Chosen.SelectMany(Bands).ToValueList()),
            new("frets", _ground.Frets.ToValueList()),
            new("strings", _ground.Strings.ToValueList()),
            new("axes", Axes().ToValueList()),
            new("threads", threads.ToValueList<Node>()),
            new("halos", fingers.Halos.ToValueList()),
            new("marks", Marks().ToValueList()),
            new("fingers", fingers.Numerals.ToValueList()),
            new(
                "culprits",
                (
                    content.Culprits is { } culprits ? CulpritRings.On(frame, culprits, content.CountsFromOwnNut) : []
                ).ToValueList()
            ),
            new("half-turn centres", Centres.Select(Point).ToValueList()),
            new("string names", Names().ToValueList()),
            new("fret numbers", Numbers().ToValueList()),
        ];

    private IEnumerable<int> FullFrets => (content.Landmarks?.FullFrets ?? []).Where(frame.Frets.Contains);

    private IEnumerable<int> EmptyFrets => (content.Landmarks?.EmptyFrets ?? []).Where(frame.Frets.Contains);

    private IEnumerable<double> Centres => content.HalfTurnCentres.Where(frame.HasPlace);

    private IEnumerable<Node> Columns() =>
        content.HasColumns
            ? AllOf(content.Landmarks?.FullFrets)
                .SelectMany(fret => Column(fret, Tone.Full))
                .Concat(AllOf(content.Landmarks?.EmptyFrets).SelectMany(fret => Column(fret, Tone.Empty)))
            : [];

    private static IEnumerable<int> AllOf(ValueList<int>? frets) => frets ?? [];

    private IEnumerable<Node> Column(int fret, Tone tone) =>
        frame
            .Across(fret, content.CountsFromOwnNut)
            .Select(part => new Node.Rect(part.Left, part.Top, part.Right - part.Left, part.Bottom - part.Top, tone));

    private IEnumerable<Node> Edges() =>
        new[] { frame.EdgeTop, frame.EdgeBottom }.Select(y => new Node.Line(
            frame.Left,
            y,
            frame.Right,
            y,
            new Stroke(Tone.Line, _measures.FretLine)
        ));

    private IEnumerable<Node> Bands(Shape shape)
    {
        var runs =
            shape.Source is ShapeSource.OfScale
                ? shape.Notes.GroupBy(note => note.Spot.String).Select(run => run.Select(note => note.Spot).ToList())
                :
                [
                    [.. shape.Spots],
                ];
        foreach (var run in runs.Where(run => run.TrueForAll(frame.Contains)))
        {
            yield return new Node.Path(
                BandOutline.Around(run.ConvertAll(frame.PointOf), _measures.BandRadius),
                Tone.Band,
                new Stroke(Tone.Focus, _measures.StitchLine, Dash.Stitch)
            );
        }
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

    private IEnumerable<Node> Axes()
    {
        var middle = (frame.Top + frame.Bottom) / 2;
        foreach (var centre in Centres)
        {
            var x = frame.PlaceX(centre);
            var top = frame.EdgeTop - 3 - Emblem.HalfTurnHeight / 2;
            yield return new Node.Line(x, top, x, middle, new Stroke(Tone.Ink, 0.9, Dash.Axis));
            yield return Emblem.HalfTurn(x, top);
        }
    }

    private Node Point(double centre) =>
        new Node.Circle(frame.PlaceX(centre), (frame.Top + frame.Bottom) / 2, 2.2, Tone.Ink, new Stroke(Tone.Paper, 1));

    private IEnumerable<Node.Group> Threads()
    {
        var ofKey = (content.Landmarks?.Thirds ?? []).Select(third =>
            (third.Lower, third.Upper, Kind: content.KindOf(third))
        );
        var drawn = ofKey.OrderBy(third => third.Kind).ToList();
        foreach (var (lower, upper, kind) in drawn)
        {
            if (Thread(lower.Spot, lower.Pitch, upper.Spot, upper.Pitch, kind) is { } thread)
            {
                yield return thread;
            }
        }

        if (content.Chosen.Count == 0)
        {
            yield break;
        }

        var known = drawn.Select(third => (third.Lower.Spot, third.Upper.Spot)).ToHashSet();
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
        var edge = Math.Clamp(toX, frame.Left - _measures.RunOn, frame.Right + _measures.RunOn);
        var share = toX == fromX ? 1 : (edge - fromX) / (toX - fromX);
        return (edge, fromY + share * (toY - fromY));
    }

    private IEnumerable<NeckNote> NotesHere => content.Notes.Where(note => frame.Contains(note.Spot));

    private IEnumerable<Node> Marks()
    {
        foreach (var note in NotesHere.OrderBy(content.KindOf))
        {
            var (x, y) = frame.PointOf(note.Spot);
            yield return content.MarkOf(note).DrawnAt(x, y, _measures);
        }
    }

    private FingerNumerals Fingers(IEnumerable<Node.Group> threads) =>
        new(
            [
                .. NotesHere.Select(note =>
                {
                    var (x, y) = frame.PointOf(note.Spot);
                    return (x, y, content.MarkOf(note).RadiusOf(_measures), content.FingerBeside(note));
                }),
            ],
            [.. threads.Select(ThreadLine.Course)]
        );

    private double NamesRight =>
        frame.HasOpenStrings ? frame.FretX(0) - _measures.RingRadius - 5 : frame.Left - _measures.RunOn - 4;

    private IEnumerable<Node> Names()
    {
        var right = NamesRight;
        var name = new TextStyle(Face.SansBold, 10);
        var width = content.Map.Strings.Numbers.Max(number => name.WidthOf(content.NameOfString(number)));
        var left = right - Math.Max(UsualNameWidth, width);
        foreach (var number in content.Map.Strings.Numbers)
        {
            var y = frame.StringY(number) + 3.3;
            var note = content.NameOfString(number);
            yield return new Node.Label(left, y, note, name, Tone.Ink, Anchor.Start);
            yield return new Node.Label(left - 3, y, Text(number), Number, Tone.Quiet, Anchor.End);
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
                frame.Right + _measures.RunOn + 7,
                frame.StringY(hinge.Far),
                frame.StringY(hinge.Near)
            );
        }
    }

    private IEnumerable<Node> Numbers()
    {
        foreach (var fret in frame.Frets.Frets)
        {
            foreach (var dot in InlayDots(fret))
            {
                yield return dot;
            }

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
        LandmarkTick.At(frame.FretX(fret), frame.EdgeBottom + TickGap, _measures, fill);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
