using System.Globalization;

namespace Fretloom.Hand.Lines;

/// <summary>Says in a teacher's words what the terms of a line are about.</summary>
internal static class LineWords
{
    /// <summary>The terms that cost something, the dearest first.</summary>
    public static ValueList<CostTerm> Terms(LineCost cost, Touch[] touches)
    {
        var sums = Enum.GetValues<LineTerm>().Select(term => new Sum(term)).ToArray();
        var tally = new Tally();
        for (var note = 0; note < touches.Length; note++)
        {
            tally.Clear();
            cost.Add(touches[note], tally);
            if (note > 0)
            {
                cost.Add(touches[note - 1], touches[note], tally);
            }

            foreach (var sum in sums)
            {
                sum.Take(tally[sum.Term], note);
            }
        }

        return sums.Where(sum => sum.Thousandths > 0)
            .OrderByDescending(sum => sum.Thousandths)
            .ThenBy(sum => sum.Term)
            .Select(sum => new CostTerm(Name(sum.Term), sum.Thousandths / 1000.0, Words(sum, cost.Frame, touches)))
            .ToValueList();
    }

    private static string Name(LineTerm term) => char.ToLowerInvariant(term.ToString()[0]) + term.ToString()[1..];

    private static string Words(Sum sum, HandFrame frame, Touch[] touches)
    {
        var here = touches[sum.Dearest];
        var before = touches[Math.Max(0, sum.Dearest - 1)];
        var where = string.Create(CultureInfo.InvariantCulture, $"{sum.Dearest}-{sum.Dearest + 1}");
        var more = sum.Times > 1 ? string.Create(CultureInfo.InvariantCulture, $", and {sum.Times - 1} more") : "";
        var (lower, higher) = here.Finger < before.Finger ? (here, before) : (before, here);
        var apart = frame.LandingMm(higher.Fret) - frame.LandingMm(lower.Fret);
        var fingers = $"fingers {(int)lower.Finger} and {(int)higher.Finger}";
        return sum.Term switch
        {
            LineTerm.Shift => Say($"{Times(sum.Times, "shift")}, {Travel(frame, touches):0} mm in all"),
            LineTerm.Stretch => Say($"stretch of {apart:0} mm between {fingers} at notes {where}{more}"),
            LineTerm.Squeeze => Say($"{fingers} only {apart:0} mm apart at notes {where}{more}"),
            LineTerm.OutOfPlace => Say(
                $"finger {(int)here.Finger} beside its place in position {here.Position} at note {sum.Dearest + 1}{more}"
            ),
            LineTerm.Slide => Say($"finger {(int)here.Finger} slides along the string at notes {where}{more}"),
            LineTerm.Leap => Say($"finger {(int)here.Finger} leaps to another string and fret at notes {where}{more}"),
            LineTerm.Roll => Say($"finger {(int)here.Finger} rolls to another string at notes {where}{more}"),
            LineTerm.Tangle => Say($"{fingers} cross each other on one fret at notes {where}{more}"),
            LineTerm.Passing => Say($"{fingers} pass each other in a shift at notes {where}{more}"),
            LineTerm.Substitution => Say(
                $"change from finger {(int)before.Finger} to {(int)here.Finger} on one note at notes {where}{more}"
            ),
            LineTerm.Crossing => Times(sum.Times, "change") + " of string",
            LineTerm.OpenAway => Times(sum.Times, "open string") + " away from first position",
            LineTerm.Weak => Times(sum.Times, "note") + " with fingers 2 to 4",
            LineTerm.High => Times(sum.Times, "note") + " above fret 12",
            _ => Say($"the hand lies in {Positions(touches)}"),
        };
    }

    private static double Travel(HandFrame frame, Touch[] touches) =>
        touches
            .Zip(
                touches.Skip(1),
                (one, other) => Math.Abs(frame.LandingMm(one.Position) - frame.LandingMm(other.Position))
            )
            .Sum();

    private static string Positions(Touch[] touches)
    {
        var (least, most) = (touches.Min(touch => touch.Position), touches.Max(touch => touch.Position));
        return least == most ? Say($"position {least}") : Say($"positions {least} to {most}");
    }

    private static string Times(int count, string what) => Say($"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>What a term costs in all, how many times, and where it costs most.</summary>
    private sealed class Sum(LineTerm term)
    {
        private int _most;

        public LineTerm Term { get; } = term;

        public long Thousandths { get; private set; }

        public int Times { get; private set; }

        public int Dearest { get; private set; }

        public void Take(int thousandths, int note)
        {
            if (thousandths == 0)
            {
                return;
            }

            Thousandths += thousandths;
            Times++;
            if (thousandths > _most)
            {
                (_most, Dearest) = (thousandths, note);
            }
        }
    }
}
