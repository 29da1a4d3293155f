using System.Numerics;
using System.Runtime.InteropServices;

namespace Fretloom.Hand.Lines;

/// <summary>The layered graph of a line, with the cheapest way from each touch to the end.</summary>
/// <remarks>
/// Shortest paths over layers of fingerings: S. I. Sayegh, Fingering for String Instruments with the Optimum Path Paradigm,
/// Computer Music Journal 13(3), 1989 (the method from memory).
/// </remarks>
internal sealed class LineGraph
{
    private readonly MoveTable _table;
    private readonly int[] _starts;
    private readonly int[] _rest;
    private readonly long[] _least;

    public LineGraph(MoveTable table, Layer[] layers)
    {
        _table = table;
        Layers = layers;
        _starts = new int[layers.Length + 1];
        for (var at = 0; at < layers.Length; at++)
        {
            _starts[at + 1] = _starts[at] + layers[at].Costs.Length;
        }

        _rest = new int[_starts[^1]];
        _least = new long[layers.Length];
        for (var at = layers.Length - 1; at >= 0 && DeadEnd is null; at--)
        {
            Rest(at);
        }
    }

    /// <summary>The costs term by term.</summary>
    public LineCost Cost => _table.Cost;

    /// <summary>The ways to play each note.</summary>
    public Layer[] Layers { get; }

    /// <summary>The last note from which no way leads to the end; null when there is a fingering.</summary>
    public int? DeadEnd { get; private set; }

    /// <summary>What all ways from a note to the end cost at least, the note itself included, in thousandths.</summary>
    public long LeastFrom(int note) => _least[note];

    /// <summary>What each touch of a note costs with all that follows, less <see cref="LeastFrom"/>.</summary>
    public ReadOnlySpan<int> RestFrom(int note) => _rest.AsSpan(_starts[note].._starts[note + 1]);

    /// <summary>The costs of getting from some touches of a note to every touch of the next one, without what that one costs.</summary>
    /// <param name="note">The earlier note.</param>
    /// <param name="label">The touches from which it goes.</param>
    /// <param name="costs">What it costs to get to each of them, and what they cost themselves.</param>
    /// <param name="next">Filled with the costs, for every touch of the next note.</param>
    public void Advance(int note, Layer.Label label, ReadOnlySpan<int> costs, Span<int> next)
    {
        next.Fill(Tally.Forbidden);
        var from = Layers[note].Groups[label.Group];
        foreach (var to in Layers[note + 1].Groups)
        {
            var moves = _table.Moves(from.Row, to.Row, to.Place - from.Place);
            var width = _table.WidthOf(to.Row);
            for (var touch = 0; touch < label.Count; touch++)
            {
                if (costs[touch] < Tally.Forbidden)
                {
                    var row = moves.AsSpan((label.Start - from.Start + touch) * width, width);
                    Relax(next.Slice(to.Start, width), row, costs[touch]);
                }
            }
        }
    }

    /// <summary>What it costs to get from one touch of a note's label to one of the next note's.</summary>
    public int Move(int note, Layer.Label one, int touch, Layer.Label other, int nextTouch)
    {
        var from = Layers[note].Groups[one.Group];
        var to = Layers[note + 1].Groups[other.Group];
        var row = one.Start - from.Start + touch;
        var column = other.Start - to.Start + nextTouch;
        return _table.Moves(from.Row, to.Row, to.Place - from.Place)[row * _table.WidthOf(to.Row) + column];
    }

    /// <summary>A touch of a note's label.</summary>
    public Touch TouchAt(int note, Layer.Label label, int touch)
    {
        var group = Layers[note].Groups[label.Group];
        return _table.TouchesOf(group.Row)[label.Start - group.Start + touch] with { Place = group.Place };
    }

    private static void Relax(Span<int> best, ReadOnlySpan<int> moves, int cost)
    {
        var bests = MemoryMarshal.Cast<int, Vector<int>>(best);
        var steps = MemoryMarshal.Cast<int, Vector<int>>(moves);
        var costs = new Vector<int>(cost);
        for (var at = 0; at < bests.Length; at++)
        {
            bests[at] = Vector.Min(bests[at], steps[at] + costs);
        }
    }

    private void Rest(int note)
    {
        var layer = Layers[note];
        var rest = _rest.AsSpan(_starts[note].._starts[note + 1]);
        if (note + 1 < Layers.Length)
        {
            rest.Fill(Tally.Forbidden);
            var later = RestFrom(note + 1);
            foreach (var to in Layers[note + 1].Groups)
            {
                foreach (var from in layer.Groups)
                {
                    var width = _table.WidthOf(from.Row);
                    var moves = _table.Moves(to.Row, from.Row, from.Place - to.Place).AsSpan();
                    var best = rest.Slice(from.Start, width);
                    for (var touch = 0; touch < to.Count; touch++)
                    {
                        var cost = later[to.Start + touch];
                        if (cost < Tally.Forbidden)
                        {
                            Relax(best, moves.Slice(touch * width, width), cost);
                        }
                    }
                }
            }
        }

        var least = Tally.Forbidden;
        for (var at = 0; at < rest.Length; at++)
        {
            rest[at] = Math.Min(Tally.Forbidden, rest[at] + layer.Costs[at]);
            least = Math.Min(least, rest[at]);
        }

        if (least == Tally.Forbidden)
        {
            DeadEnd = note;
            return;
        }

        for (var at = 0; at < rest.Length; at++)
        {
            rest[at] = rest[at] == Tally.Forbidden ? Tally.Forbidden : rest[at] - least;
        }

        _least[note] = least + (note + 1 < Layers.Length ? _least[note + 1] : 0);
    }
}
