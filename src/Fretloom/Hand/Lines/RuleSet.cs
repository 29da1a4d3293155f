using Fretloom.Neck;

namespace Fretloom.Hand.Lines;

/// <summary>Rules of which every one speaks of single touches: what they leave of a note.</summary>
internal sealed class RuleSet
{
    private readonly LineRule[] _everywhere;
    private readonly ILookup<int, LineRule> _here;

    /// <summary>Sorts the rules by the notes they speak of.</summary>
    /// <param name="rules">The rules.</param>
    /// <param name="count">How many notes the line has.</param>
    public RuleSet(IEnumerable<LineRule> rules, int count)
    {
        var all = rules.ToList();
        _everywhere = [.. all.Where(rule => NoteOf(rule, count) is null)];
        _here = all.Where(rule => NoteOf(rule, count) is not null).ToLookup(rule => NoteOf(rule, count)!.Value);
    }

    /// <summary>The one note that a rule speaks of, counted from 0; null when it speaks of all.</summary>
    public static int? NoteOf(LineRule rule, int count) =>
        rule switch
        {
            LineRule.StartWith or LineRule.StartOn => 0,
            LineRule.EndWith or LineRule.EndOn => count - 1,
            LineRule.OnString one => one.Note,
            LineRule.WithFinger one => one.Note,
            _ => null,
        };

    /// <summary>Whether a rule speaks of this note and no other.</summary>
    public bool SpeaksOf(int note) => _here.Contains(note);

    /// <summary>Whether the rules allow a touch for a note.</summary>
    public bool Allows(int note, Spot spot, Touch touch)
    {
        foreach (var rule in _everywhere)
        {
            if (!Allows(rule, spot, touch))
            {
                return false;
            }
        }

        foreach (var rule in _here[note])
        {
            if (!Allows(rule, spot, touch))
            {
                return false;
            }
        }

        return true;
    }

    private static bool Allows(LineRule rule, Spot spot, Touch touch) =>
        rule switch
        {
            LineRule.StartWith start => touch.Finger == start.Finger,
            LineRule.EndWith end => touch.Finger == end.Finger,
            LineRule.StartOn start => spot.String == start.String,
            LineRule.EndOn end => spot.String == end.String,
            LineRule.StayIn stay => touch.Position == stay.Position,
            LineRule.NoOpenStrings => !touch.IsOpen,
            LineRule.Never never => touch.Finger != never.Finger,
            LineRule.Within within => within.Frets.Contains(spot.Fret),
            LineRule.OnString one => spot.String == one.String,
            LineRule.WithFinger one => touch.Finger == one.Finger,
            _ => true,
        };
}
