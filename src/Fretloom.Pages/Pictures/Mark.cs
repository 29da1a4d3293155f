using Fretloom.Pages.Scene;

namespace Fretloom.Pages.Pictures;

/// <summary>What a mark says about its note.</summary>
internal enum MarkKind
{
    /// <summary>It is a note of the key or scale.</summary>
    OfKey,

    /// <summary>It is a member of the chord.</summary>
    OfChord,

    /// <summary>It is played in the chosen shape.</summary>
    Chosen,
}

/// <summary>A note on the neck.</summary>
/// <param name="Label">What stands on it, with Unicode accidentals; may be empty.</param>
/// <param name="Kind">How strongly it is drawn.</param>
/// <param name="IsTonic">Whether it has the second ring.</param>
/// <param name="IsRoot">Whether it has the foot.</param>
internal readonly record struct Mark(string Label, MarkKind Kind, bool IsTonic, bool IsRoot)
{
    /// <summary>Whether it is filled; unsaid, all but the notes of the key are.</summary>
    public bool IsSolid { get; init; } = Kind != MarkKind.OfKey;

    /// <summary>How far it reaches from its middle.</summary>
    public double RadiusOf(Measures measures) => IsTonic ? measures.RingRadius : measures.MarkRadius;

    private Tone Solid => Kind == MarkKind.Chosen ? Tone.Focus : Tone.Ink;

    /// <summary>Draws it around a point.</summary>
    public Node.Group DrawnAt(double x, double y, Measures measures)
    {
        var nodes = new List<Node>();
        var line = new Stroke(Solid, measures.MarkLine);
        var style = measures.LabelStyle(Label);
        var disc = Disc.For(x, y, measures.MarkRadius, Label, style);
        if (IsTonic)
        {
            nodes.Add(disc.Drawn(measures.RingRadius, Tone.Paper, line));
        }

        var inner = IsTonic ? measures.MarkRadius - measures.MarkLine / 2 : measures.MarkRadius;
        nodes.Add(disc.Drawn(inner, IsSolid ? Solid : Tone.Paper, line));
        if (IsRoot)
        {
            nodes.Add(Foot(x, y, measures));
        }

        if (Label.Length > 0)
        {
            var tone =
                !IsSolid ? Tone.Ink
                : Kind == MarkKind.Chosen ? Tone.OnFocus
                : Tone.Paper;
            nodes.Add(new Node.Label(x, y + 0.325 * style.Size, Label, style, tone, Anchor.Middle));
        }

        return new Node.Group("mark", nodes.ToValueList());
    }

    private Node.Rect Foot(double x, double y, Measures measures)
    {
        var isWide = IsTonic || Kind == MarkKind.Chosen;
        var below = (isWide ? measures.RingRadius : measures.MarkRadius) + 0.06 * measures.Spacing;
        return new Node.Rect(x - measures.FootWidth / 2, y + below, measures.FootWidth, measures.FootHeight, Solid);
    }
}
