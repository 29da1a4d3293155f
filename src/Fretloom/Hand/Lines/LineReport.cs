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

    // The farthest two fingers get from each other while the hand stays: the index from any other, as it marks the position;
    // others only from one pressed note to the next, as they need not be down together.
    private static List<Stretch> Stretches(Player player, HandFrame frame, Touch[] touches)
    {
        var widest = new double[5, 5];
        var pressed = touches.Where(touch => !touch.IsOpen).ToArray();
        for (var start = 0; start < pressed.Length; )
        {
            var end = start;
            var (least, most) = (double.MaxValue, new double[5]);
            for (; end < pressed.Length && pressed[end].Position == pressed[start].Position; end++)
            {
                var (finger, landing) = ((int)pressed[end].Finger, frame.LandingMm(pressed[end].Fret));
                most[finger] = Math.Max(most[finger], landing);
                least = finger == 1 ? Math.Min(least, landing) : least;
                if (end > start)
                {
                    Widen(widest, pressed[end - 1], pressed[end], frame);
                }
            }

            for (var finger = 2; finger <= 4; finger++)
            {
                widest[1, finger] = Math.Max(widest[1, finger], most[finger] - least);
            }

            start = end;
        }

        return
        [
            .. from lower in new[] { Finger.Index, Finger.Middle, Finger.Ring }
            from higher in new[] { Finger.Middle, Finger.Ring, Finger.Little }
            where widest[(int)lower, (int)higher] > 0
            select new Stretch(player.Hand, lower, higher, widest[(int)lower, (int)higher]),
        ];
    }

    private static void Widen(double[,] widest, Touch one, Touch other, HandFrame frame)
    {
        var (lower, higher) = one.Finger < other.Finger ? (one, other) : (other, one);
        ref var known = ref widest[(int)lower.Finger, (int)higher.Finger];
        known = Math.Max(
            known,
            lower.Finger == higher.Finger ? 0 : frame.LandingMm(higher.Fret) - frame.LandingMm(lower.Fret)
        );
    }
}
