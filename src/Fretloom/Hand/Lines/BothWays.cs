using Fretloom.Neck;

namespace Fretloom.Hand.Lines;

/// <summary>Fingerings in which a spot that comes again has the same finger again.</summary>
/// <remarks>
/// Best first: a fingering that gives one spot two fingers is only a lower bound, and its case is split by the finger of that
/// spot. One that does not is found, and the others of its case are split by the first spot in which they differ from it.
/// </remarks>
internal sealed class BothWays(Player player, ValueList<Spot> spots)
{
    private const int MostSpots = 400;

    // Cases times notes: a second or two of work.
    private const int MostWeighed = 400_000;

    private static readonly Finger[] Fingers = [Finger.Index, Finger.Middle, Finger.Ring, Finger.Little];

    private readonly ValueList<LineNote> _notes = spots.Select(LineNote (spot) => new LineNote.At(spot)).ToValueList();
    private readonly PriorityQueue<Case, (long Cost, int Order)> _cases = new();
    private int _made;

    /// <summary>The best fingerings, at most as many as wanted.</summary>
    public FingeringAnswer Find(int count)
    {
        if (spots.Count > MostSpots)
        {
            return FingeringAnswer.Refused(new($"A shape of {spots.Count} notes is too long: at most {MostSpots}."));
        }

        if (Add([]) is { } refusal)
        {
            return FingeringAnswer.Refused(refusal);
        }

        var found = new List<Fingering>();
        while (found.Count < count && _made * spots.Count < MostWeighed && _cases.TryDequeue(out var best, out _))
        {
            if (
                best.Fingering.Notes.FirstOrDefault(note => IsTorn(best.Fingering, note)) is
                { Finger: not Finger.None } torn
            )
            {
                Split(best, torn.Spot, Fingers);
            }
            else
            {
                found.Add(best.Fingering);
                SplitOthers(best, found.Count < count);
            }
        }

        return found.Count > 0
            ? FingeringAnswer.Found(found.ToValueList())
            : FingeringAnswer.Refused(
                new("Too many notes come again to give each one finger: leave some out, or ask for a line.")
            );
    }

    private static bool IsTorn(Fingering fingering, FingeredNote note) => fingering.FingerAt(note.Spot) != note.Finger;

    private void SplitOthers(Case found, bool isWanted)
    {
        var settled = found;
        foreach (var note in found.Fingering.Notes.Distinct())
        {
            if (isWanted && note.Finger != Finger.None && !found.Settled.ContainsKey(note.Spot))
            {
                Split(settled, note.Spot, Fingers.Where(finger => finger != note.Finger));
                settled = settled.With(note.Spot, note.Finger);
            }
        }
    }

    private void Split(Case from, Spot spot, IEnumerable<Finger> fingers)
    {
        foreach (var finger in fingers)
        {
            Add(from.With(spot, finger).Settled);
        }
    }

    private FingeringRefusal? Add(Dictionary<Spot, Finger> settled)
    {
        var rules = Enumerable
            .Range(0, spots.Count)
            .Where(at => settled.ContainsKey(spots[at]))
            .Select(LineRule (at) => new LineRule.WithFinger(at, settled[spots[at]]))
            .ToValueList();
        var answer = LineFingering.Find(player, _notes, rules);
        if (answer.Best is { } best)
        {
            _cases.Enqueue(new Case(best, settled), ((long)Math.Round(best.Cost * 1000), _made++));
        }

        return answer.Refusal;
    }

    /// <summary>The best fingering of those in which some spots have their fingers settled.</summary>
    private sealed record Case(Fingering Fingering, Dictionary<Spot, Finger> Settled)
    {
        public Case With(Spot spot, Finger finger) => this with { Settled = new(Settled) { [spot] = finger } };
    }
}
