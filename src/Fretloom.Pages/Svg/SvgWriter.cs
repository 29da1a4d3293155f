using System.Security;
using System.Text;
using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Svg;

/// <summary>Writes drawings as SVG that can be read and changed by hand. The same drawing always gives the same text.</summary>
/// <remarks>Follows Scalable Vector Graphics (SVG) 1.1, Second Edition (W3C Recommendation, 2011).</remarks>
public sealed class SvgWriter
{
    private const string SansFamilies = "'Source Sans 3', 'Fretloom Accidentals', sans-serif";
    private const string SerifFamilies = "'Source Serif 4', 'Fretloom Accidentals', serif";

    private readonly StringBuilder _text = new();
    private readonly SvgTheme _theme;
    private readonly string _id;
    private readonly bool _isGathered;

    // A drawing has many nodes and few ways to paint them.
    private readonly Dictionary<long, string> _paints = [];
    private readonly Dictionary<long, string> _types = [];

    private SvgWriter(SvgTheme theme, string id, bool isGathered)
    {
        _theme = theme;
        _id = id;
        _isGathered = isGathered;
    }

    /// <summary>Writes a drawing.</summary>
    /// <param name="drawing">What to draw.</param>
    /// <param name="theme">Its colours.</param>
    /// <param name="id">What the ids in the file begin with: a letter, then letters, digits and hyphens. Different for each picture of a page.</param>
    /// <param name="isAlone">
    /// Whether it is a file of its own, which then carries <see cref="SvgTheme.ScreenStyles"/>; false inside a page that does.
    /// </param>
    /// <exception cref="ArgumentException">The id has another form.</exception>
    public static string Write(Drawing drawing, SvgTheme theme, string id = "picture", bool isAlone = true) =>
        Write(drawing, theme, id, isAlone, isGathered: false);

    /// <summary>
    /// Writes a drawing that is drawn anew while a hand waits for it, for a page that carries <see cref="SvgTheme.ScreenStyles"/>. It looks the same
    /// in fewer elements: in each outermost group what is painted alike is drawn together. What stands in one inner group, as the rings and the letter of a
    /// mark, keeps its order; inner groups may change places, so those that are painted differently lie apart.
    /// </summary>
    /// <inheritdoc cref="Write(Drawing, SvgTheme, string, bool)"/>
    public static string WriteGathered(Drawing drawing, SvgTheme theme, string id) =>
        Write(drawing, theme, id, isAlone: false, isGathered: true);

