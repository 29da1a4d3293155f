using Fretloom.Neck;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The bare neck: wires, nut or capo, strings.</summary>
internal sealed class NeckGround(NeckMap map, NeckFrame frame)
{
    private readonly Measures _measures = frame.Measures;
    private readonly Instrument _instrument = map.Instrument;

    private readonly double[] _single = [0];
    private readonly double[] _pair = [-frame.Measures.PairGap / 2, frame.Measures.PairGap / 2];

    public IEnumerable<Node> Frets
    {
        get
        {
            foreach (var wire in frame.Wires)
            {
                yield return Wire(wire);
            }

            yield return !frame.HasNut ? Wire(frame.FirstWire)
            : _instrument.Capo > 0 ? Capo()
            : Nut(frame.Left, frame.EdgeTop, frame.EdgeBottom);
        }
    }

    public IEnumerable<Node> Strings
    {
        get
        {
            var numbers = map.Strings.Numbers;
            for (var at = 0; at < numbers.Count; at++)
            {
                var start = _instrument.String(numbers[at]).StartsAtFret;
                if (start > frame.Frets.Last)
                {
                    continue;
                }

                var y = frame.StringY(numbers[at]);
                var isShort = start > frame.FirstWire;
                var left =
                    isShort ? frame.WireX(start)
                    : frame.HasNut ? frame.Left
                    : frame.Left - _measures.RunOn;
                var isPair = _instrument.String(numbers[at]).Partner is not null;
                var width = _measures.StringLine(numbers.Count - 1 - at, numbers.Count);
                foreach (var aside in isPair ? _pair : _single)
                {
                    var line = new Stroke(Tone.Ink, isPair ? Measures.PairLine * width : width);
                    yield return new Node.Line(left, y + aside, frame.Right + _measures.RunOn, y + aside, line);
                }

                if (isShort)
                {
                    yield return Nut(left, y - _measures.Overhang / 2, y + _measures.Overhang / 2);
                }
            }
        }
    }

    private Node.Line Wire(int wire)
    {
        var x = frame.WireX(wire);
        return new Node.Line(x, frame.EdgeTop, x, frame.EdgeBottom, new Stroke(Tone.Line, _measures.FretLine));
    }

    private Node.Rect Nut(double x, double top, double bottom) =>
        new(x - _measures.NutWidth / 2, top, _measures.NutWidth, bottom - top, Tone.Ink);

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
}
