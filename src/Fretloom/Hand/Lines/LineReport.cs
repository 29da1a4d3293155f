namespace Fretloom.Hand.Lines;

/// <summary>Says what a fingering costs, and how far the hand stretches in it.</summary>
internal static class LineReport
{
    public static Fingering Of(Player player, LineGraph graph, int[] labels)
    {
        var path = new LinePath(graph, labels);
        var stretches = Stretches(player, graph.Cost.Frame, path.Touches);
        return new Fingering(
            path.Touches.Select((touch, note) => new FingeredNote(path.Spots[note], touch.Finger)).ToValueList(),
            LineWords.Terms(graph.Cost, path.Touches),
            stretches.Select(stretch => stretch.DistanceMm).DefaultIfEmpty(0).Max(),
            stretches.Count == 0 ? null : stretches.MaxBy(stretch => stretch.Effort)
        );
    }

    // The farthest two fingers get from each other while the hand stays in a position, for each pair and position.
    private static List<Stretch> Stretches(Player player, HandFrame frame, Touch[] touches)
    {
        var widest = new Dictionary<(Finger, Finger), double>();
        for (var start = 0; start < touches.Length; )
        {
            var end = start;
            var (least, most) = (new double[5], new double[5]);
            Array.Fill(least, double.MaxValue);
            for (; end < touches.Length && touches[end].Position == touches[start].Position; end++)
            {
                if (!touches[end].IsOpen)
                {
                    var finger = (int)touches[end].Finger;
                    least[finger] = Math.Min(least[finger], frame.LandingMm(touches[end].Fret));
                    most[finger] = Math.Max(most[finger], frame.LandingMm(touches[end].Fret));
                }
            }

            for (var lower = Finger.Index; lower < Finger.Little; lower++)
            {
                for (var higher = lower + 1; higher <= Finger.Little; higher++)
                {
                    if (most[(int)lower] > 0 && most[(int)higher] > 0)
                    {
                        var distance = Math.Max(0, most[(int)higher] - least[(int)lower]);
                        widest[(lower, higher)] = Math.Max(distance, widest.GetValueOrDefault((lower, higher)));
                    }
                }
            }

            start = end;
        }

        return [.. widest.Select(pair => new Stretch(player.Hand, pair.Key.Item1, pair.Key.Item2, pair.Value))];
    }
}
