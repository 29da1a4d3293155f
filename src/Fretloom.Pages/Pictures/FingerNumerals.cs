using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The fingers beside the marks of a neck: numerals on a halo of paper, upper right of each mark.</summary>
/// <remarks>
/// Where a mark or a thread lies in the way, a numeral moves to the upper left, else to the lower side. Halos lie below all marks,
/// numerals above them.
/// </remarks>
internal sealed class FingerNumerals
{
    private const double Halo = 4.3;
    private const double FromMark = 3.9;

    private static readonly (int Right, int Down)[] Corners = [(1, -1), (-1, -1), (1, 1), (-1, 1)];

    private static readonly TextStyle Style = new(Face.SansBold, TextStyle.SmallestSize);

    private readonly List<(double X, double Y, string Text)> _placed = [];

    /// <summary>Finds the places.</summary>
    /// <param name="marks">Every mark with its radius and its finger, empty for none.</param>
    /// <param name="threads">The threads from middle to middle.</param>
    public FingerNumerals(
        IReadOnlyList<(double X, double Y, double Radius, string Finger)> marks,
        IReadOnlyList<(double X1, double Y1, double X2, double Y2)> threads
    )
    {
        foreach (var mark in marks.Where(mark => mark.Finger.Length > 0))
        {
            var away = (mark.Radius + FromMark) / Math.Sqrt(2);
            var others = marks.Where(other => (other.X, other.Y) != (mark.X, mark.Y)).ToList();
            var (x, y) = Corners
                .Select(corner => (X: mark.X + corner.Right * away, Y: mark.Y + corner.Down * away))
                .MinBy(place =>
                    others.Sum(other => Crowding(Length(other.X - place.X, other.Y - place.Y) - other.Radius))
                    + threads.Sum(thread => Crowding(Distance(thread, place)))
                );
            _placed.Add((x, y, mark.Finger));
        }
    }

    /// <summary>What keeps threads and strings away from the numerals; below the marks.</summary>
    public IEnumerable<Node> Halos => _placed.Select(one => new Node.Circle(one.X, one.Y, Halo, Tone.Paper));

    /// <summary>The numerals themselves; above the marks.</summary>
    public IEnumerable<Node> Numerals =>
        _placed.Select(one => new Node.Label(
            one.X,
            one.Y + 0.325 * Style.Size,
            one.Text,
            Style,
            Tone.Ink,
            Anchor.Middle
        ));

    /// <summary>How much a numeral is in the way of something so far from its middle: 0 where it is clear of it.</summary>
    private static double Crowding(double distance) => Math.Max(0, Halo - distance);

    private static double Distance((double X1, double Y1, double X2, double Y2) line, (double X, double Y) point)
    {
        var (dx, dy) = (line.X2 - line.X1, line.Y2 - line.Y1);
        var length = dx * dx + dy * dy;
        var along = length == 0 ? 0 : Math.Clamp(((point.X - line.X1) * dx + (point.Y - line.Y1) * dy) / length, 0, 1);
        return Length(line.X1 + along * dx - point.X, line.Y1 + along * dy - point.Y);
    }

    private static double Length(double x, double y) => Math.Sqrt(x * x + y * y);
}
