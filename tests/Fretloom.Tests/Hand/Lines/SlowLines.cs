using Fretloom.Hand;
using Fretloom.Hand.Lines;
using Fretloom.Neck;

namespace Fretloom.Tests.Hand.Lines;

/// <summary>Fingerings of lines found the slow and obvious ways; the costs of notes and pairs are those of the program.</summary>
internal sealed class SlowLines(Player player)
{
    private static readonly Finger[] Fingers = [Finger.Index, Finger.Middle, Finger.Ring, Finger.Little];

    private readonly LineCost cost = new(player, LineWeights.Default);
    private readonly Tally tally = new();
    private readonly Dictionary<(Touch, Touch), int> moves = [];

    /// <summary>The cost of the cheapest fingering by a shortest path through every way to play every note; null when there is none.</summary>
    public long? Cheapest(ValueList<LineNote> notes, ValueList<LineRule> rules)
    {
        var known = new List<(Touch Touch, long Cost)>();
        var at = 0;
        foreach (var note in notes)
        {
            var next = new List<(Touch, long)>();
            foreach (var (spot, touch) in Ways(note))
            {
                var least = at == 0 ? 0 : long.MaxValue;
                foreach (var (before, cost) in known)
                {
                    var move = Of(before, touch);
                    least = IsPossible(move) ? Math.Min(least, cost + move) : least;
                }

                if (least < long.MaxValue && rules.All(rule => Keeps(rule, at, notes.Count, spot, touch)))
                {
                    next.Add((touch, least + Of(touch)));
                }
            }

            known = next;
            at++;
        }

        return known.Count == 0 ? null : known.Min(way => way.Cost);
    }

    /// <summary>Every fingering with its cost, the cheapest first; equal ones by the first different string or finger.</summary>
    public List<(ValueList<FingeredNote> Notes, long Cost)> All(ValueList<LineNote> notes, ValueList<LineRule> rules)
    {
        var found = new List<(ValueList<FingeredNote> Notes, long Cost)>();
        var ways = notes.Select(
            (note, at) =>
                Ways(note)
                    .Where(way => rules.All(rule => Keeps(rule, at, notes.Count, way.Spot, way.Touch)))
                    .GroupBy(way => new FingeredNote(way.Spot, way.Touch.Finger), way => way.Touch)
                    .Select(group => (group.Key, group.ToArray()))
                    .ToList()
        );
        Extend([.. ways], [], [], found);
        return
        [
            .. found
                .OrderBy(one => one.Cost)
                .ThenBy(one => one.Notes, Comparer<ValueList<FingeredNote>>.Create(InOrder)),
        ];
    }

    /// <summary>Every spot, finger and position for a note.</summary>
    public IEnumerable<(Spot Spot, Touch Touch)> Ways(LineNote note) =>
        from number in Enumerable.Range(1, player.Instrument.Strings.Count)
        from fret in Enumerable.Range(0, player.Instrument.LastFret + 1)
        let spot = new Spot(number, fret)
        where note is LineNote.At at ? at.Spot == spot : IsSounded(spot, (LineNote.Sounding)note)
        from position in Enumerable.Range(1, player.Instrument.LastFret)
        from finger in player.Instrument.IsOpen(spot) ? [Finger.None] : Fingers
        where finger == Finger.None || cost.Reaches(position, finger, fret)
        select (spot, new Touch(player.PlaceOf(number), finger == Finger.None ? 0 : fret, finger, position));

    /// <summary>What a note costs by itself, in thousandths.</summary>
    public int Of(Touch note)
    {
        tally.Clear();
        cost.Add(note, tally);
        return tally.Total;
    }

    /// <summary>What a move costs, in thousandths.</summary>
    public int Of(Touch one, Touch other)
    {
        tally.Clear();
        cost.Add(one, other, tally);
        return tally.Total;
    }

    public static bool IsPossible(long cost) => cost < Tally.Forbidden;

    private static bool Keeps(LineRule rule, int note, int count, Spot spot, Touch touch) =>
        rule switch
        {
            LineRule.StartWith start => note > 0 || start.Finger == touch.Finger,
            LineRule.EndWith end => note < count - 1 || end.Finger == touch.Finger,
            LineRule.StartOn start => note > 0 || start.String == spot.String,
            LineRule.EndOn end => note < count - 1 || end.String == spot.String,
            LineRule.StayIn stay => stay.Position == touch.Position,
            LineRule.NoOpenStrings => touch.Finger != Finger.None,
            LineRule.Never never => never.Finger != touch.Finger,
            LineRule.Within within => within.Frets.First <= spot.Fret && spot.Fret <= within.Frets.Last,
            LineRule.OnString on => note != on.Note || spot.String == on.String,
            LineRule.WithFinger with => note != with.Note || touch.Finger == with.Finger,
            _ => throw new ArgumentException($"{rule} is new here."),
        };

    private bool IsSounded(Spot spot, LineNote.Sounding note) =>
        player.Instrument.MidiAt(spot) == note.Pitch.MidiNumber;

    // Takes each spot and finger for the next note, and carries along what each position then costs at least.
    private void Extend(
        List<(FingeredNote Note, Touch[] Touches)>[] ways,
        FingeredNote[] done,
        List<(Touch Touch, long Cost)> known,
        List<(ValueList<FingeredNote>, long)> found
    )
    {
        if (done.Length == ways.Length)
        {
            found.Add((done.ToValueList(), known.Min(way => way.Cost)));
            return;
        }

        foreach (var (note, touches) in ways[done.Length])
        {
            var next = new List<(Touch, long)>();
            foreach (var touch in touches)
            {
                var least = done.Length == 0 ? 0 : long.MaxValue;
                foreach (var (before, cost) in known)
                {
                    var move = Remembered(before, touch);
                    least = IsPossible(move) ? Math.Min(least, cost + move) : least;
                }

                if (least < long.MaxValue)
                {
                    next.Add((touch, least + Of(touch)));
                }
            }

            if (next.Count > 0)
            {
                Extend(ways, [.. done, note], next, found);
            }
        }
    }

    private int Remembered(Touch one, Touch other) =>
        moves.TryGetValue((one, other), out var known) ? known : moves[(one, other)] = Of(one, other);

    private static int InOrder(ValueList<FingeredNote> one, ValueList<FingeredNote> other)
    {
        var at = Enumerable.Range(0, one.Count).FirstOrDefault(at => one[at] != other[at], 0);
        return (one[at].Spot.String, one[at].Finger).CompareTo((other[at].Spot.String, other[at].Finger));
    }
}
