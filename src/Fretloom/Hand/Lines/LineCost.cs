namespace Fretloom.Hand.Lines;

/// <summary>What single notes and pairs of neighbouring notes cost a hand. The model of <c>docs/hand.md</c>, term by term.</summary>
/// <remarks>A pair costs the same in both directions, so a line played backwards is fingered alike.</remarks>
internal sealed class LineCost(Player player, LineWeights weights)
{
    /// <summary>The homes of the fingers.</summary>
    public HandFrame Frame { get; } = new(player, weights);

    /// <summary>Whether a finger gets to a fret in a position.</summary>
    public bool Reaches(int position, Finger finger, int fret)
    {
        var distance = Frame.LandingMm(fret) - Frame.LandingMm(position);
        var (above, below) = Aside(position, finger, fret);
        return finger == Finger.Index
            ? above == 0 && below <= weights.MostBack
            : distance >= 0
                && distance <= player.Hand.MostMm(Finger.Index, finger)
                && Math.Max(above, below) <= weights.MostAside;
    }

    /// <summary>Adds what a note costs by itself.</summary>
    public void Add(Touch note, Tally tally)
    {
        tally.Add(LineTerm.Up, weights.Up * note.Position);
        if (note.IsOpen)
        {
            tally.Add(LineTerm.OpenAway, note.Position > 1 ? weights.OpenAway : 0);
            return;
        }

        var finger = (int)note.Finger;
        var (above, below) = Aside(note.Position, note.Finger, note.Fret);
        tally.Add(LineTerm.OutOfPlace, weights.Above[finger] * above + weights.Below[finger] * below);
        tally.Add(LineTerm.Weak, weights.Weak[finger]);
        tally.Add(LineTerm.High, weights.High * Math.Max(0, note.Fret - 12));
        if (note.Finger > Finger.Index)
        {
            var distance = Frame.LandingMm(note.Fret) - Frame.LandingMm(note.Position);
            var excess = distance - player.Hand.ComfortableMm(Finger.Index, note.Finger);
            tally.Add(LineTerm.OutOfPlace, weights.FarFromIndex * Math.Max(0, excess));
        }
    }

    /// <summary>Adds what it costs to get from one note to the next.</summary>
    public void Add(Touch one, Touch other, Tally tally)
    {
        tally.Add(LineTerm.Crossing, weights.Crossing * Math.Abs(one.Place - other.Place));
        if (one.Position != other.Position)
        {
            AddShift(one, other, tally);
        }

        if (one.IsOpen || other.IsOpen)
        {
            return;
        }

        if (one.Finger == other.Finger)
        {
            AddSameFinger(one, other, tally);
        }
        else
        {
            AddTwoFingers(one, other, tally);
        }
    }

    private void AddShift(Touch one, Touch other, Tally tally)
    {
        var distance = Math.Abs(Frame.LandingMm(one.Position) - Frame.LandingMm(other.Position));
        tally.Add(LineTerm.Shift, weights.Shift + weights.ShiftMm * distance);
        tally.Add(LineTerm.Shift, one.Place == other.Place ? weights.ShiftInString : 0);
    }

    private void AddSameFinger(Touch one, Touch other, Tally tally)
    {
        var strings = Math.Abs(one.Place - other.Place);
        if (one.Fret == other.Fret)
        {
            tally.Add(LineTerm.Roll, strings == 0 ? 0 : weights.Roll + weights.RollFarther * (strings - 1));
        }
        else if (strings > 0)
        {
            tally.Add(LineTerm.Leap, weights.Leap);
        }
        else if (one.Position != other.Position)
        {
            tally.Add(LineTerm.Slide, weights.Guide);
        }
        else
        {
            var distance = Math.Abs(Frame.LandingMm(one.Fret) - Frame.LandingMm(other.Fret));
            tally.Add(LineTerm.Slide, weights.Slide + weights.ShiftMm * distance);
        }
    }

    private void AddTwoFingers(Touch one, Touch other, Tally tally)
    {
        var (lower, higher) = one.Finger < other.Finger ? (one, other) : (other, one);
        if (lower.Fret == higher.Fret)
        {
            tally.Add(LineTerm.Substitution, lower.Place == higher.Place ? weights.Substitution : 0);
            tally.Add(LineTerm.Tangle, higher.Place > lower.Place ? weights.Tangle : 0);
        }

        if (one.Position != other.Position)
        {
            tally.Add(LineTerm.Passing, higher.Fret < lower.Fret ? weights.Passing : 0);
            return;
        }

        AddReach(lower, higher, tally);
    }

    private void AddReach(Touch lower, Touch higher, Tally tally)
    {
        var distance = Frame.LandingMm(higher.Fret) - Frame.LandingMm(lower.Fret);
        if (distance < 0 || distance > player.Hand.MostMm(lower.Finger, higher.Finger))
        {
            tally.Forbid();
            return;
        }

        var near = Frame.Home(lower.Position, lower.Finger);
        var far = Frame.Home(lower.Position, higher.Finger);
        var unit = Frame.UnitMm(lower.Position);
        var excess = distance - player.Hand.ComfortableMm(lower.Finger, higher.Finger);
        tally.Add(
            LineTerm.Stretch,
            weights.StretchOf(lower.Finger, higher.Finger) * Math.Max(0, distance - (far.ToMm - near.FromMm)) / unit
                + weights.FarApart * Math.Max(0, excess)
        );
        tally.Add(LineTerm.Squeeze, weights.Squeeze * Math.Max(0, far.FromMm - near.ToMm - distance) / unit);
    }

    private (double Above, double Below) Aside(int position, Finger finger, int fret)
    {
        var distance = Frame.LandingMm(fret) - Frame.LandingMm(position);
        var (from, to) = Frame.Home(position, finger);
        var unit = Frame.UnitMm(position);
        return (Math.Max(0, distance - to) / unit, Math.Max(0, from - distance) / unit);
    }
}
