using System.Globalization;
using System.Xml.Linq;
using Fretloom.Exercises;

namespace Fretloom.Scores.Engraving;

/// <summary>What stands above the staves in rows of its own, clear of fingers and chord symbols: the tempo, and the name of each part such as its key.</summary>
internal sealed record SystemHeads
{
    private const double Size = 405;
    private const double RowHeight = 500;
    private const double Clear = 200;

    // The mean width of a letter in parts of its size, upward rounded.
    private const double LetterWidth = 0.6;

    // Between the lowest row and what the engraver drew.
    private const double Gap = 110;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private readonly string _tempo;
    private readonly bool _isCompound;
    private readonly ValueList<(int Bar, string Words)> _parts;

    /// <summary>Those of an exercise.</summary>
    public SystemHeads(Exercise exercise)
    {
        _tempo = TempoWords.Of(exercise);
        _isCompound = exercise.Metre.IsCompound;
        _parts = exercise
            .Sections.Where(section => section.Heading is not null)
            .Select(section => (section.At / exercise.Metre.Bar + 1, section.Heading!))
            .ToValueList();
    }

    /// <summary>Everything in one text.</summary>
    public override string ToString() =>
        string.Join('\n', _parts.Select(part => $"{part.Bar} {part.Words}").Prepend($"{_tempo} {_isCompound}"));

    /// <summary>Draws those of one system, upward from a line.</summary>
    /// <param name="starts">Where the music of each of its bars begins.</param>
    /// <param name="line">The line above which they stand; downward is positive.</param>
    /// <returns>The signs and words, and the height they take.</returns>
    public (IReadOnlyList<XElement> Drawn, double Height) Above(IReadOnlyDictionary<int, double> starts, double line)
    {
        var drawn = new List<XElement>();
        // Where each row is taken up to; the lowest first.
        var rows = new List<double>();
        foreach (var (bar, words) in _parts.Where(part => starts.ContainsKey(part.Bar)))
        {
            var y = Baseline(starts[bar], Width(words));
            drawn.Add(Text("reh", starts[bar], y, words));
        }

        if (starts.TryGetValue(1, out var first))
        {
            var sign = TempoSign.Width(_isCompound) * Size;
            var y = Baseline(first, sign + Width(_tempo));
            var tempo = Text("tempo", first + sign, y, _tempo);
            tempo.AddFirst(TempoSign.Draw(_isCompound, first, y, Size));
            drawn.Add(tempo);
        }

        return (drawn, rows.Count == 0 ? 0 : rows.Count * RowHeight + Gap);

        // In the lowest row with room.
        double Baseline(double x, double width)
        {
            var row = rows.FindIndex(taken => taken + Clear <= x);
            if (row < 0)
            {
                row = rows.Count;
                rows.Add(0);
            }

            rows[row] = x + width;
            return line - Gap - row * RowHeight;
        }
    }

    private static double Width(string words) => LetterWidth * Size * words.Length;

    private static XElement Text(string kind, double x, double y, string words) =>
        new(
            Svg + "g",
            new XAttribute("class", kind),
            new XElement(
                Svg + "text",
                new XAttribute("x", Rounded(x)),
                new XAttribute("y", Rounded(y)),
                new XAttribute("font-size", Rounded(Size)),
                new XAttribute("font-weight", 600),
                new XAttribute("stroke", "none"),
                words
            )
        );

    private static string Rounded(double number) => Math.Round(number, 2).ToString(CultureInfo.InvariantCulture);
}