    private static string Write(Drawing drawing, SvgTheme theme, string id, bool isAlone, bool isGathered)
    {
        if (
            id.Length == 0
            || !char.IsAsciiLetter(id[0])
            || !id.All(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-')
        )
        {
            throw new ArgumentException(
                "An id begins with a letter and goes on with letters, digits and hyphens.",
                nameof(id)
            );
        }

        var writer = new SvgWriter(theme, id, isGathered);
        writer.Document(drawing, isAlone);
        return writer._text.ToString();
    }

    private void Document(Drawing drawing, bool isAlone)
    {
        var (width, height) = (Number(drawing.Width), Number(drawing.Height));
        _text.Append(
            $"""
            <svg xmlns="http://www.w3.org/2000/svg" class="fretloom" width="{width}pt" height="{height}pt" viewBox="0 0 {width} {height}" role="img" aria-labelledby="{_id}-title {_id}-desc" font-family="{SansFamilies}">
              <title id="{_id}-title">{Escaped(drawing.Title)}</title>
              <desc id="{_id}-desc">{Escaped(drawing.Description)}</desc>

            """
        );
        if (isAlone && !_theme.IsResolved)
        {
            _text.Append($"  <style>\n{Indented(SvgTheme.ScreenStyles + ScreenCss.OwnPaper)}  </style>\n");
        }

        Definitions(drawing);
        foreach (var node in drawing.Nodes)
        {
            Node(node, 1);
        }

        _text.Append("</svg>\n");
    }

    private void Definitions(Drawing drawing)
    {
        var used = drawing.Leaves.Select(FillOf).ToHashSet();
        if (used.Contains(Tone.Full) && _theme.IsStippled)
        {
            Pattern(
                Tone.Full,
                2.6,
                $"""
                <rect width="2.6" height="2.6"{Fill(_theme.ColourOf(Tone.Full))}/>
                      <circle cx="0.65" cy="0.65" r="0.32"{Fill(_theme.ColourOf(Tone.Line))}/>
                      <circle cx="1.95" cy="1.95" r="0.32"{Fill(_theme.ColourOf(Tone.Line))}/>
                """
            );
        }

        if (used.Contains(Tone.Empty))
        {
            Pattern(
                Tone.Empty,
                4,
                $"""<path d="M0 4L4 0M-1 1L1 -1M3 5L5 3"{Paint(Tone.None, new Stroke(Tone.Line, 0.5))}/>"""
            );
        }
    }

    private void Pattern(Tone tone, double size, string content) =>
        _text.Append(
            $"""
              <defs>
                <pattern id="{PatternId(tone)}" width="{Number(size)}" height="{Number(
                size
            )}" patternUnits="userSpaceOnUse">
                  {content}
                </pattern>
              </defs>

            """
        );

    private void Node(Node node, int depth)
    {
        _text.Append(' ', 2 * depth);
        switch (node)
        {
            case Node.Group group:
                _text.Append($"<g data-part=\"{Escaped(group.Name)}\">\n");
                Inside(group, depth + 1);
                _text.Append(' ', 2 * depth).Append("</g>\n");
                break;
            case Node.Line line:
                Open("<line").At("x1", line.X1).At("y1", line.Y1).At("x2", line.X2).At("y2", line.Y2);
                Close(null, line.Stroke);
                break;
            case Node.Circle circle:
                Open("<circle").At("cx", circle.X).At("cy", circle.Y).At("r", circle.Radius);
                Close(circle.Fill, circle.Stroke);
                break;
            case Node.Rect rect:
                Open("<rect").At("x", rect.X).At("y", rect.Y).At("width", rect.Width).At("height", rect.Height);
                if (rect.Corner > 0)
                {
                    At("rx", rect.Corner);
                }

                Close(rect.Fill, rect.Stroke);
                break;
            case Node.Path path:
                Open("<path d=\"");
                foreach (var step in path.Steps)
                {
                    Step(step);
                }

                _text.Append('"');
                Close(path.Fill, path.Stroke);
                break;
            case Node.Label label:
                Open("<text").At("x", label.X).At("y", label.Y);
                _text.Append(TypeOf(label)).Append(PaintOf(label.Tone, null)).Append('>');
                _text.Append(Escaped(label.Text)).Append("</text>\n");
                break;
        }
    }

    private void Inside(Node.Group group, int depth)
    {
        if (!_isGathered)
        {
            foreach (var child in group.Children)
            {
                Node(child, depth);
            }

            return;
        }

        foreach (var alike in Gathered(group))
        {
            switch (LookOf(alike[0]).Way)
            {
                case Way.Line:
                    Lines(alike.Cast<Node.Line>());
                    break;
                case Way.Letter:
                    Letters(alike.ConvertAll(letter => (Node.Label)letter));
                    break;
                default:
                    foreach (var node in alike)
                    {
                        Node(node, 0);
                    }

                    break;
            }
        }
    }

    // What is painted alike joins the last run that is, unless it would then lie below what its own inner group has drawn before it.
    private static List<List<Node>> Gathered(Node.Group group)
    {
        var runs = new List<List<Node>>();
        var last = new Dictionary<(Way Way, long Paint, long Type), int>();
        foreach (var child in group.Children)
        {
            var below = 0;
            foreach (var leaf in child is Node.Group inner ? inner.Leaves : [child])
            {
                var look = LookOf(leaf);
                if (!last.TryGetValue(look, out var run) || run < below)
                {
                    run = last[look] = runs.Count;
                    runs.Add([]);
                }

                runs[run].Add(leaf);
                below = run;
            }
        }

        return runs;
    }

    private enum Way
    {
        Line,
        Letter,
        Other,
    }

    private static (Way Way, long Paint, long Type) LookOf(Node node) =>
        node switch
        {
            Node.Line line => (Way.Line, KeyOf(Tone.None, line.Stroke), 0),
            Node.Circle circle => (Way.Other, KeyOf(circle.Fill, circle.Stroke), 0),
            Node.Rect rect => (Way.Other, KeyOf(rect.Fill, rect.Stroke), 0),
            Node.Path path => (Way.Other, KeyOf(path.Fill, path.Stroke), 0),
            Node.Label { Text.Length: 1 } letter => (Way.Letter, KeyOf(letter.Tone, null), KeyOf(letter)),
            Node.Label label => (Way.Other, KeyOf(label.Tone, null), KeyOf(label)),
            _ => default,
        };

    private void Lines(IEnumerable<Node.Line> alike)
    {
        var stroke = default(Stroke);
        Open("<path d=\"");
        foreach (var line in alike)
        {
            stroke = line.Stroke;
            _text.Append('M').AppendHundredths(line.X1).Append(' ').AppendHundredths(line.Y1);
            _text.Append('L').AppendHundredths(line.X2).Append(' ').AppendHundredths(line.Y2);
        }

        _text.Append('"');
        Close(Tone.None, stroke);
    }

    // Each letter has its own place, and is anchored at it: SVG 1.1, 10.5 and 10.9.1.
    private void Letters(List<Node.Label> alike)
    {
        Open("<text x=\"");
        foreach (var letter in alike)
        {
            _text.AppendHundredths(letter.X).Append(' ');
        }

        _text.Append("\" y=\"");
        foreach (var letter in alike)
        {
            _text.AppendHundredths(letter.Y).Append(' ');
        }

        _text.Append('"').Append(TypeOf(alike[0])).Append(PaintOf(alike[0].Tone, null)).Append('>');
        _text.Append(Escaped(string.Concat(alike.Select(letter => letter.Text)))).Append("</text>\n");
    }

    private SvgWriter Open(string element)
    {
        _text.Append(element);
        return this;
    }

    private SvgWriter At(string name, double value)
    {
        _text.Append(' ').Append(name).Append("=\"").AppendHundredths(value).Append('"');
        return this;
    }

    private void Close(Tone? fill, Stroke? stroke) => _text.Append(PaintOf(fill, stroke)).Append("/>\n");

    private void Step(PathStep step)
    {
        switch (step.Kind)
        {
            case PathStepKind.Move:
                Point('M', step);
                break;
            case PathStepKind.Line:
                Point('L', step);
                break;
            case PathStepKind.Arc:
                _text.Append('A').AppendHundredths(step.Radius).Append(' ').AppendHundredths(step.Radius);
                Point(step.IsClockwise ? " 0 0 1 " : " 0 0 0 ", step);
                break;
            default:
                _text.Append('Z');
                break;
        }
    }

    private void Point(char letter, PathStep step)
    {
        _text.Append(letter);
        Point("", step);
    }

    private void Point(string before, PathStep step) =>
        _text.Append(before).AppendHundredths(step.X).Append(' ').AppendHundredths(step.Y);

    private string PaintOf(Tone? fill, Stroke? stroke)
    {
        var key = KeyOf(fill, stroke);
        if (!_paints.TryGetValue(key, out var paint))
        {
            paint = Paint(fill, stroke);
            _paints[key] = paint;
        }

        return paint;
    }

    // All that the attributes say, a few bits each; widths are written in hundredths.
    private static long KeyOf(Tone? fill, Stroke? stroke)
    {
        var key = fill is { } tone ? (long)tone + 1 : 0;
        return stroke is { } line
            ? key
                | ((long)line.Tone + 1 << 8)
                | ((long)line.Dash << 16)
                | (line.IsRound ? 1L << 20 : 0)
                | ((long)Math.Round(line.Width * 100) << 24)
            : key;
    }

    private static long KeyOf(Node.Label label) =>
        (long)label.Anchor | ((long)label.Style.Face << 4) | ((long)Math.Round(label.Style.Size * 100) << 8);

    private string TypeOf(Node.Label label)
    {
        var key = KeyOf(label);
        if (!_types.TryGetValue(key, out var type))
        {
            type = Type(label);
            _types[key] = type;
        }

        return type;
    }

    private string Paint(Tone? fill, Stroke? stroke)
    {
        var line = stroke is { } drawn ? LineAttributes(drawn) : "";
        if (_theme.IsResolved)
        {
            return (fill is { } tone ? Fill(Surface(tone)) : "")
                + (stroke is { } some ? $" stroke=\"{_theme.ColourOf(some.Tone)}\"" : "")
                + line;
        }

        var classes = new List<string>();
        var plain = "";
        if (fill is Tone.None or Tone.Empty)
        {
            plain = Fill(Surface(fill.Value));
        }
        else if (fill is { } tone)
        {
            classes.Add($"fill-{ScreenCss.Name(tone)}");
        }

        if (stroke is { } some2)
        {
            classes.Add($"line-{ScreenCss.Name(some2.Tone)}");
        }

        return (classes.Count > 0 ? $" class=\"{string.Join(' ', classes)}\"" : "") + plain + line;
    }

    private string Surface(Tone tone) =>
        tone == Tone.Empty || (tone == Tone.Full && _theme.IsStippled)
            ? $"url(#{PatternId(tone)})"
            : _theme.ColourOf(tone);

    private string PatternId(Tone tone) => $"{_id}-{ScreenCss.Name(tone)}";

    private static string Fill(string colour) => $" fill=\"{colour}\"";

    private static string LineAttributes(Stroke stroke)
    {
        var dashes = stroke.Dash switch
        {
            Dash.Stitch => " stroke-dasharray=\"3.2 2\"",
            Dash.Axis => " stroke-dasharray=\"4 1.6 0.8 1.6\"",
            _ => "",
        };
        var ends = stroke.IsRound ? " stroke-linecap=\"round\" stroke-linejoin=\"round\"" : "";
        return $" stroke-width=\"{Number(stroke.Width)}\"{dashes}{ends}";
    }

    private static string Type(Node.Label label)
    {
        var family = label.Style.Face is Face.Serif or Face.SerifBold ? $" font-family=\"{SerifFamilies}\"" : "";
        var weight = label.Style.Face switch
        {
            Face.SansBold => " font-weight=\"700\"",
            Face.SerifBold => " font-weight=\"600\"",
            _ => "",
        };
        var anchor = label.Anchor switch
        {
            Anchor.Middle => " text-anchor=\"middle\"",
            Anchor.End => " text-anchor=\"end\"",
            _ => "",
        };
        return $"{family} font-size=\"{Number(label.Style.Size)}\"{weight}{anchor}";
    }

    private static Tone FillOf(Node node) =>
        node switch
        {
            Node.Circle circle => circle.Fill,
            Node.Rect rect => rect.Fill,
            Node.Path path => path.Fill,
            _ => Tone.None,
        };

    private static string Number(double value) => new StringBuilder().AppendHundredths(value).ToString();

    private static string Escaped(string text) => SecurityElement.Escape(text);

    private static string Indented(string text) =>
        string.Concat(text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => $"    {line}\n"));
}
