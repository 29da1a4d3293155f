using Fretloom.Exhibits;
using Fretloom.Neck;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>The bare grid of a chord box as a right-handed player holds it: the string nearest the floor on the right.</summary>
/// <param name="exhibit">The instrument with its capo, and the strings looked at; the others are drawn quietly.</param>
/// <param name="grip">Which frets there are.</param>
/// <param name="frets">How many frets to draw.</param>
internal sealed class ChordBoxGround(Exhibit exhibit, ChordGrip grip, int frets)
{
    public const double FretHeight = 22;

    private const double PairGap = 2.4;
    private const double CapoHeight = 6;

    private static readonly TextStyle NameStyle = new(Face.Sans, TextStyle.SmallestSize);

    private readonly Instrument _instrument = exhibit.Map.Instrument;
    private readonly int _count = exhibit.Map.Instrument.Strings.Count;

    /// <summary>Where the string farthest from the floor lies.</summary>
    public required double Left { get; init; }

    /// <summary>Where the nut or the uppermost wire lies.</summary>
    public required double Top { get; init; }

    /// <summary>Between neighbouring strings.</summary>
    public required double StringGap { get; init; }

    /// <summary>How far below the grid the names of the open strings stand.</summary>
    public required double TuningDrop { get; init; }

    public double StringX(int number) => Left + (_count - number) * StringGap;

    public double FretY(int fret) => Top + (fret - grip.FirstFret + 0.5) * FretHeight;

    /// <summary>Wires, strings, nut or capo, and below each string the note it is tuned to, without capo.</summary>
    public IEnumerable<Node> All => Wires.Concat(AllStrings).Concat(Head).Append(Tuning);

    private double Right => StringX(1);

    public double Bottom => Top + frets * FretHeight;

    private bool HasNut => grip.FirstFret == 1;

    private IEnumerable<Node> Wires
    {
        get
        {
            for (var wire = HasNut ? 1 : 0; wire <= frets; wire++)
            {
                var y = Top + wire * FretHeight;
                yield return new Node.Line(Left, y, Right, y, new Stroke(Tone.Line, 0.8));
            }
        }
    }

    private IEnumerable<Node> AllStrings => Enumerable.Range(1, _count).SelectMany(String);

    /// <summary>A string, two fine lines for a pair; a short one begins at a little nut of its own.</summary>
    private IEnumerable<Node> String(int number)
    {
        var course = _instrument.String(number);
        var start = course.StartsAtFret - (grip.FirstFret - 1);
        if (start >= frets)
        {
            yield break;
        }

        var x = StringX(number);
        var y = Top + Math.Max(0, start) * FretHeight;
        var isLookedAt = exhibit.Map.Strings.Numbers.Contains(number);
        var tone = isLookedAt ? Tone.Ink : Tone.Line;
        var width = isLookedAt ? 0.7 + 0.9 * (number - 1) / Math.Max(3, _count - 1) : 0.7;
        if (course.Partner is null)
        {
            yield return new Node.Line(x, y, x, Bottom, new Stroke(tone, width));
        }
        else
        {
            yield return new Node.Line(
                x - PairGap / 2,
                y,
                x - PairGap / 2,
                Bottom,
                new Stroke(tone, Measures.PairLine * width)
            );
            yield return new Node.Line(
                x + PairGap / 2,
                y,
                x + PairGap / 2,
                Bottom,
                new Stroke(tone, Measures.PairLine * width)
            );
        }

        if (start > 0)
        {
            yield return new Node.Rect(x - StringGap / 4, y - 1.6, StringGap / 2, 3.2, Tone.Ink);
        }
    }

    /// <summary>The nut, as far as strings begin there, or the capo across it.</summary>
    private IEnumerable<Node> Head
    {
        get
        {
            if (!HasNut)
            {
                yield break;
            }

            if (_instrument.Capo > 0)
            {
                yield return new Node.Rect(
                    Left - 6,
                    Top - CapoHeight / 2 - 1,
                    Right - Left + 12,
                    CapoHeight,
                    Tone.Ink,
                    Corner: CapoHeight / 2
                );
            }
            else
            {
                var farthest = Enumerable.Range(1, _count).Last(number => _instrument.String(number).StartsAtFret == 0);
                var from = StringX(farthest) - 0.6;
                yield return new Node.Rect(from, Top - 2.6, Right + 0.6 - from, 3.2, Tone.Ink);
            }
        }
    }

    private Node.Group Tuning =>
        new(
            "open strings",
            _instrument
                .WithCapo(0)
                .Strings.Select<Course, Node>(
                    (course, at) =>
                        new Node.Label(
                            StringX(at + 1),
                            Bottom + TuningDrop,
                            exhibit.NameOf(course.Open.Name),
                            NameStyle,
                            Tone.Quiet,
                            Anchor.Middle
                        )
                )
                .ToValueList()
        );
}
