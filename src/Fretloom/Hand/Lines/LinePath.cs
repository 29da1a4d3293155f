using Fretloom.Neck;

namespace Fretloom.Hand.Lines;

/// <summary>A fingering with the positions of the hand that make it cheapest, the lower ones where there is a choice.</summary>
internal sealed class LinePath
{
    public LinePath(LineGraph graph, int[] labels)
    {
        var touches = Choose(graph, labels);
        Spots = new Spot[labels.Length];
        Touches = new Touch[labels.Length];
        for (var note = 0; note < labels.Length; note++)
        {
            var layer = graph.Layers[note];
            var label = layer.Labels[labels[note]];
            Spots[note] = layer.Groups[label.Group].Spot;
            Touches[note] = graph.TouchAt(note, label, touches[note]);
        }
    }

    /// <summary>The spot of each note.</summary>
    public Spot[] Spots { get; }

    /// <summary>The touch of each note.</summary>
    public Touch[] Touches { get; }

    // Forward with the best predecessor of every touch, then back along them.
    private static int[] Choose(LineGraph graph, int[] labels)
    {
        var before = new byte[labels.Length][];
        var costs = Array.Empty<int>();
        for (var note = 0; note < labels.Length; note++)
        {
            var layer = graph.Layers[note];
            var label = layer.Labels[labels[note]];
            var next = layer.Costs[label.Start..(label.Start + label.Count)];
            before[note] = new byte[label.Count];
            for (var to = 0; note > 0 && to < label.Count; to++)
            {
                var least = Tally.Forbidden;
                for (var from = 0; from < costs.Length; from++)
                {
                    var cost =
                        costs[from]
                        + graph.Move(note - 1, graph.Layers[note - 1].Labels[labels[note - 1]], from, label, to);
                    if (cost < least)
                    {
                        (least, before[note][to]) = (cost, (byte)from);
                    }
                }

                next[to] = Math.Min(Tally.Forbidden, next[to] + least);
            }

            var zero = next.Min();
            costs = [.. next.Select(cost => cost == Tally.Forbidden ? Tally.Forbidden : cost - zero)];
        }

        var chosen = new int[labels.Length];
        chosen[^1] = Array.IndexOf(costs, 0);
        for (var note = labels.Length - 1; note > 0; note--)
        {
            chosen[note - 1] = before[note][chosen[note]];
        }

        return chosen;
    }
}
