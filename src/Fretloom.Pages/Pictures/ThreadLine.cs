using Fretloom.Pages.Scene;
using Fretloom.Theory;

namespace Fretloom.Pages.Pictures;

/// <summary>A third between two notes as it is drawn.</summary>
/// <param name="IsThick">Thick for major (and wider) thirds, thin for minor (and narrower).</param>
/// <param name="Kind">Whether it belongs to the key, a chord or the chosen shape.</param>
internal readonly record struct ThreadLine(bool IsThick, MarkKind Kind)
{
    /// <summary>The thread between two notes, or null when they are not a third apart.</summary>
    public static ThreadLine? Between(Pitch one, Pitch other, MarkKind kind)
    {
        var up = one.MidiNumber <= other.MidiNumber ? one.IntervalTo(other) : other.IntervalTo(one);
        return up.Steps == 2 ? new ThreadLine(up.Semitones >= 4, kind) : null;
    }

    /// <summary>From where to where a thread that is drawn runs.</summary>
    public static (double X1, double Y1, double X2, double Y2) Course(Node.Group thread) =>
        thread.Children.OfType<Node.Line>().Select(line => (line.X1, line.Y1, line.X2, line.Y2)).First();

    /// <summary>Draws it from point to point.</summary>
    public Node.Group Drawn(double x1, double y1, double x2, double y2, Measures measures)
    {
        var width =
            IsThick ? measures.ThickThread
            : Kind == MarkKind.OfKey ? measures.HairThread
            : measures.ThinThread;
        var tone = Kind switch
        {
            MarkKind.OfKey => Tone.ThreadEdge,
            MarkKind.OfChord => Tone.Ink,
            _ => Tone.Focus,
        };
        List<Node> lines = [At(new Stroke(Tone.Paper, width + 2 * measures.ThreadHalo)), At(new Stroke(tone, width))];
        if (IsThick && Kind == MarkKind.OfKey)
        {
            lines.Add(At(new Stroke(Tone.ThreadCore, measures.ThickThreadCore)));
        }

        return new Node.Group(IsThick ? "major third" : "minor third", lines.ToValueList());

        Node.Line At(Stroke stroke) => new(x1, y1, x2, y2, stroke);
    }
}
